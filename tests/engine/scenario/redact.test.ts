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

describe('what a scenario marks private', () => {
  it('changes nothing where nothing is marked', () => {
    expect(redactScenario(TEXT, [])).toBe(TEXT);
  });

  it('is taken out of its place, of other texts and of comments, and the rest stays in order', () => {
    expect(redactScenario(TEXT, ['household.partner', 'vehicle.sells_for', 'nowhere.0.at_all'])).toBe(
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
    expect(redactScenario(text, ['b'])).not.toMatch(/Ren|[&*]name/);
  });

  it('finds places in lists', () => {
    expect(redactScenario('work:\n  - job: brakes\n    parts: 140\n', ['work.0.parts'])).toBe(
      'work:\n  - job: brakes\n    parts: (private)\n',
    );
  });
});
