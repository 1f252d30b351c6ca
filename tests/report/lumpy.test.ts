import { describe, expect, it } from 'vitest';
import type { Chances, LumpyWay } from '../../src/engine/analysis/chances.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { formatsFor } from '../../src/report/format.ts';
import { drySentence, holdBackSentence, paymentsWords, wayOut } from '../../src/report/words/lumpy.ts';
import { chances, withChances } from './chances.ts';
import { decision, facts } from './fixture.ts';
import { read, render } from './page.ts';

const format = formatsFor(facts);
const chapterOf = (d: Decision): string =>
  (read(render(d)).querySelector('#lumpy')?.textContent ?? '').replace(/\s+/g, ' ');
const words = chapterOf(withChances);

/** The same futures with every way's money told otherwise. */
const told = (otherwise: (w: LumpyWay) => LumpyWay, more: Partial<Decision> = {}): Decision => ({
  ...withChances,
  ...more,
  chances: { ...chances, lumpy: chances.lumpy.map(otherwise) } satisfies Chances,
});
const ending =
  (chance: number) =>
  (w: LumpyWay): LumpyWay => ({
    ...w,
    fund: { ...w.fund, dry: w.fund.dry.map((p) => ({ month: p.month, chance })) },
  });

describe('the lumpy money', () => {
  it('answers first: which way runs the fund dry, how likely, and how much to hold back', () => {
    expect(words).toMatch(
      /^ ?Could we stand a big bill at a bad time\? Kept, a regular month takes about \$350, as today, so it fits\. Handed on, .* It fits\. ?Either way can run the fund dry: in 31 of 100 ways it could go if kept, 78 of 100 if handed on\. Hold back about \$2,800 if kept, about \$1,500 if handed on/,
    );
  });

  it('says which of the two it is, or that neither does', () => {
    expect(drySentence(told(ending(0.02)))).toBe(
      'What is put by carries either way: the fund runs dry in 2 of 100 ways it could go if kept, 2 of 100 if handed on.',
    );
    expect(drySentence(told((w) => ending(w.id === 'keep' ? 0.3 : 0)(w)))).toContain(
      "Keeping it runs the fund dry in more than 5 of 100, handing it on doesn't: in 30 of 100 ways it could go if kept, fewer than 1 of 100 if handed on.",
    );
  });

  it('holds back for the level the household asked for', () => {
    const d = { ...withChances, facts: { ...facts, chance: { ...facts.chance, mayRunDry: 0.1 } } };
    expect(holdBackSentence(d, format)).toContain('in at most 10 of 100');
  });

  it('stands a bad-case bill beside payments not made', () => {
    expect(words).toContain(
      'The bad-case bill within two years is $1,800 if kept (eight payments not made), $520 if handed on (two payments not made).',
    );
    expect([0.4, 1.2, 6.4].map(paymentsWords)).toEqual([
      'less than one payment',
      'one payment',
      'six payments',
    ]);
  });

  it('speaks of payments only where there are some', () => {
    const cash = chapterOf(
      told((w) => ({ ...w, worstBill: { ...w.worstBill, payments: null } }), { payments: [] }),
    );
    expect(words).toContain('A payment is certain and repairs are not');
    expect(words).toContain("A payment can't be put off; many repairs can");
    expect(cash).toContain('The bad-case bill within two years is $1,800 if kept, $520 if handed on.');
    expect(cash).not.toMatch(/A payment|payments? not made|three payments/);
  });

  it('says what months without income take, and who runs dry', () => {
    expect(words).toContain('Three months without income would still take $730 if kept, $1,300 if handed on');
    expect(words).toContain(
      "the fund doesn't last through them in 18 of 100 if kept, 83 of 100 if handed on",
    );
  });

  it('tells month by month what it costs to be out of the loan', () => {
    const [loan] = decision.payments;
    if (!loan) throw new Error('no loan');
    for (const [i, { month, toPay }] of wayOut(loan).entries()) {
      expect(month).toBe(loan.balance[i]?.month);
      expect(toPay * 100).toBeCloseTo((loan.balance[i]?.owed ?? 0) - (loan.balance[i]?.value ?? 0), 6);
    }
    const rows = [...read(render(withChances)).querySelectorAll('#lumpy details table tbody tr')].map((r) =>
      r.textContent.trim(),
    );
    expect(rows.filter((r) => /to pay in|left over/.test(r))).toHaveLength(decision.horizon + 1);
  });

  it('stands being stranded and crash protection beside the money, never netted', () => {
    expect(words).toMatch(
      /29 of 100 if kept, 4 of 100 if handed on\. This stands beside the money and isn't netted/,
    );
    expect(words).toContain('young driver');
    expect(words).toContain('protects in a crash');
  });

  it('says what standing about costs where it cannot move', () => {
    const driven = (mayBeDriven: 'to_the_shop' | 'no'): string =>
      chapterOf({ ...withChances, work: decision.work.map((view) => ({ ...view, mayBeDriven })) });
    expect(driven('to_the_shop')).not.toContain('It stands until it is mended');
    expect(driven('no')).toMatch(
      /It stands until it is mended\. Storage and rides run from the first day on.*and it can't be driven on while the money is saved/,
    );
  });

  it('shows nothing that tells of savings nobody gave, or that are private', () => {
    const unknown = told((w) => ({ ...w, fund: { ...w.fund, start: null, dry: [] } }));
    const hidden = { ...withChances, facts: { ...facts, private: ['savings_for_this'] } };
    for (const d of [unknown, hidden]) {
      const page = render(d);
      expect(page).not.toContain('id="fig-runs-dry"');
      expect(chapterOf(d)).toContain("How much is put by for this isn't said here. Hold back about $2,800");
      expect(chapterOf(d)).not.toMatch(/In the fund after|run dry in 31|78 of 100|doesn't last through/);
    }
  });

  it('keeps the set-aside out where that is private', () => {
    const hidden = { ...withChances, facts: { ...facts, private: ['spare_each_month'] } };
    expect(words).toContain('Into the fund each month');
    expect(chapterOf(hidden)).not.toContain('Into the fund each month');
  });

  it('is left out where no futures were drawn', () => {
    expect(render({ ...withChances, chances: null })).not.toContain('id="lumpy"');
  });

  it('is a chapter with one way only', () => {
    const alone = chapterOf({
      ...withChances,
      chances: { ...chances, lumpy: chances.lumpy.filter(({ id }) => !id.startsWith('replace')) },
      bestReplace: null,
      difference: null,
      payments: [],
      verdict: { ...decision.verdict, kind: 'keepOnly' },
    });
    expect(alone).toContain(
      'It can run the fund dry: in 31 of 100 ways it could go if kept. Hold back about',
    );
    expect(alone).not.toContain('handed on');
  });

  it('leaves the free way out of its tables where the rule hands on today, for then it says nothing more', () => {
    expect(words).toContain('Kept, free to walk away');
    const today = {
      ...withChances,
      chances: { ...chances, rule: chances.rule && { ...chances.rule, today: true } },
    };
    expect(chapterOf(today)).not.toContain('free to walk away');
    expect(chapterOf(today)).toContain('Handed on');
  });

  it('is two lines for the terminal, with the bill that is too big', () => {
    const lines = answerLines(withChances);
    expect(lines).toContain(
      'Bad-case bill within two years: $1,800 if kept (eight payments not made). Hold back about $2,800 if kept, about $1,500 if handed on, after what the first day takes, with $150 put by each month: then it runs dry in at most 5 of 100.',
    );
    expect(lines).toContain(
      'Pay up to about $3,150 for the gearbox today, $2,600 a year from now; above that, walk away. Parts, labour, own hours and the days without it count as the bill; the tow and the diagnosis, owed either way, do not.',
    );
    expect(answerLines({ ...withChances, chances: null, walkAway: null }).join(' ')).not.toMatch(
      /Hold back|Pay up/,
    );
  });
});
