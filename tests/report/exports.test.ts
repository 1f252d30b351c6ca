import { describe, expect, it } from 'vitest';
import { centsText } from '../../src/engine/quantity/money.ts';
import { costsCsv, textCell } from '../../src/report/exports/costs.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { chances, walkAway, withChances } from './chances.ts';
import { decision } from './fixture.ts';

/** A reader of our own for RFC 4180, so that the writer is not checked by itself. */
const parse = (csv: string): string[][] =>
  csv
    .trimEnd()
    .split('\r\n')
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,"]*))/g)].map((m) =>
        (m[1] ?? m[2] ?? '').replaceAll('""', '"'),
      ),
    );

describe('every cost as CSV', () => {
  const [head = [], ...rows] = parse(costsCsv(decision));

  it('has a row for every posting of every way', () => {
    expect(head).toHaveLength(14);
    expect(rows).toHaveLength(decision.options.reduce((n, o) => n + o.ledger.length, 0));
    expect(rows.every((r) => r.length === 14)).toBe(true);
  });

  it('sums to what each way costs, to the cent, in all three readings', () => {
    for (const option of decision.options) {
      const own = rows.filter((r) => r[0] === option.id);
      const sum = (column: number): number =>
        own.reduce((cents, r) => cents + Math.round(Number(r[column]) * 100), 0);
      expect([8, 9, 10].map(sum)).toEqual([
        option.netPresentCost.counted,
        option.netPresentCost.cash,
        option.netPresentCost.shop,
      ]);
    }
  });

  it('writes amounts as plain decimals', () => {
    for (const row of rows) for (const cell of row.slice(5, 11)) expect(cell).toMatch(/^-?\d+\.\d\d$/);
  });

  it.each([
    '=1+1',
    '+A1',
    '-2+3',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    ' =1',
    '"=1',
    "'=1",
    '\uff1d1',
    '|x',
    '%0A',
    '\u0000=1',
    '\u202e=1',
    '\ufeff=1',
  ])('lets no cell become a formula: %j', (text) => {
    const [cell = ''] = parse(textCell(text))[0] ?? [];
    expect(cell).toMatch(/^'/);
  });

  it('keeps a cell on one line and its quotes', () => {
    expect(textCell('a "b"\r\nc\u2028d')).toBe('"a ""b"" c d"');
  });

  it('holds no formula whatever a job is called', () => {
    const option = decision.options[0];
    if (!option) throw new Error('no way');
    const hostile = {
      ...option,
      ledger: option.ledger.map((r) => ({ ...r, what: '=cmd|x', path: '@p', reason: '-1' })),
    };
    for (const row of parse(costsCsv({ ...decision, options: [hostile] })).slice(1))
      for (const cell of [row[4], row[12], row[13]]) expect(cell).toMatch(/^'/);
  });
});

describe('the decision as JSON', () => {
  const json = decisionJson(decision);

  it('gives amounts as decimal strings', () => {
    expect(json.difference).toBe(centsText(decision.difference?.counted ?? (0 as never)));
    for (const option of json.options)
      for (const amount of [option.netPresentCost, option.equivalentMonthlyCost, option.cashOnTheDay])
        expect(amount).toMatch(/^-?\d+\.\d\d$/);
  });

  it('gives the difference as the cheapest replacement less the cheapest keep', () => {
    const cost = (id: string | null): number => Number(json.options.find((o) => o.id === id)?.netPresentCost);
    expect(Number(json.difference)).toBeCloseTo(cost(json.bestReplace) - cost(json.bestKeep), 2);
  });

  it('holds what it promises and survives being written', () => {
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(json.breakEvens).toHaveLength(decision.breakEvens.length);
    expect(json.crossing).toEqual({ month: 6, cheaper: 'keep' });
  });
});

describe('drawn futures as JSON', () => {
  it('are all there, as the engine has them', () => {
    const json = decisionJson(withChances);
    expect(Object.keys(json.chances ?? {}).toSorted()).toEqual(Object.keys(chances).toSorted());
    expect(json.chances?.pair?.keepCheaper.error).toBe(0.004);
    expect(json.chances?.lumpy).toHaveLength(3);
    expect(json.chances?.ranged).toEqual(chances.ranged.map((q) => q.key));
    expect(json.walkAway).toEqual(
      JSON.parse(JSON.stringify(walkAway, (_, v) => (typeof v === 'number' ? Number(v.toPrecision(9)) : v))),
    );
  });

  it('are null where none were drawn', () => {
    expect(decisionJson(decision)).toMatchObject({ chances: null, walkAway: null });
  });

  it('leave a range with its number', () => {
    const quantities = [...decision.quantities.slice(0, 1), ...chances.ranged.slice(0, 1)];
    const [plain, ranged] = decisionJson({ ...decision, quantities }).quantities;
    expect(plain).not.toHaveProperty('range');
    expect(ranged).toMatchObject({ range: { low: 1100, likely: 1800, high: 2900 }, varies: 'once' });
  });
});
