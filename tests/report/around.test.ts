import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { formatsFor } from '../../src/report/format.ts';
import { aroundTheClaim } from '../../src/report/words/claim/around.ts';
import { afterCollision } from './claims.ts';

const sedan = readFileSync(new URL('../../scenarios/owed-sedan.yaml', import.meta.url), 'utf8');
const withGap = sedan.replace(/^ {2}lender:/m, '  gap: { limit: 4000, not_covered: 300 }\n  lender:');

/** The words and numbers of a scenario, in a decision of which nothing else is asked. */
const told = (scenario: string): Decision => {
  const parsed = parseScenario(scenario, { file: 'demo.yaml', today: '2026-11-25' });
  if (!('scenario' in parsed)) throw new Error(JSON.stringify(parsed.problems));
  const { facts, quantities } = parsed.scenario;
  return { ...afterCollision, facts, quantities };
};

const said = (d: Decision): string =>
  aroundTheClaim(d, formatsFor(d.facts))
    .map(({ what, words }) => `${what}. ${words}`)
    .join('\n');

describe('money around a settlement', () => {
  const words = said(told(withGap));

  it('says what it costs, who pays, and until when', () => {
    expect(words).toMatch(/^Dearer insurance\. .* at \$221 a year more for 3 years, \$660 in all/m);
    expect(words).toContain('A rental. It costs $38 a day; they pay up to $30 a day, for at most 20 days.');
    expect(words).toContain(
      'Storage. It costs $35 a day where it stands; they pay 5 days of the 9 days counted here, the last on 30 November 2026.',
    );
    expect(words).toContain('The tow. It costs $185; they pay up to $100.');
    expect(words).toContain('What is unused of service contract comes back when the vehicle goes');
  });

  it('says no unit twice', () => {
    for (const unit of ['a day', 'a year', 'an hour']) expect(words).not.toContain(`${unit} ${unit}`);
  });

  it('says what gap cover pays, and what it leaves out', () => {
    expect(words).toContain(
      'Gap cover. It pays the lender what a total loss leaves owing, up to $4,000, but not $300 of it',
    );
    expect(words).toContain('It pays once, only after a total loss, and nothing to you');
  });

  it('says so where neither gap cover nor dearer insurance was told', () => {
    const bare = said(told(sedan.replace(/^ {2}surcharge:.*\n/m, '')));
    expect(bare).toContain('Gap cover. None was told. What a total loss leaves owing');
    expect(bare).toContain('Dearer insurance. None is counted, because none was told.');
  });
});
