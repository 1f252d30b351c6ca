import type { PlotOptions } from '@observablehq/plot';
import { balanceChart } from '../../src/report/charts/balance.ts';
import { coursesChart } from '../../src/report/charts/courses.ts';
import { cumulativeChart } from '../../src/report/charts/cumulative.ts';
import { densityChart } from '../../src/report/charts/density.ts';
import { economicLifeChart } from '../../src/report/charts/economicLife.ts';
import { fanChart } from '../../src/report/charts/fan.ts';
import { hundredChart } from '../../src/report/charts/hundred.ts';
import { lastingChart } from '../../src/report/charts/lasting.ts';
import { limitsChart } from '../../src/report/charts/limits.ts';
import type { Look } from '../../src/report/charts/look.ts';
import { readingsChart } from '../../src/report/charts/readings.ts';
import { replaceLaterChart } from '../../src/report/charts/replaceLater.ts';
import { runsDryChart } from '../../src/report/charts/runsDry.ts';
import { sharesChart } from '../../src/report/charts/shares.ts';
import { swingsChart } from '../../src/report/charts/swings.ts';
import { tippingLineChart } from '../../src/report/charts/tippingLine.ts';
import { waysChart } from '../../src/report/charts/ways.ts';
import { yearlyChart } from '../../src/report/charts/yearly.ts';

