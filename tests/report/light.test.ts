import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** Every package that a module and what it imports at run time would load; type imports load nothing. */
const packagesOf = (file: URL, seen = new Set<string>()): Set<string> => {
  if (seen.has(file.href)) return new Set();
  seen.add(file.href);
  const found = new Set<string>();
  const imports = /^(?:import|export)\b(?! type\b)[^;]*? from '([^']+)'/gms;
  for (const [, from = ''] of readFileSync(file, 'utf8').matchAll(imports)) {
    if (!from.startsWith('.')) found.add(from);
    else for (const inner of packagesOf(new URL(from, file), seen)) found.add(inner);
  }
  return found;
};

const report = (name: string): URL => new URL(`../../src/report/${name}`, import.meta.url);

describe('what the terminal loads', () => {
  it.each(['answerLines.ts', 'exports/json.ts', 'exports/costs.ts', 'embed.ts', 'privacy.ts'])(
    '%s loads neither charts nor tables nor a document',
    (name) => {
      const packages = [...packagesOf(report(name))];
      expect(packages.filter((p) => /plot|arquero|linkedom/.test(p))).toEqual([]);
    },
  );

  it('only the whole report loads them, each in its one home', () => {
    expect([...packagesOf(report('render.ts'))]).toEqual(
      expect.arrayContaining(['@observablehq/plot', 'arquero']),
    );
  });
});
