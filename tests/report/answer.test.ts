import { describe, expect, it } from 'vitest';
import type { BreakEven, Decision } from '../../src/engine/answer/decision.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { decision } from './fixture.ts';

const c = (n: number): Cents => n as Cents;
const agreeing: Decision = {
  ...decision,
  difference: { counted: c(347_508), cash: c(397_592), shop: c(211_846) },
  verdict: { ...decision.verdict, readingsDisagree: false },
};
const verdictOf = (d: Decision): string => answerLines(d)[1] ?? '';

describe('the answer in a few lines', () => {
  it('reads like this', () => {
    expect(answerLines(agreeing)).toMatchInlineSnapshot(`
      [
        "Don't drive it until this is done: front brakes ($140).",
        "Keeping the 2009 wagon costs about $3,500 less over five years ($70 a month) if Ren does the work; about $2,100 less at shop prices.",
        "Kept, a regular month takes about $350, as today, so it fits.",
        "Handed on, a regular month takes about $485, $229 of it the payment: $130 more than today. It fits.",
        "Mending it pays if it then lasts 45 months, the 2021 hatchback after that.",
        "Mend it and keep it: about $21,000 over five years, in today's money; works out at $386 a month.",
        "Sell it as it stands, and get the 2021 hatchback: about $24,800 over five years, in today's money; works out at $456 a month.",
        "Sell it as it stands, and get another 2009 wagon: about $21,300 over five years, in today's money; works out at $391 a month.",
        "What would tip it first: price with all fees, 2021 hatchback: $10,500 instead of $13,900 (÷ 1.32).",
        "1 of 45 numbers decides this; none is a guess.",
        "Savings left the day after: $1,100 if kept; none, $150 borrowed if handed on.",
        "Not counted: crash protection; the dog fits in the back.",
      ]
    `);
  });

  it('puts safety above the money, and a disagreement of the readings before the verdict', () => {
    const lines = answerLines(decision);
    expect(lines[0]).toContain("Don't drive it");
    expect(lines[1]).toBe(
      'Who does the work decides this. With own time counted and cash alone, keeping costs less; with a shop doing everything, handing it on does.',
    );
    expect(lines[2]).toContain('about $3,800 less');
  });

  it('says who is to be believed when only own time makes the difference', () => {
    const d = { ...decision, difference: { counted: c(-100_000), cash: c(200_000), shop: c(-300_000) } };
    expect(answerLines(d)[1]).toContain('Whether own time counts decides this.');
  });

  it('says what the vehicle itself says about safety where no notice does', () => {
    expect(
      answerLines({ ...decision, facts: { ...decision.facts, mayBeDriven: false }, notices: [] })[0],
    ).toBe('It is not to be driven as it stands.');
  });

  it('never shows a bare minus', () => {
    for (const side of [1, -1]) {
      const d = {
        ...agreeing,
        difference: { counted: c(side * 424_291), cash: c(side * 1), shop: c(-side * 5_000_000) },
      };
      expect(answerLines(d).join(' ')).not.toMatch(/[-\u2212][$\d]/);
    }
  });

  it('says that handing on costs less when it does', () => {
    const d: Decision = {
      ...agreeing,
      difference: { counted: c(-210_000), cash: c(-200_000), shop: c(-400_000) },
      verdict: { ...agreeing.verdict, kind: 'replace', cheaper: 'replace' },
    };
    expect(verdictOf(d)).toMatch(
      /^Handing it on for the 2021 hatchback costs about \$2,100 less over five years/,
    );
  });

  it('calls a tie a tie, and names what would settle it', () => {
    const settling = decision.breakEvens.find((b) => b.roots.length > 0) as BreakEven;
    const close: Decision = {
      ...agreeing,
      verdict: { ...agreeing.verdict, kind: 'close', settledBy: [settling] },
    };
    expect(verdictOf(close)).toMatch(
      /^Too close to call\. On today's numbers keeping the 2009 wagon costs about \$3,500 less/,
    );
    expect(verdictOf(close)).toContain('is only an estimate');
    const same: Decision = { ...close, verdict: { ...close.verdict, cheaper: 'same' } };
    expect(verdictOf(same)).toMatch(/^The two cost the same over five years\./);
  });

  it('says when only one way is open, or none, and why', () => {
    const only: Decision = {
      ...agreeing,
      bestReplace: null,
      difference: null,
      verdict: { ...agreeing.verdict, kind: 'keepOnly' },
    };
    expect(verdictOf(only)).toMatch(
      /^Keeping the 2009 wagon is the only way open besides getting another like it: it costs about \$2\d,\d00 over five years/,
    );
    const alone: Decision = { ...only, options: only.options.filter(({ side }) => side !== 'like') };
    expect(verdictOf(alone)).toMatch(/^Keeping the 2009 wagon is the only way open: it costs about/);
    const none: Decision = {
      ...alone,
      bestKeep: null,
      answer: null,
      verdict: { ...only.verdict, kind: 'none' },
    };
    expect(answerLines(none).slice(1)).toEqual([
      'No way is open as things stand. What closes each one is said below.',
      ...none.closed.map((way) => `${way.label}: not open, because ${way.why}.`),
      'Not counted: crash protection; the dog fits in the back.',
    ]);
  });

  it('leaves savings out when nobody gave them', () => {
    const d = { ...agreeing, quantities: agreeing.quantities.filter((q) => q.key !== 'household.savings') };
    expect(answerLines(d).join(' ')).not.toContain('Savings');
  });
});
