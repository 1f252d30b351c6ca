import { describe, expect, it } from 'vitest';
import { redactScenario } from '../../../src/engine/scenario/redact.ts';

const TEXT = `# Ren says the gearbox will last.
household:
  partner: Ren # who pays half
  savings: 2500
note: "What ren thinks; Renate does not."

vehicle:
  what: 2009 wagon
  sells_for: { running: 3400, as_it_stands: 900 }
`;

const within =
  (...paths: readonly string[]) =>
  (path: string): boolean =>
    paths.some((marked) => path === marked || path.startsWith(`${marked}.`));

describe('what a scenario marks private', () => {
  it('changes nothing where nothing is marked', () => {
    expect(redactScenario(TEXT, () => false)).toBe(TEXT);
    expect(redactScenario(TEXT, within('nowhere.0.at_all'))).toBe(TEXT);
  });

  it('is taken out of its place, of other texts and of comments, and the rest stays in order', () => {
    expect(redactScenario(TEXT, within('household.partner', 'vehicle.sells_for'))).toBe(
      `household:
  partner: (private)
  savings: 2500
note: What (private) thinks; Renate does not.

vehicle:
  what: 2009 wagon
  sells_for: { running: (private), as_it_stands: (private) }
`,
    );
  });

  it('does not come back by an alias', () => {
    const text = 'a: &name Ren\nb: *name\nprivate: [b]\nc: *name\n';
    expect(redactScenario(text, within('b'))).not.toMatch(/Ren|[&*]name/);
  });

  it('finds places in lists', () => {
    const text = 'work:\n  - job: brakes\n    parts: 140\n';
    expect(redactScenario(text, within('work.0.parts'))).toBe(
      'work:\n  - job: brakes\n    parts: (private)\n',
    );
  });
});
