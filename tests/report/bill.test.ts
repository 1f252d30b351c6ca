import { describe, expect, it } from 'vitest';
import type { BillAnswer } from '../../src/engine/analysis/repairLimitView.ts';
import { billLines } from '../../src/report/bill.ts';
import { formatsFor } from '../../src/report/format.ts';
import { facts } from './fixture.ts';

const pay: BillAnswer = {
  component: 'gearbox',
  amount: 1200,
  limit: 1450,
  paying: 1280,
  answer: 'pay',
  by: 170,
  otherwiseLookingTwice: false,
  unsafe: false,
  letGoToday: false,
};
const said = (otherwise: Partial<BillAnswer> = {}, of = facts): readonly string[] =>
  billLines({ ...pay, ...otherwise }, of, formatsFor(of));

describe("the answer to a shop's call", () => {
  it('says pay or walk away, and by how much', () => {
    expect(said()[0]).toBe(
      'Pay. A bill of $1,200 for the gearbox, or $1,280 in all with $80 for days without it, is worth paying for the 2009 wagon: the biggest worth paying today is about $1,450. Paying costs about $170 less than walking away.',
    );
    expect(said({ amount: 2000, paying: 2080, answer: 'walk away', by: 630 })[0]).toMatch(
      /^Walk away\. .*too big.*Walking away costs about \$630 less than paying\.$/,
    );
    expect(said({ answer: 'even', by: 0 })[0]).toMatch(/^Even\./);
    expect(said({ answer: 'walk away', limit: 0 })[0]).toContain('no bill for it is worth paying');
  });

  it('says what the bill comes to with the days without it, so that a smaller one can be too big', () => {
    expect(said({ amount: 1400, paying: 1500, answer: 'walk away', by: 50 })[0]).toContain(
      'A bill of $1,400 for the gearbox, or $1,500 in all with $100 for days without it, is too big',
    );
    expect(said({ paying: 1200 })[0]).toContain('A bill of $1,200 for the gearbox is worth paying');
  });

  it('is for whoever keeps it all the same, where handing it on today costs no more', () => {
    expect(said({ letGoToday: true })[0]).toBe(
      'Handing it on today already costs no more, on average, than keeping it. If it is kept all the same:',
    );
    expect(said({ letGoToday: true })[1]).toMatch(/^Pay\./);
  });

  it('puts safety before the money', () => {
    expect(said({ unsafe: true })[0]).toMatch(
      /^Safety is never traded: with the gearbox failed it is not driven/,
    );
    expect(said().join(' ')).not.toContain('Safety');
  });

  it('says so where looking twice as far turns the answer', () => {
    expect(said({ otherwiseLookingTwice: true }).join(' ')).toContain(
      'Looking twice as far ahead the answer is the other one',
    );
    expect(said().join(' ')).not.toContain('twice as far');
  });

  it('ends with what to ask, and that it is information', () => {
    expect(said().at(-2)).toMatch(/^Before saying yes, ask: Is the diagnosis included.*in writing\?$/);
    expect(said().at(-1)).toBe('Information, not advice.');
  });

  it('speaks of a repair nobody named', () => {
    expect(said({ component: 'any other repair', paying: 1200 })[0]).toContain(
      '$1,200 for any other repair is',
    );
  });
});
