import { describe, expect, it } from 'vitest';
import type { Decision } from '../../src/engine/decision/decision.ts';
import { answerLines } from '../../src/report/answer.ts';
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

describe('what is marked private', () => {
  it('is known by its path, wherever it stands in a list', () => {
    const marked = { ...facts, private: ['savings_for_this', 'replacement.0.loan', 'household.mechanic'] };
    expect(isPrivate(marked, 'savings_for_this')).toBe(true);
    expect(isPrivate(marked, 'household.savings_for_this')).toBe(true);
    expect(isPrivate(marked, 'replacement.1.loan.apr')).toBe(true);
    expect(isPrivate(marked, 'replacement.price')).toBe(false);
    expect(isPrivate(marked, 'household.partner')).toBe(false);
  });

  it('leaves names and words out of everything', () => {
    const d = guarded(
      'household.mechanic',
      'vehicle.what',
      'replacement.what',
      'work_needed.job',
      'not_money',
      'title',
    );
    const out = everything(d);
    for (const word of [
      'Ren ',
      '2009 wagon',
      '2021 hatchback',
      '2021-hatchback',
      'head gasket',
      'crash protection',
      'the dog',
    ])
      expect(out.includes(word), word).toBe(false);
  });

  it('leaves savings out of everything', () => {
    const out = everything(guarded('savings_for_this'));
    for (const words of [
      'Savings left',
      'savingsAfter',
      'savingsLowest',
      'Savings at their lowest',
      'Savings the day after',
      'savings for this',
      '2,500',
    ])
      expect(out.includes(words), words).toBe(false);
  });

  it('leaves a private number out of every list, and the totals as they were', () => {
    const d: Decision = guarded('work_needed.parts');
    const quantities = d.quantities.map((q) =>
      q.key.endsWith('.parts') ? { ...q, path: 'work_needed.0.parts' } : q,
    );
    const json = decisionJson({ ...d, quantities });
    expect(json.quantities.some((q) => q.path.includes('parts'))).toBe(false);
    expect(json.difference).toBe(decisionJson(decision).difference);
  });

  it('leaves what futures say of a private thing out of everything', () => {
    const drawn = (...paths: readonly string[]): string =>
      everything({ ...withChances, facts: { ...facts, private: paths } });
    const parts = drawn('vehicle.components', 'vehicle.what', 'replacement.what', 'look_first');
    for (const word of ['gearbox', 'timing chain', 'compression test', '2009 wagon', '2021 hatchback'])
      expect(parts.includes(word), word).toBe(false);
    expect(parts).toContain('luck with the part 1');
    const insured = drawn('replacement.0.cover.aYear');
    expect(insured).not.toContain('yearly cost of insurance, 2021 hatchback');
    const { chances } = decisionJson({ ...withChances, facts: { ...facts, private: ['savings_for_this'] } });
    expect(chances?.lumpy.map((w) => [w.fund.start, w.fund.dry, w.withoutIncome.dry])).toEqual(
      chances?.lumpy.map(() => [null, [], null]),
    );
    const aside = decisionJson({
      ...withChances,
      facts: { ...facts, private: ['chance.set_aside_each_month'] },
    });
    expect(JSON.stringify(aside.chances?.lumpy)).not.toMatch(/aMonth"|needed/);
  });

  it('changes nothing where nothing is private', () => {
    expect(everything(guarded()) === everything(decision)).toBe(true);
  });
});
