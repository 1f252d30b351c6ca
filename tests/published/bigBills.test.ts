/**
 * Worked cases of big bills and giving up. The tail's exponent is the elasticity of giving up to a vehicle's worth of
 * Jacobsen & van Benthem (2015), American Economic Review 105(3), 1312-1338: about -0.7. Proportions on the road: US EPA
 * OMEGA model inputs, re-registered by age. Closed forms, checked against 10^6 simulated paths each.
 */
import { describe, expect, it } from 'vitest';
import { atLimit, billAt, inAMonth, TAIL } from '../../src/engine/chance/bigBill.ts';
import tables from '../../src/engine/scenario/facts/publicTables.json' with { type: 'json' };
import { bigBillsAYear } from '../../src/engine/scenario/inputs/tables.ts';

const R = tables.onTheRoad.value.car;
const lambdas = (from: number, to: number): number[] =>
  Array.from({ length: to - from }, (_, i) => bigBillsAYear('car', from + i));
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

describe('how many are still on the road', () => {
  it('is the table, collision and theft of young ones aside, for the ordinary household', () => {
    const young = sum([1, 2, 3, 4].map((a) => 1 - (R[a] as number) / (R[a - 1] as number))) / 4;
    expect(R[17]).toBeCloseTo(0.383185786, 9);
    expect(R[22]).toBeCloseTo(0.106567417, 9);
    expect(young).toBeCloseTo(0.014028275, 6);
    expect(bigBillsAYear('car', 17)).toBeCloseTo(0.205205, 6);
    const stays = Math.exp(-sum(lambdas(17, 22)) * atLimit(1, 1).givesUp);
    expect(stays).toBeCloseTo(0.298465, 6);
    expect(stays).toBeCloseTo((R[22] as number) / (R[17] as number) / (1 - young) ** 5, 12);
  });

  it('is more where own hands make bills smaller and the limit is higher', () => {
    const { givesUp } = atLimit(1.3, 0.45);
    expect(givesUp).toBeCloseTo(0.47587, 5);
    expect(Math.exp(-sum(lambdas(17, 22)) * givesUp)).toBeCloseTo(0.562493, 6);
  });

  it('of young ones nobody gives up more than are lost by collision and theft anyhow', () => {
    expect(bigBillsAYear('truck', 0)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...lambdas(0, 4))).toBeLessThan(0.01);
  });
});

describe('one big bill against a limit', () => {
  it('within the tail', () => {
    const { givesUp, paid, lesser } = atLimit(4600, 0.45 * 3400);
    expect(givesUp).toBeCloseTo(0.462758, 6);
    expect(paid).toBeCloseTo(1396.931109, 5);
    expect(paid / (1 - givesUp)).toBeCloseTo(2600.187543, 5);
    expect(lesser).toBeCloseTo(3525.61587, 5);
  });

  it('beyond the tail a fifth is not to be mended at any price', () => {
    const { givesUp, paid, lesser } = atLimit(4600, 0.1 * 3400);
    expect(givesUp).toBeCloseTo(0.199526, 6);
    expect(paid).toBeCloseTo(789.57477, 5);
    expect(paid / (1 - givesUp)).toBeCloseTo(986.384315, 5);
    expect(lesser).toBeCloseTo(1707.395435, 5);
    expect(billAt(1, 1 - givesUp - 1e-9)).toBeLessThan(10);
    expect(billAt(1, 1 - givesUp + 1e-9)).toBe(Number.POSITIVE_INFINITY);
  });

  it('below it every one is given up', () => {
    expect(atLimit(3000, 3400)).toStrictEqual({ givesUp: 1, paid: 0, lesser: 3000 });
  });

  it('a limit a tenth higher gives up 6.45 % less, neither end of the tail met: elasticity 0.7', () => {
    const [now, higher] = [atLimit(4600, 1530), atLimit(5060, 1530)];
    expect(1 - higher.givesUp / now.givesUp).toBeCloseTo(0.0645, 4);
    expect(Math.log(now.givesUp / higher.givesUp) / Math.log(1.1)).toBeCloseTo(TAIL, 9);
  });

  it('drawn bills are those of the law', () => {
    const n = 200_000;
    let [over, paid] = [0, 0];
    for (let i = 0; i < n; i++) {
      const bill = billAt(1530, (i + 0.5) / n);
      if (bill > 4600) over += 1;
      else paid += bill;
    }
    expect(over / n).toBeCloseTo(0.462758, 4);
    expect(paid / n).toBeCloseTo(1396.931, 1);
  });
});

describe('five years of them', () => {
  const v = 1.05 ** (-1 / 12);
  const one = atLimit(4600, 0.45 * 3400);
  const { bills, ends } = inAMonth(0.24 / 12, one);

  it('renewed by its like', () => {
    expect((v * (1 - v ** 60)) / (1 - v)).toBeCloseTo(53.133838, 6);
    expect((bills * one.lesser * v * (1 - v ** 60)) / (1 - v)).toBeCloseTo(3729.305792, 5);
  });

  it('given up once', () => {
    expect(ends).toBeCloseTo(0.00921245405, 11);
    let [there, paid, gone] = [1, 0, 0];
    for (let m = 1; m <= 60; m++) {
      paid += v ** m * there * bills * one.paid;
      gone += v ** m * there * ends * 14_000;
      there *= 1 - ends;
    }
    expect(paid).toBeCloseTo(1151.896485, 5);
    expect(gone).toBeCloseTo(5342.198477, 4);
    expect(-(v ** 60) * there * 3400).toBeCloseTo(-1528.849578, 5);
    expect(paid + gone - v ** 60 * there * 3400).toBeCloseTo(4965.245384, 4);
  });
});
