import { describe, expect, it } from 'vitest';
import type { BreakEven, Decision } from '../../src/engine/answer/decision.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { formatsFor } from '../../src/report/format.ts';
import { tipAt } from '../../src/report/words/tipping.ts';
import { decision, facts, quantity } from './fixture.ts';
import { read, render } from './page.ts';

const format = formatsFor(facts);
const lookAhead = quantity('household.lookAhead');
const horizon: BreakEven = {
  quantity: lookAhead,
  status: 'one',
  roots: [{ at: 52, kind: 'jump', distance: 52 / lookAhead.value - 1, above: 'keep' }],
  slope: 1,
};
const withHorizon: Decision = { ...decision, breakEvens: [horizon, ...decision.breakEvens] };

const text = (d: Decision, selector: string): string =>
  (read(render(d)).querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ');

describe('what tips it first', () => {
  it.each([
    ['a price', decision],
    ['how far ahead we look', withHorizon],
  ])('is the same number in lead, chapter, table, terminal and JSON: %s', (_, d) => {
    const first = d.breakEvens.find(({ roots }) => roots.length > 0) as BreakEven;
    const { quantity: q, roots } = first;
    const at = tipAt(q, roots[0]?.at as number, format);
    const said = `${q.label}: ${at} instead of ${format.quantity(q)}`;
    expect(answerLines(d).join(' ')).toContain(said);
    expect(text(d, '#answer')).toContain(said);
    expect(text(d, '#change')).toContain(`Nearest to tipping it is ${said}`);
    const [, row] = [...read(render(d)).querySelectorAll('#change h3 + div table tr, #change h3 + table tr')];
    const cells = row?.textContent?.replace(/\s+/g, ' ') ?? '';
    expect(cells).toContain(q.label);
    expect(cells).toContain(at);
    expect(decisionJson(d).breakEvens.find((b) => b.roots.length > 0)?.key).toBe(q.key);
  });

  it('and the picture of two numbers together says the number of the table', () => {
    const price = decision.breakEvens.find(({ quantity: q }) => q.key === 'replacement.0.price');
    const at = tipAt(quantity('replacement.0.price'), price?.roots[0]?.at as number, format);
    expect(text(decision, '#fig-two-way')).toContain(`price with all fees, 2021 hatchback is ${at}.`);
    // Read off a line of few points it would be another.
    const line = decision.breakEvenLine;
    if (!line) throw new Error('the fixture has a line');
    const bent = line.points.map((p) => ({ x: p.x, y: p.y === null ? null : p.y * 1.02 }));
    const rough: Decision = { ...decision, breakEvenLine: { ...line, points: bent } };
    expect(text(rough, '#fig-two-way')).toContain(`price with all fees, 2021 hatchback is ${at}.`);
  });

  it('and an own hour has the price it has in the table', () => {
    const hour = decision.breakEvens.find(({ quantity: q }) => q.key === 'household.priceOfOwnHour');
    const at = hour?.roots[0]?.at as number;
    const said = tipAt((hour as BreakEven).quantity, at, format);
    expect(text({ ...decision, ownHourTips: at }, '#change')).toContain(
      `It tips when an own hour is worth about ${said}.`,
    );
  });
});
