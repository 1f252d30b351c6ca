import { describe, expect, it } from 'vitest';
import { redactScenario } from '../../../../src/engine/scenario/private/redact.ts';

const TEXT = `# Ren says the gearbox will last.
household:
  partner: Ren # who pays half
  day_without: 25
note: "What ren thinks; Renate does not."

vehicle:
  what: 2009 wagon
  powertrain: combustion
  sells_for: { running: 3400, as_it_stands: 900 }
`;

const marked = (paths: string, text = TEXT): string => redactScenario(`${text}private: [${paths}]\n`);

describe('what a scenario marks private', () => {
  it('changes nothing where nothing is marked', () => {
    expect(redactScenario(TEXT)).toBe(TEXT);
    expect(marked('')).toBe(`${TEXT}private: []\n`);
  });

  it('is taken out of its place, of other texts and of comments, and the rest stays in order', () => {
    expect(marked('household.partner')).toBe(
      `household:
  partner: the partner
  day_without: 25
note: What the partner thinks; Renate does not.

vehicle:
  what: 2009 wagon
  powertrain: combustion
  sells_for: { running: 3400, as_it_stands: 900 }
private: [ household.partner ]
`,
    );
  });

  it('stays as it is when it is taken out again', () => {
    for (const paths of ['household.partner', 'note', 'household.partner, vehicle.what, note']) {
      const once = marked(paths);
      expect(redactScenario(once)).toBe(once);
    }
  });

  it('is taken out of words only: no key, no number, none of our choices', () => {
    const text = TEXT.replace('partner: Ren', 'partner: Combustion').replace('What ren', 'What combustion');
    const out = marked('household.partner', text.replace('2009 wagon', '2009 wagon, running'));
    expect(out).toContain('powertrain: combustion');
    expect(out).toContain('What the partner thinks');
    expect(marked('household.partner', TEXT.replace('partner: Ren', 'partner: Running'))).toContain(
      'running: 3400',
    );
  });

  it('does not come back by an alias, an anchor or a tag', () => {
    const text = 'household: { partner: &Ren Ren, mechanic: *Ren }\nnote: *Ren\n';
    expect(marked('household.partner', text)).toBe(
      'household: { partner: the partner, mechanic: the partner }\nnote: the partner\nprivate: [ household.partner ]\n',
    );
    const tagged = `%TAG !ren! tag:ren.example,2000:\n---\n${TEXT}`;
    expect(marked('household.partner', tagged)).not.toMatch(/\bren\b/i);
  });

  it('is told apart by number where two would become one', () => {
    const text = `household: { partner: Mo, mechanic: Mo Bly }
work_needed:
  - { job: Mo's pump, parts: 1 }
  - { job: mo's pump, parts: 2 }
  - { job: the partner's pump, parts: 3 }
`;
    expect(marked('household.partner', text).match(/job: .*?,/g)).toEqual([
      "job: the partner's pump 2,",
      "job: the partner's pump 3,",
      "job: the partner's pump,",
    ]);
  });

  it('is marked for one entry of a list, and leaves the others', () => {
    const text = 'work_needed:\n  - job: front brakes\n    parts: 140\n  - job: rear lamp\n    parts: 20\n';
    expect(marked('work_needed.1.job', text)).toMatch(/job: front brakes[\s\S]*job: job 2/);
  });
});
