import type { ReplaceLater } from '../../engine/answer/decision.ts';
import { economicLifeChart } from '../charts/economicLife.ts';
import { lastingChart } from '../charts/lasting.ts';
import { replaceLaterChart } from '../charts/replaceLater.ts';
import { calendar, counted, span, stepBeside } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded, table } from '../tables/table.ts';
import { lastsSentence } from '../words/lasting.ts';
import { survivalSentences } from '../words/survival.ts';
import { block, type Chapter, notes, type Page, paragraphs, pick } from './page.ts';

const bestWords = ({ d }: Page, later: ReplaceLater): string => {
  const { month } = later.best;
  if (month === 0) return `For the ${later.name}, today is the cheapest day to change over.`;
  if (month >= d.horizon)
    return `For the ${later.name}, not changing over at all within ${span(d.horizon)} costs least.`;
  const named = calendar(d.facts.date, month);
  return `For the ${later.name}, changing over after ${counted(month, 'month')}${named && ` (${named})`} costs least.`;
};

const laterFigure = (page: Page, later: ReplaceLater): Html => {
  const { d, format, figure } = page;
  const rows = later.curve.map((p) => ({ month: p.month, cost: p.netPresentCost }));
  const [now, never] = [rows[0]?.cost ?? 0, rows.at(-1)?.cost ?? 0];
  const say = (units: number): string => format.round(units, stepBeside(units, now - never));
  const inside = later.best.month > 0 && later.best.month < d.horizon;
  return figure({
    id: `later-${later.replacement}`,
    finding: `Changing over today, the old one sold ${d.facts.jobs.length > 0 ? 'as it stands' : 'privately'}, comes to ${say(now)}, never to ${say(never)}${inside ? `, after ${counted(later.best.month, 'month')} to ${say(later.best.netPresentCost)}` : ''}.`,
    shows: `What it costs over ${span(d.horizon)}, in today's money, to keep it until a month and change over then. Today skips the work it needs; any later month pays for it.`,
    told: `A line from ${say(now)} for changing over today to ${say(never)} for never. ${bestWords(page, later)}`,
    chart: (look) =>
      replaceLaterChart(
        rows,
        {
          now: `today: ${say(now)}`,
          never: `never: ${say(never)}`,
          best: `month ${later.best.month}: ${say(later.best.netPresentCost)}`,
        },
        look,
      ),
    table: table({
      caption: `Changing over later: ${later.name}`,
      head: ['After month', `Costs over ${span(d.horizon)}`],
      rows: rows
        .filter((r) => r.month % 6 === 0 || r.month === later.best.month || r.month === d.horizon)
        .map((r) => [
          r.month === 0 ? 'today' : r.month === d.horizon ? 'never' : r.month,
          format.money(Math.round(r.cost)),
        ]),
    }),
  });
};

/** Costs a month within this part of each other are the same. */
const LEVEL = 0.05;

const lifeFigure = ({ d, format, figure }: Page): Html | null => {
  const life = d.economicLife;
  if (life.curve.length < 2) return null;
  const best = `${counted(life.best.months, 'month')}: ${format.round(life.best.averageCost)} a month`;
  const costs = life.curve.map((p) => p.averageCost);
  const falls = costs.every((c, i) => i === 0 || c <= (costs[i - 1] as number));
  const rises = costs.every((c, i) => i === 0 || c >= (costs[i - 1] as number));
  const still = falls && costs.length > 1;
  const [least, most] = [Math.min(...costs), Math.max(...costs)];
  const level = most - least < LEVEL * least;
  const finding = level
    ? `Owning the ${life.name} costs about ${format.round(least)} a month however long it stays.`
    : still
      ? `Owning the ${life.name} gets cheaper a month the longer it stays, as far as we look.`
      : `Owning the ${life.name} costs least a month when it stays ${counted(life.best.months, 'month')}.`;
  return figure({
    id: 'life',
    finding,
    shows:
      'Average cost of owning it, a month, by how many months it stays; what it would bring today is charged at the start.',
    told: `A ${falls ? 'falling' : rises ? 'rising' : 'falling and rising'} line; its least is ${best}.`,
    chart: (look) => economicLifeChart(life.curve, { best }, look),
    table: table({
      caption: `Average cost of owning: ${life.name}`,
      head: ['Months', 'A month, on average'],
      rows: life.curve
        .filter((p) => p.months % 6 === 0 || p.months === life.best.months)
        .map((p) => [p.months, format.money(Math.round(p.averageCost))]),
    }),
  });
};

