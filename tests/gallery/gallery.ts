import type { PlotOptions } from '@observablehq/plot';
import { balanceChart } from '../../src/report/charts/balance.ts';
import { cumulativeChart } from '../../src/report/charts/cumulative.ts';
import { economicLifeChart } from '../../src/report/charts/economicLife.ts';
import type { Look } from '../../src/report/charts/look.ts';
import { readingsChart } from '../../src/report/charts/readings.ts';
import { replaceLaterChart } from '../../src/report/charts/replaceLater.ts';
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
  economicLife: (look) =>
    economicLifeChart(
      [1, 12, 24, 36].map((months) => ({ months, averageCost: 300 + (months - 24) ** 2 / 2 })),
      { best: '24 months: $300 a month' },
      look,
    ),
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
