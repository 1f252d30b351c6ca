import { describe, expect, it } from 'vitest';
import type { ComponentLimit, WalkAway } from '../../src/engine/decision/chance/walkAway.ts';
import type { Decision } from '../../src/engine/decision/decision.ts';
import { formatsFor } from '../../src/report/format.ts';
import { paper } from '../../src/report/style/paper.ts';
import { styleSheet } from '../../src/report/style/sheet.ts';
import {
  limitWords,
  mainComponent,
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
  it('answers first: up to how much, this year and next', () => {
    expect(words).toMatch(
      /^ ?When is a bill too big, and time to walk away\? Pay up to about \$2,900 for the gearbox this year, \$2,350 next year; above that, walk away\./,
    );
  });

  it('does not take for granted that the limit falls', () => {
    expect(said(1450, 1100)).toBe(
      'Pay up to about $1,450 for the gearbox this year, $1,100 next year; above that, walk away.',
    );
    expect(said(1100, 1450)).toContain('$1,100 for the gearbox this year, $1,450 next year');
    expect(said(1450, 1450)).toContain('about $1,450 for the gearbox, this year or next');
  });

  it('says so where no bill is worth paying', () => {
    expect(said(0, 0)).toBe('No bill for the gearbox is worth paying, this year or next: walk away.');
    expect(said(900, 0)).toContain('for any bill next year, walk away');
    expect(said(0, 900)).toContain('No bill for the gearbox is worth paying this year');
  });

  it('gives both ends of a year in which the limit moves by more than a third', () => {
    const gearbox = main(walkAway);
    const steep = {
      ...gearbox,
      byMonth: gearbox.byMonth.map((p) => ({ ...p, limit: 3000 - 100 * p.month })),
    };
    expect(limitWords(steep, 0, format)).toBe('$1,900 to $3,000');
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
    expect(words).toContain('The tow and the diagnosis are owed either way');
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
      'looking ten years ahead instead of five years, it would be about $2,100 for the gearbox this year.',
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
      'Handing it on today already costs no more, on average, than keeping it. If it is kept all the same, pay up to about $2,900 for the gearbox',
    );
    expect(part(d, '#walk-away')).toContain('The rule lets it go today.');
    expect(words).not.toMatch(/all the same|lets it go today/);
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

  it('has this year, next year, and what to ask', () => {
    expect(card).toMatch(/Gearbox ?\$2,900 ?\$2,350/);
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
