import { describe, expect, it } from 'vitest';
import type { Chances, Estimate, PairChances } from '../../src/engine/analysis/chances.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { chances, withChances } from './chances.ts';
import { decision } from './fixture.ts';
import { read, render, text } from './page.ts';

const e = (value: number, error: number): Estimate => ({ value, error });
const pair = chances.pair as PairChances;
const drawn = (changed: Partial<Chances>, of: Partial<Decision> = {}): Decision => ({
  ...withChances,
  ...of,
  chances: { ...chances, ...changed },
});
const paired = (changed: Partial<PairChances>): Decision => drawn({ pair: { ...pair, ...changed } });
const section = (d: Decision, id: string): string =>
  (read(render(d)).querySelector(`#${id}`)?.textContent ?? '').replace(/\s+/g, ' ');
const sure = (d: Decision): string => section(d, 'how-sure');
const worth = (d: Decision): string => section(d, 'find-out');

describe('how sure it is', () => {
  it('is answered by the first sentence', () => {
    expect(sure(withChances)).toMatch(
      /^ ?How sure is it\? In about 82 of 100 ways it could go, keeping the 2009 wagon comes out cheaper\./,
    );
    expect(sure(paired({ keepCheaper: e(0.2, 0.004), likelier: 'replace', mean: e(-2000, 40) }))).toContain(
      'In about 80 of 100 ways it could go, handing it on for the 2021 hatchback comes out cheaper.',
    );
  });

  it('may be that nobody can tell', () => {
    const d = paired({ keepCheaper: e(0.508, 0.005), likelier: 'cannot tell', mean: e(60, 45) });
    expect(sure(d)).toContain(
      'Cannot tell: in about 51 of 100 ways it could go, keeping the 2009 wagon comes out cheaper, give or take 1 in 100.',
    );
    const [, , verdict] = answerLines(d);
    expect(verdict).toMatch(/^Cannot tell\. On today's numbers keeping the 2009 wagon costs about \$60 less/);
    expect(verdict).toContain(
      'Worth finding out first: how long the gearbox will last, 2009 wagon, up to $210.',
    );
    expect(answerLines(d)).toContain('Of the two, keeping is ahead in 51 of 100 ways it could go.');
  });

  it('says so where the one is cheaper more often and the other by more', () => {
    const d = paired({ keepCheaper: e(0.42, 0.004), likelier: 'keep' });
    expect(sure(d)).toContain('On average it is keeping that costs less: when it does, it is by more.');
    expect(answerLines(d)).toContain('Yet keeping is ahead in only 42 of 100 ways it could go.');
  });

  it('adds one sentence to the first screen and to the lines of the terminal', () => {
    const first = read(render(withChances)).querySelector('#answer')?.textContent;
    expect(first).toContain(
      'Keeping is ahead in 82 of 100 ways it could go, if our guesses are about right.',
    );
    // Whether it fits comes before any chance.
    expect(first?.indexOf('a regular month takes')).toBeLessThan(first?.indexOf('is ahead in') ?? 0);
    expect(answerLines(withChances)).toContain(
      'Keeping is ahead in 82 of 100 ways it could go, if our guesses are about right.',
    );
  });

  it('counts no future twice and forgets none: a hundred marks, one at least for what happened at all', () => {
    const marks = (d: Decision): number[] => {
      const figure = read(render(d)).querySelector('#fig-hundred .wide');
      return ['circle', 'path'].map((mark) => [...(figure?.querySelectorAll(`g > ${mark}`) ?? [])].length);
    };
    expect(marks(withChances)).toEqual([82, 18]);
    const almost = paired({ keepCheaper: e(0.9996, 0.0002) });
    expect(marks(almost)).toEqual([99, 1]);
    expect(sure(almost)).toContain('In nearly all ways it could go, keeping');
    expect(sure(almost)).toContain('fewer than 1 of 100: replacing comes out cheaper');
    const all = paired({ keepCheaper: e(1, 0) });
    expect(marks(all)[0]).toBe(100);
    expect(sure(all)).toContain(
      'In more than 99 of 100 ways it could go, keeping the 2009 wagon comes out cheaper.',
    );
    expect(answerLines(all)).toContain(
      'Keeping is ahead in more than 99 of 100 ways it could go, if our guesses are about right.',
    );
  });

  it('gives each way its good, middle and bad case, how often it is cheapest and what a wrong choice would cost', () => {
    const rows = [...read(render(withChances)).querySelectorAll('#how-sure .full tbody tr')].map((r) =>
      [...r.querySelectorAll('th, td')].map((c) => c.textContent),
    );
    expect(rows).toHaveLength(chances.ways.length);
    expect(rows[0]).toEqual(['Mend it and keep it', '$16,400', '$20,100', '$25,000', '56 of 100', '$690']);
    expect(rows.at(-1)?.[4]).toBe('fewer than 1 of 100');
  });

  it('says how many futures, how exactly, what was taken as exact and whether the gap matters', () => {
    expect(sure(withChances)).toContain('16,384 futures of five years were drawn');
    expect(sure(withChances)).toContain('give or take 1 in 100');
    expect(sure(withChances)).toContain(
      '6 guesses and table figures that each move the answer at least a tenth as far as the number that moves it most are taken as exact: give them as low, likely, high if you doubt them.',
    );
    expect(sure(drawn({ exactGuesses: 0 }))).not.toContain('taken as exact');
    expect(sure(withChances)).toContain('That gap is more than chance');
    expect(sure(paired({ gapMatters: false }))).toContain('so the gap says nothing');
  });

  it('shows what carries the doubt, the small ones together and never below nothing', () => {
    const told = read(render(withChances)).querySelector('#told-doubt-w')?.textContent ?? '';
    expect(told.split('; ')).toHaveLength(8);
    expect(told).toMatch(/^luck with the gearbox, 2009 wagon: 34%, 40% with others; /);
    expect(told).toContain('the four others, by themselves: too little to measure');
    expect(sure(drawn({ shares: [] }))).not.toContain('What carries the doubt');
  });

  it('keeps the check of the drawing itself to --json: a reader has no use for it', () => {
    expect(sure(withChances)).not.toMatch(/as often as they should|Counted/);
    expect(decisionJson(withChances).chances?.failures).toEqual(chances.failures);
  });

  it('shows each ranged number with its range in the margin', () => {
    expect(sure(withChances)).toContain('likely $1,800, 1 in 10 below $1,100, 1 in 10 above $2,900');
  });

  it('speaks of costs alone where there are not two sides', () => {
    const d = drawn({ pair: null });
    expect(sure(d)).toContain('There are not two sides to compare');
    expect(sure(d)).toContain('$16,400');
    expect(answerLines(d).join(' ')).not.toContain('ways it could go');
  });
});

describe('what is worth finding out first', () => {
  it('is answered by the first sentence, with what nothing can exceed', () => {
    expect(worth(withChances)).toMatch(
      /finding out first\? Most of all how long the gearbox will last, 2009 wagon: worth up to \$210\. Knowing beforehand how everything turns out would be worth up to \$690/,
    );
  });

  it('says nothing of what it cannot measure', () => {
    expect(worth(withChances)).toContain('The true figure for distance driven a yearnothing we can measure');
    const none = chances.worthKnowing.map((w) => ({ ...w, measurable: false }));
    expect(worth(drawn({ worthKnowing: none }))).toContain(
      'No one thing alone is worth anything we can measure.',
    );
  });

  it('is nothing where knowing everything is worth next to nothing', () => {
    for (const perfect of [e(12, 8), e(3, 0.5)])
      expect(worth(drawn({ perfect }))).toContain('Nothing here is worth paying to find out');
  });

  it('sets what a look is worth against its price', () => {
    expect(worth(withChances)).toMatch(
      /gearbox shop looks at the oil and the magnet: Worth up to \$100; it costs \$140: not worth it\./,
    );
    expect(worth(withChances)).toContain(
      'Worth up to $30; it costs $30: cannot tell whether it is worth it.',
    );
  });

  it('settles a tie: the cheapest look that pays is named', () => {
    const looks = chances.looks.map((l) => ({ ...l, pays: 'yes' as const }));
    const d = drawn({ looks }, { verdict: { ...withChances.verdict, kind: 'close' } });
    expect(answerLines(d).join(' ')).toContain(
      'Cheapest to find out first: compression test, for $30; worth up to $30.',
    );
  });
});

describe('without drawn futures', () => {
  it('everything stays as it is, and no question leads nowhere', () => {
    const page = text(render(decision));
    expect(page).not.toMatch(/ways it could go|futures|finding out first|How sure is it/);
    expect(answerLines(decision).join(' ')).not.toContain('ways it could go');
  });
});

describe('how futures are drawn', () => {
  it('is said where the method is, with the seed', () => {
    const method = section(withChances, 'method');
    expect(method).toContain('16,384 futures were drawn, seed 20261125: 16 times over');
    expect(method).toMatch(/Sobol.*Joe and Kuo.*Owen.*metalog; Keelin, 2016/);
  });
});