/** Every chart once, on round numbers a person can check in the drawing. Adding a chart means adding it here. */
export const gallery: Readonly<Record<string, (look: Look) => PlotOptions>> = {
  balance: (look) =>
    balanceChart(
      [0, 12, 24, 36].map((month) => ({ month, owed: 12_000 - month * 300, value: 10_000 - month * 150 })),
      { under: "to sell, you'd pay in" },
      look,
    ),
  courses: (look) =>
    coursesChart(
      [
        { id: 'own', label: 'Cash and own repair, keep it', side: 'keep', inHand: 3000, cost: 8000 },
        {
          id: 'let-go',
          label: 'Total loss, take the hatchback',
          side: 'replace',
          inHand: 4500,
          cost: 12_000,
        },
        {
          id: 'later',
          label: 'Cash, left as it is; the hatchback after a year',
          side: 'later',
          inHand: 3000,
          cost: 9000,
        },
        { id: 'none', label: 'No claim', side: 'keep', inHand: -1000, cost: 10_000 },
      ].map((row) => ({
        ...row,
        side: row.side as 'keep' | 'replace' | 'later',
        inHandWords: look.format.money(row.inHand),
        costWords: look.format.money(row.cost),
      })),
      { inHand: 'in hand that day', cost: 'over five years' },
      look,
    ),
  cumulative: (look) =>
    cumulativeChart(
      [0, 12, 24, 36].map((month) => ({ month, keep: 1000 + month * 200, replace: 500 + month * 250 })),
      {
        keep: { name: '2009 wagon', cost: '$8,200' },
        replace: { name: '2021 hatchback', cost: '$9,500' },
        crossing: { month: 12, words: 'month 12: paid for itself' },
      },
      look,
    ),
  density: (look) =>
    densityChart(
      [-2000, -1000, 0, 1000, 2000, 3000].map((from, i) => ({
        from,
        to: from + 1000,
        share: [0.05, 0.1, 0.2, 0.3, 0.25, 0.1][i] ?? 0,
      })),
      [
        { at: -500, words: 'bad case $500' },
        { at: 1500, words: 'middle $1,500' },
        { at: 3000, words: 'good case $3,000' },
      ],
      { keep: 'keeping cheaper', replace: 'replacing cheaper' },
      look,
    ),
  economicLife: (look) =>
    economicLifeChart(
      [1, 12, 24, 36].map((months) => ({ months, averageCost: 300 + (months - 24) ** 2 / 2 })),
      { best: '24 months: $300 a month' },
      look,
    ),
  fan: (look) =>
    fanChart(
      [0, 12, 24, 36].flatMap((month) => [
        { side: 'keep' as const, month, good: month * 200, middle: month * 250, bad: month * 350 },
        {
          side: 'replace' as const,
          month,
          good: 2000 + month * 280,
          middle: 2000 + month * 300,
          bad: 2000 + month * 320,
        },
      ]),
      {
        keep: { name: 'kept', middle: '$9,000', bad: '$12,600' },
        replace: { name: 'handed on', middle: '$12,800', bad: '$13,520' },
      },
      look,
    ),
  lasting: (look) =>
    lastingChart(
      [1, 12, 24, 35].map((month) => ({ month, cost: 30_000 - month * 200 })),
      26_000,
      { now: 'replaced now: $26,000', lost: 'lost in that month', from: 'from month 24 on', month: 24 },
      look,
    ),
  limits: (look) =>
    limitsChart(
      ['gearbox', 'alternator'].flatMap((component, i) =>
        [0, 12, 24].map((month) => ({
          component,
          month,
          limit: i === 0 ? 3000 - 50 * month : 1500 + 25 * month,
        })),
      ),
      [
        {
          component: 'gearbox',
          usual: 2600,
          words: { usual: 'usual bill $2,600', today: 'up to $3,000', last: 'up to $1,800' },
        },
        {
          component: 'alternator',
          usual: 400,
          words: { usual: 'usual bill $400', today: 'up to $1,500', last: 'up to $2,100' },
        },
      ],
      look,
    ),
  hundred: (look) =>
    hundredChart({ keep: 82, keepWords: '82 of 100: keeping', replaceWords: '18 of 100: replacing' }, look),
  readings: (look) =>
    readingsChart(
      ['Own time counted', 'Cash alone', 'A shop doing everything'].flatMap((reading, i) => [
        { reading, side: 'keep' as const, cost: 20_000 + i * 1000, words: 'kept' },
        { reading, side: 'replace' as const, cost: 22_000, words: 'handed on' },
      ]),
      look,
    ),
  replaceLater: (look) =>
    replaceLaterChart(
      [0, 12, 24, 36].map((month) => ({ month, cost: 20_000 + (month - 12) ** 2 * 10 })),
      { now: 'today: $21,400', never: 'never: $25,800', best: 'month 12: $20,000' },
      look,
    ),
  runsDry: (look) =>
    runsDryChart(
      [0, 12, 24, 36].flatMap((month) => [
        { side: 'keep' as const, month, of100: month / 2 },
        { side: 'replace' as const, month, of100: month },
      ]),
      {
        names: { keep: 'kept: 18 of 100', replace: 'handed on: 36 of 100' },
        level: { of100: 5, words: 'level to hold: 5 of 100' },
      },
      look,
    ),
  shares: (look) =>
    sharesChart(
      [
        { label: 'luck with the gearbox', alone: 0.4, together: 0.5, words: '40%, 50% with others' },
        { label: 'distance driven a year', alone: 0.2, together: 0.2, words: '20%' },
        { label: 'the two others, by themselves', alone: 0.1, together: null, words: '10%' },
      ],
      look,
    ),
  swings: (look) =>
    swingsChart(
      [
        {
          label: 'price of the hatchback',
          low: -2000,
          high: 6000,
          lowWords: '$11,000',
          highWords: '$17,000',
        },
        { label: 'repairs of the wagon', low: 3000, high: 1000, lowWords: '$800', highWords: '$1,200' },
      ],
      2000,
      look,
    ),
  tippingLine: (look) =>
    tippingLineChart(
      [0, 500, 1000].map((x) => ({ x, y: 5000 + 10 * x })),
      { x: (v) => `$${v}`, y: (v) => `$${v}`, today: { x: 500, y: 14_000 }, keepIs: 'above' },
      look,
    ),
  ways: (look) =>
    waysChart(
      [
        { id: 'keep', label: 'Mend it and keep it', side: 'keep', cost: 20_000, words: '$20,000' },
        { id: 'later', label: 'Keep it for 24 months', side: 'later', cost: 21_000, words: '$21,000' },
        { id: 'replace', label: 'Trade it in', side: 'replace', cost: 22_000, words: '$22,000' },
        { id: 'without', label: 'Do without', side: 'without', cost: 30_000, words: '$30,000' },
      ],
      look,
    ),
  yearly: (look) =>
    yearlyChart(
      [0, 1, 2].flatMap((year) => [
        { category: 'energy', year, side: 'keep' as const, amount: 1000 },
        { category: 'energy', year, side: 'replace' as const, amount: 800 },
        { category: 'loan', year, side: 'replace' as const, amount: year * 1000 },
        { category: 'repairs', year, side: 'keep' as const, amount: year === 2 ? -200 : 500 },
      ]),
      [
        { category: 'energy', words: '$3,000 kept, $2,400 handed on' },
        { category: 'loan', words: 'nothing kept, $3,000 handed on' },
        { category: 'repairs', words: '$800 kept, nothing handed on' },
      ],
      look,
    ),
};
