import { describe, expect, it } from 'vitest';
import { decideAtAverage } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { READINGS } from '../../src/engine/cashflow/posting.ts';
import { type File, scenarioOf } from '../support/file.ts';

/**
 * A household that does best to mend it and sell it, as long as the job stays cheap: with a dear shop the other vehicle is
 * had by selling this one as it stands.
 */
const mendToSell = (change: (file: File) => void = () => undefined): Decision =>
  decideAtAverage(
    scenarioOf((file) => {
      file.vehicle.sells_for = { running: 6200, as_it_stands: 600 };
      file.work_needed = [
        {
          job: 'water pump',
          parts: 120,
          hours: 9,
          shop_price: 1400,
          can_wait: 'no',
          not_cured: { chance: 25 },
          buyer_pays: 0,
        },
      ];
      Object.assign(file.replacement, { price_with_all_fees: 9800, down_payment: 6000 });
      change(file);
    }),
    'test',
  );

const least = (d: Decision, side: string, reading: (typeof READINGS)[number]): number =>
  Math.min(...d.options.filter((o) => o.side === side).map((o) => o.netPresentCost[reading]));

describe('law 14: the sides choose anew', () => {
  const d = mendToSell();

  it('in each reading: what each side costs there is the least of all its ways there', () => {
    for (const reading of READINGS) {
      expect(d.bestIn[reading].keep?.netPresentCost[reading]).toBe(least(d, 'keep', reading));
      expect(d.bestIn[reading].replace?.netPresentCost[reading]).toBe(least(d, 'replace', reading));
      expect(d.difference?.[reading]).toBe(least(d, 'replace', reading) - least(d, 'keep', reading));
    }
    // Own hands mend it to sell it; at a shop's price it goes as it stands.
    expect(d.bestIn.counted.replace?.id).toContain('/mended/');
    expect(
      mendToSell((file) => void Object.assign(file.work_needed[0] ?? {}, { shop_price: 6400 })).bestIn.shop
        .replace?.id,
    ).toContain('/as-it-stands/');
  });

  it('if it is not cured: said where a chance was given, whatever way is best', () => {
    expect(d.ifNotCured).not.toBeNull();
    const surely = mendToSell(
      (file) => void Object.assign(file.work_needed[0] ?? {}, { not_cured: { chance: 100 } }),
    );
    // Apart by the cents that a loan is rounded to.
    expect(Math.abs((d.ifNotCured ?? 0) - (surely.difference?.counted ?? 0))).toBeLessThan(20);
  });

  it('at double the hours, and with a shop from the start', () => {
    const slow = mendToSell((file) => {
      Object.assign(file.work_needed[0] ?? {}, { hours: 18 });
      file.household = { at_home: { shop_hour: 60 } };
    });
    expect(Math.abs((d.doubleHours ?? 0) - (slow.difference?.counted ?? 0))).toBeLessThan(20);
    expect(Math.abs((d.shopFrom[0]?.difference ?? 0) - (d.difference?.shop ?? 0))).toBeLessThan(20);
  });

  it('for every price of an hour: where it tips, the two sides cost the same', () => {
    const tips = d.breakEvens.find(({ quantity }) => quantity.key === 'household.priceOfOwnHour');
    for (const { at } of tips?.roots ?? []) {
      const there = mendToSell((file) => void Object.assign(file, { household: { price_of_own_hour: at } }));
      expect(Math.abs(there.difference?.counted ?? 1e9)).toBeLessThan(200);
    }
  });
});
