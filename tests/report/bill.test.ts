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
  ownHands: null,
  answer: 'pay',
  by: 170,
  otherwiseLookingTwice: false,
  unsafe: false,
  letGoToday: false,
};
const said = (otherwise: Partial<BillAnswer> = {}, of = facts): readonly string[] =>
  billLines({ ...pay, ...otherwise }, of, formatsFor(of));

describe("the answer to a shop's call", () => {
  it('says what to do and how far it is from the limit', () => {
    expect(said()[0]).toBe(
      'PAY: the limit for the 2009 wagon is about $1,450 today. The shop asks $1,200 for the gearbox, $1,280 with $80 for days without it. Paying costs about $170 less than letting it go.',
    );
    expect(said({ amount: 2000, paying: 2080, answer: 'walk away', by: 630 })[0]).toMatch(
      /^LET IT GO: .*Letting it go costs about \$630 less than mending it\.$/,
    );
    expect(said({ answer: 'even', by: 0 })[0]).toMatch(/^EVEN: /);
    expect(said({ answer: 'walk away', limit: 0 })[0]).toContain('no bill for it is worth paying');
  });

  it('says what own hands come to, and what to mind at home', () => {
    const ownHands = { costs: 640, parts: 310, hours: 9, tow: 90, days: 3 };
    const lines = said({ ownHands, answer: 'own hands', by: 810 });
    expect(lines[0]).toBe(
      'OUR OWN HANDS: the limit for the 2009 wagon is about $1,450 today. The shop asks $1,200 for the gearbox, $1,280 with $80 for days without it; own hands come to about $640 ($310 for parts, 9 hours of your own, 3 days without it and $90 for a tow home). Bringing it home and mending it there costs about $810 less than letting it go, and about $640 less than the shop.',
    );
    expect(lines[1]).toMatch(/^At home the maker's procedure comes first/);
    expect(said({ ownHands: { ...ownHands, tow: 0 }, answer: 'own hands' })[1]).toMatch(
      /^If it cannot be driven home/,
    );
  });

  it('names no days where there are none', () => {
    expect(said({ paying: 1200 })[0]).toContain('The shop asks $1,200 for the gearbox. Paying');
  });

  it('is for whoever keeps it all the same, where handing it on today costs no more', () => {
    expect(said({ letGoToday: true })[0]).toBe(
      'Handing it on today already costs no more, on average, than keeping it. If it is kept all the same:',
    );
    expect(said({ letGoToday: true })[1]).toMatch(/^PAY: /);
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
      '$1,200 for any other repair.',
    );
  });
});