/** What it costs if it is lost in a month, beside replacing it now. */
const lastingFigure = ({ d, format, figure }: Page): Html | null => {
  const { lasting } = d;
  if (!lasting) return null;
  const say = (units: number): string => format.round(units, stepBeside(units, units - lasting.replaceNow));
  const { curve, replaceNow, months } = lasting;
  return figure({
    id: 'lasting',
    finding: lastsSentence(d) ?? '',
    shows: `What it costs over ${span(d.horizon)}, in today's money, if it is mended, breaks down for good in a month and is replaced in a hurry; beside replacing it now.`,
    told: `A line from ${say(curve[0]?.cost ?? 0)} for the first month to ${say(curve.at(-1)?.cost ?? 0)} for the last, and a level one at ${say(replaceNow)}.`,
    chart: (look) =>
      lastingChart(
        curve,
        replaceNow,
        {
          now: `replaced now: ${say(replaceNow)}`,
          lost: 'lost in that month',
          from: months ? `from month ${months} on` : null,
          month: months ?? 0,
        },
        look,
      ),
    table: table({
      caption: 'If it does not last',
      head: ['Lost after month', `Costs over ${span(d.horizon)}`, 'Beside replacing it now'],
      rows: curve
        .filter(({ month }) => month % 6 === 0 || month === months || month === 1)
        .map(({ month, cost }) => [
          month,
          format.money(Math.round(cost)),
          `${format.money(Math.round(Math.abs(replaceNow - cost)))} ${cost < replaceNow ? 'less' : 'more'}`,
        ]),
    }),
  });
};

/** Year by year: how many of a hundred are still on the road. */
const survivalTable = ({ d }: Page): Html | null => {
  const { survival } = d;
  if (!survival) return null;
  const share = (chance: number): string => {
    const whole = Math.round(100 * chance);
    return whole >= 100 ? 'more than 99' : whole < 1 ? 'fewer than 1' : String(whole);
  };
  return folded(
    'How many of a hundred are still on the road, year by year',
    table({
      caption: 'Still on the road, of a hundred; collision and theft aside',
      head: ['After', 'Ours', 'Ours, a shop doing all the work', 'All of its kind and age'],
      rows: survival.years.map(({ year, ours, atShop, ofItsKind }) => [
        counted(year, 'year'),
        share(ours),
        share(atShop),
        share(ofItsKind),
      ]),
    }),
  );
};

/** When to let it go: the changing-over month that costs least, and the months over which owning it costs least. */
export const whenChapter = (page: Page): Chapter => {
  const { d, format } = page;
  const best = d.bestReplace?.replacement;
  const laters = d.replaceLater.toSorted(
    (a, b) =>
      Number(b.replacement === best) - Number(a.replacement === best) || a.replacement - b.replacement,
  );
  const [first, ...others] = laters;
  return {
    id: 'when',
    question: 'When would be the time to let it go?',
    body: html`${block(
      html`<p>${first ? bestWords(page, first) : d.bestKeep ? 'There is nothing to change over to, so the only question is how long to keep it.' : 'It cannot be kept, and there is nothing to change over to.'} ${others.map((o) => `${bestWords(page, o)} `)}</p>`,
      notes(
        pick(
          d,
          'household.pricesRise.vehicles',
          'vehicle.value.perYear',
          'vehicle.sellsFor.running',
          'vehicle.floor',
        ),
        format,
      ),
      paragraphs(survivalSentences(d)),
      survivalTable(page),
      lastingFigure(page),
      first ? laterFigure(page, first) : null,
      lifeFigure(page),
    )}`,
  };
};
