import { describe, expect, it } from 'vitest';
import { billAnswer } from '../../src/engine/analysis/repairBill.ts';
import type { ComponentLimit, WalkAway } from '../../src/engine/analysis/repairLimitView.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { billLines } from '../../src/report/bill.ts';
import { formatsFor } from '../../src/report/format.ts';
import { paper } from '../../src/report/style/paper.ts';
import { styleSheet } from '../../src/report/style/sheet.ts';
import {
  limitSaid,
  limitWords,
  mainComponent,
  partName,
  payUpTo,
  savesWords,
  usualSentence,
} from '../../src/report/words/walk.ts';
import { chances, walkAway, withChances } from './chances.ts';
import { facts } from './fixture.ts';
import { read, render } from './page.ts';

const format = formatsFor(facts);
const part = (d: Decision, selector: string): string =>
  (read(render(d)).querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ');
const words = part(withChances, '#walk-away');

const limits = (now: number, later: number): WalkAway => ({
  ...walkAway,
  components: walkAway.components
    .filter((c) => c.component === 'gearbox')
    .map((c) => ({
      ...c,
      byMonth: c.byMonth.map((p) => ({ ...p, limit: p.month < 12 ? now : later })),
    })),
});
const main = (w: WalkAway): ComponentLimit => {
  const found = mainComponent(w);
  if (!found) throw new Error('no component');
  return found;
};
const said = (now: number, later: number): string =>
  payUpTo(main(limits(now, later)), limits(now, later), format);

describe('when to walk away', () => {
  it('answers first: up to how much, today and a year from now', () => {
    expect(words).toMatch(
      /^ ?When is a bill too big, and time to walk away\? Pay up to about \$3,150 for the gearbox today, \$2,600 a year from now; above that, walk away\./,
    );
  });

  it('does not take for granted that the limit falls', () => {
    expect(said(1450, 1100)).toBe(
      'Pay up to about $1,450 for the gearbox today, $1,100 a year from now; above that, walk away.',
    );
    expect(said(1100, 1450)).toContain('$1,100 for the gearbox today, $1,450 a year from now');
    expect(said(1450, 1450)).toContain('about $1,450 for the gearbox, today or a year from now');
  });

  it('says so where no bill is worth paying', () => {
    expect(said(0, 0)).toBe('No bill for the gearbox is worth paying, today or a year from now: walk away.');
    expect(said(900, 0)).toContain('for any bill a year from now, walk away');
    expect(said(0, 900)).toContain('No bill for the gearbox is worth paying today');
  });

  it('says when the usual bill is worth paying and when it is not', () => {
    const gearbox = main(walkAway);
    const at = (usualBill: number): string => usualSentence([{ ...gearbox, usualBill }], walkAway);
    expect(at(500)).toContain('for the gearbox it is worth paying.');
    expect(at(9000)).toContain('it is too big to be worth paying');
    expect(at(2650)).toContain('it is worth paying until about month 12');
  });

  it('says what the figure is and what it is not', () => {
    expect(words).toContain(
      'the most a repair bill may be before handing it on and taking the 2021 hatchback',
    );
    expect(words).toContain("It isn't what the vehicle is worth, and it isn't a sum set aside to be spent");
    expect(words).toContain(
      'Parts, labour, own hours and the days without it count as the bill; the tow and the diagnosis, owed either way, do not.',
    );
  });

  it('never trades safety for money', () => {
    expect(words).toContain(
      'Safety is never traded: with the brake lines failed it is not driven until that is mended, whatever the bill.',
    );
    const safe = { ...walkAway, components: walkAway.components.map((c) => ({ ...c, unsafe: false })) };
    expect(part({ ...withChances, walkAway: safe }, '#walk-away')).not.toContain('Safety is never traded');
  });

  it('gives the figure for twice as far where it hangs on that', () => {
    expect(words).toContain(
      'looking ten years ahead instead of five years, it would be about $2,250 for the gearbox today.',
    );
    const steady = {
      ...walkAway,
      components: walkAway.components.map((c) => ({ ...c, hangsOnHorizon: false })),
    };
    expect(part({ ...withChances, walkAway: steady }, '#walk-away')).not.toContain('hangs on how far');
  });

  it('says what the right to walk away saves, and where it cannot tell', () => {
    expect(words).toMatch(
      /about \$400 less than keeping it whatever comes, about \$4,400 less than handing it on now and about \$3,800 less than the best date fixed today/,
    );
    expect(words).toContain(
      '9 of 100 within one year, 18 of 100 within two years and 40 of 100 within five years',
    );
    expect(savesWords({ value: 30, error: 20 }, format)).toBeNull();
    expect(savesWords({ value: 0, error: 0 }, format)).toBe('the same');
    expect(savesWords({ value: -900, error: 20 }, format)).toBe('about $900 more');
    const { rule } = chances;
    if (!rule) throw new Error('no rule');
    const near = rule.against.map((a) => (a.id === 'keep' ? { ...a, saves: { value: 20, error: 22 } } : a));
    const d: Decision = { ...withChances, chances: { ...chances, rule: { ...rule, against: near } } };
    expect(part(d, '#walk-away')).toContain('Against keeping it whatever comes we cannot tell.');
  });

  it('is for whoever keeps it all the same, where handing it on today costs no more', () => {
    const { rule } = chances;
    if (!rule) throw new Error('no rule');
    const d: Decision = { ...withChances, chances: { ...chances, rule: { ...rule, today: true } } };
    expect(part(d, '#walk-away')).toContain(
      'Handing it on today already costs no more, on average, than keeping it. If it is kept all the same, pay up to about $3,150 for the gearbox',
    );
    expect(part(d, '#walk-away')).toContain('The rule lets it go today.');
    expect(part(d, '.card')).toContain('If it is kept all the same');
    expect(words).not.toMatch(/all the same|lets it go today/);
  });

  it('and where the verdict replaces it, wherever the limit stands', () => {
    const d: Decision = { ...withChances, verdict: { ...withChances.verdict, cheaper: 'replace' } };
    for (const selector of ['#walk-away', '.card', '#fig-limits figcaption'])
      expect(part(d, selector)).toMatch(/if it is kept all the same/i);
    expect(answerLines(d).join(' ')).toContain('If it is kept all the same, pay up to about $3,150');
  });

  it('is one number wherever it stands: sentence, table, card, terminal and phone call', () => {
    const page = read(render(withChances));
    const cells = (selector: string): string[][] =>
      [...page.querySelectorAll(`${selector} tr`)].map((row) =>
        [...row.querySelectorAll('th,td')].map((cell) =>
          (cell.textContent ?? '').replace(/\s+/g, ' ').trim(),
        ),
      );
    const table = cells('#fig-limits table');
    const answer = answerLines(withChances).join(' ');
    for (const c of walkAway.components) {
      const name = partName(c, walkAway).replace(/^the /, '');
      const today = limitWords(c, 0, format);
      const onCard = cells('.card').find(([cell]) => cell?.toLowerCase().startsWith(name));
      expect(onCard?.slice(1)).toEqual([0, 12, 24].map((month) => limitWords(c, month, format)));
      expect(table[1]?.[table[0]?.indexOf(name) as number]).toBe(today);
      expect(words).toContain(`${today} for the `);
      const [line] = billLines(billAnswer(walkAway, c, 1), facts, format).filter((l) => /^PAY/.test(l));
      expect(line).toContain(`is about ${today} today.`);
      if (c === mainComponent(walkAway))
        expect(answer).toContain(`Pay up to about ${today} for the ${name} today`);
    }
  });

  it('what counts in it is said wherever it stands', () => {
    const counts = 'Parts, labour, own hours and the days without it count as the bill';
    const places = [
      part(withChances, '.card'),
      part(withChances, '#fig-limits'),
      words,
      answerLines(withChances).join(' '),
      billLines(billAnswer(walkAway, main(walkAway), 1), facts, format).join(' '),
    ];
    for (const place of places) expect(place).toContain(counts);
  });

  it('typed back as a bill it is never too big', () => {
    const gearbox = main(walkAway);
    for (let limit = 5; limit < 30_000; limit = Math.ceil(limit * 1.013)) {
      const c = { ...gearbox, daysCost: 0, byMonth: [{ month: 0, limit, lookingTwice: null }] };
      const printed = Number(limitSaid(limit, format).replace(/[^0-9.]/g, ''));
      expect(billAnswer(walkAway, c, printed).answer, `${limit}`).not.toBe('walk away');
      expect(billAnswer(walkAway, c, limit * 1.1 + 5).answer).toBe('walk away');
    }
  });

  it('says so where no bill was too big in any future', () => {
    const { rule } = chances;
    if (!rule) throw new Error('no rule');
    const walkedBy = rule.walkedBy.map(({ month }) => ({ month, chance: { value: 0, error: 0 } }));
    const d: Decision = { ...withChances, chances: { ...chances, rule: { ...rule, walkedBy } } };
    expect(part(d, '#walk-away')).toContain('No bill that came was too big.');
  });

  it('is left out where there is nothing to walk away to', () => {
    expect(render({ ...withChances, walkAway: null })).not.toContain('id="walk-away"');
  });

  it('draws at most four parts, and has all of them in the table and on the card', () => {
    const page = read(render(withChances));
    for (const selector of ['#fig-limits table', '.card']) {
      const all = page.querySelector(selector)?.textContent.toLowerCase() ?? '';
      for (const c of walkAway.components.filter(({ position }) => position !== null))
        expect(all).toContain(c.component);
      expect(all).toContain('any other repair');
    }
    expect(page.querySelector('#fig-limits svg')?.textContent).not.toContain('any other repair');
  });
});

describe('the card for the glovebox', () => {
  const card = part(withChances, '.card');

  it('has today, a year and two years from now, what counts, and what to ask', () => {
    expect(card).toMatch(/Gearbox ?add \$80 for the days without it ?\$3,150 ?\$2,600 ?\$2,100/);
    expect(card).toContain('Parts, labour, own hours and the days without it count as the bill');
    for (const question of [
      /diagnosis included/,
      /else did you see/,
      /safe to drive/,
      /guarantee/,
      /How long/,
      /in writing/,
    ])
      expect(card).toMatch(question);
    expect(card).toContain('Information, not advice.');
    expect(card).toMatch(/Brake lines ?unsafe once it fails/);
  });

  it('names nobody', () => {
    expect(card).not.toMatch(new RegExp(`${facts.mechanic}|${facts.partner}`));
  });

  it('is printed whole, within a line to cut along', () => {
    expect(styleSheet).toMatch(/\.card\{[^}]*dashed[^}]*break-inside:avoid/);
    expect(paper).not.toMatch(/\.card[^}]*display: none/);
  });
});
