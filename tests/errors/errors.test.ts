import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { decodeScenario } from '../../src/engine/scenario/text/decode.ts';
import { type ProblemKind, problemText } from '../../src/engine/scenario/text/problems.ts';

// One broken file for each way to be wrong, with the words it gets. UPDATE=1 rewrites the words: read the difference.
const here = fileURLToPath(new URL('.', import.meta.url));
const files = readdirSync(here)
  .filter((name) => name.endsWith('.yaml'))
  .sort();

const read = (name: string) => {
  const decoded = decodeScenario(readFileSync(`${here}${name}`));
  return 'problems' in decoded ? decoded : parseScenario(decoded.text, { file: name, today: '2026-03-10' });
};

const words = (name: string): string => {
  const result = read(name);
  const [label, found] = 'problems' in result ? ['', result.problems] : ['warning: ', result.warnings];
  return found.map((problem) => `${label}${problemText(name, problem)}\n`).join('');
};

describe('broken files', () => {
  it.each(files)('%s', (name) => {
    const golden = `${here}${name.replace(/\.yaml$/, '.txt')}`;
    const said = words(name);
    if (process.env.UPDATE === '1') writeFileSync(golden, said);
    expect(existsSync(golden), 'no golden message: run UPDATE=1 npx vitest run tests/errors').toBe(true);
    expect(said).toBe(readFileSync(golden, 'utf8'));
    expect(said).not.toBe('');
  });

  it('refuses what must be refused and warns of the rest', () => {
    for (const name of files) expect('problems' in read(name), name).toBe(!name.startsWith('warn-'));
  });

  it('covers every kind of problem', () => {
    const kinds: readonly ProblemKind[] = [
      'encoding',
      'too large',
      'syntax',
      'duplicate key',
      'forbidden key',
      'empty',
      'wrong shape',
      'unknown key',
      'missing',
      'not a number',
      'wrong unit',
      'out of range',
      'not whole',
      'not a range',
      'one number',
      'not one of',
      'not a date',
      'either or',
      'contradiction',
      'unsafe',
      'private',
      'caution',
    ];
    const seen = new Set(
      files.flatMap((name) => {
        const result = read(name);
        return ('problems' in result ? result.problems : result.warnings).map((problem) => problem.kind);
      }),
    );
    expect([...seen].sort()).toEqual([...kinds].sort());
  });
});
