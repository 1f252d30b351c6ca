import { describe, expect, it } from 'vitest';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { costsCsv } from '../../src/report/exports/costs.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { isPrivate } from '../../src/report/privacy.ts';
import { withChances } from './chances.ts';
import { decision, facts } from './fixture.ts';
import { render } from './page.ts';

const guarded = (...paths: readonly string[]): Decision => ({
  ...decision,
  facts: { ...facts, private: paths },
});
const everything = (d: Decision): string =>
  [render(d, 'a: 1'), costsCsv(d), JSON.stringify(decisionJson(d)), ...answerLines(d)].join('\n');

// Private words are out of a scenario before it is decided (tests/laws/privateWords.test.ts); private money is not read,
// and what would be said of it is left out here.
describe('money that is marked private', () => {
  it('is known by its path, and by what it stands in', () => {
    const marked = { ...facts, private: ['savings_for_this', 'replacement.0.loan'] };
    expect(isPrivate(marked, 'savings_for_this')).toBe(true);
    expect(isPrivate(marked, 'replacement.0.loan.apr')).toBe(true);
    for (const path of ['household.savings_for_this', 'replacement.1.loan.apr', 'replacement.0', 'savings'])
      expect(isPrivate(marked, path), path).toBe(false);
  });

  // Their sum can still stand in the ledger, for what is paid on the first day stops where savings do: only a file that
  // is read without them keeps it out.
  it('leaves savings out of everything', () => {
    const out = everything(guarded('savings_for_this'));
    for (const words of [
      'Savings left',
      'savingsAfter',
      'savingsLowest',
      'Savings at their lowest',
      'Savings the day after',
      'savings for this',
    ])
      expect(out.includes(words), words).toBe(false);
  });

  it('leaves what is put by out of what futures say', () => {
    const aside = decisionJson({
      ...withChances,
      facts: { ...facts, private: ['chance.set_aside_each_month'] },
    });
    expect(JSON.stringify(aside.chances?.lumpy)).not.toMatch(/aMonth"|needed/);
  });

  it('leaves every other figure as it was', () => {
    const { quantities, options, ...hidden } = decisionJson(guarded('savings_for_this'));
    const { quantities: all, options: ways, ...open } = decisionJson(decision);
    const others = (of: readonly { readonly key: string }[]) =>
      of.filter(({ key }) => key !== 'household.savings');
    expect(hidden).toEqual({ ...open, breakEvens: others(open.breakEvens), swings: others(open.swings) });
    expect(quantities).toEqual(all.filter(({ path }) => path !== 'savings_for_this'));
    expect(options.map(({ netPresentCost }) => netPresentCost)).toEqual(
      ways.map(({ netPresentCost }) => netPresentCost),
    );
  });

  it('changes nothing where nothing is private', () => {
    expect(everything(guarded()) === everything(decision)).toBe(true);
  });
});
