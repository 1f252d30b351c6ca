/** Work that is put off is priced at the month in which it is done, by the growth of its own family. */
import { describe, expect, it } from 'vitest';
import { type Posting, postingSink } from '../../../../src/engine/cashflow/sinks.ts';
import { project } from '../../../../src/engine/evaluation/project.ts';
import { contextOf, EXPECTED } from '../../../../src/engine/plans/vehicle/context.ts';
import { keepPlan } from '../../../../src/engine/plans/vehicle/keepPlan.ts';
import type { Treatment } from '../../../../src/engine/plans/vehicle/neededWork.ts';
import { presentValueAt } from '../../../../src/engine/plans/vehicle/presentVehicle.ts';
import type { Inputs, Job } from '../../../../src/engine/scenario/inputs/inputs.ts';
import * as base from '../../../support/household.ts';

const clutch: Job = {
  ...(base.inputs.workNeeded[0] as Job),
  name: 'clutch',
  parts: 400,
  hours: 10,
  shopPrice: 1500,
  canWait: 18,
  mayBeDriven: 'yes',
  daysWithout: 2,
  buyerPays: 0.5,
  notCured: { chance: 0.2, parts: 100, hours: 4, shopPrice: 600 },
  moreFound: { chance: 0.3, parts: 50, hours: 0, shopPrice: 80 },
};
const of = (job: Job): Inputs => ({
  ...base.inputs,
  household: {
    ...base.household,
    savings: null,
    priceOfOwnHour: 20,
    dayWithout: 35,
    pricesRise: { ...base.household.pricesRise, general: 0.02, repairs: 0.06, ownTime: 0.03 },
  },
  workNeeded: [job],
});
const workOf = (job: Job, treatment: Treatment): Posting[] => {
  const inputs = of(job);
  const ctx = contextOf(inputs, base.factsOf(inputs), EXPECTED, 'unrounded');
  const sink = postingSink();
  project(keepPlan('keep', '', 'left', [treatment], ctx), sink, ctx);
  return sink.postings.filter(({ line }) => line.category === 'work needed now');
};
const found = (postings: readonly Posting[], what: string): Posting =>
  postings.find(({ line }) => line.what === what) as Posting;

describe('work put off', () => {
  // A year and a half on: parts and shops 1.06^1.5, own hours 1.03^1.5, days without 1.02^1.5.
  const [parts, hour, day] = [1.06 ** 1.5, 20 * 1.03 ** 1.5, 35 * 1.02 ** 1.5];

  it('takes the parts, hours, days and shop prices of that month, a second attempt and more found too', () => {
    const postings = workOf(clutch, 'wait');
    const work = found(postings, 'clutch');
    expect(work.month).toBe(18);
    expect(work.counted).toBeCloseTo(400 * parts + 10 * hour, 8);
    expect(work.cash).toBeCloseTo(400 * parts + 2 * day, 8);
    expect(work.shop).toBeCloseTo(1500 * parts + 2 * day, 8);
    const again = found(postings, 'clutch, second attempt');
    expect(again.shop).toBeCloseTo(0.2 * (600 * parts + 2 * day), 8);
    expect(found(postings, 'clutch, more found').counted).toBeCloseTo(0.3 * 50 * parts, 8);
  });

  it('is dearer after twelve months, and after one: no bill waits for the turn of the year', () => {
    for (const months of [1, 12, 13])
      expect(found(workOf({ ...clutch, canWait: months }, 'wait'), 'clutch').counted).toBeCloseTo(
        400 * 1.06 ** (months / 12) + 10 * 20 * 1.03 ** (months / 12),
        8,
      );
  });

  it('after a patch that gives out, likewise; on the day at the prices of the day', () => {
    const patch = { by: 'own' as const, parts: 60, hours: 2, shopPrice: 200, months: 9 };
    const patched = workOf({ ...clutch, canWait: 0, patch }, 'patch');
    expect(found(patched, 'clutch').counted).toBeCloseTo(400 * 1.06 ** 0.75 + 200 * 1.03 ** 0.75, 8);
    expect(found(patched, 'clutch, patched').counted).toBeCloseTo(60 + 2 * 35, 8);
    expect(found(workOf(clutch, 'done'), 'clutch').counted).toBeCloseTo(400 + 200, 8);
  });

  it('brings what a buyer pays for it from that month on, at its price then', () => {
    const inputs = of(clutch);
    const ctx = contextOf(inputs, base.factsOf(inputs), EXPECTED, 'unrounded');
    const value = (treatment: Treatment, month: number): number =>
      presentValueAt([treatment], month, 60, ctx);
    const clean = (month: number): number => 3400 * 0.851 ** (month / 12);
    expect(value('done', 30)).toBeCloseTo(clean(30) + 750 * 0.851 ** 2.5, 8);
    expect(value('wait', 18)).toBeCloseTo(clean(18) + 750 * parts, 8);
    expect(value('wait', 30)).toBeCloseTo(clean(30) + 750 * parts * 0.851, 8);
  });
});
