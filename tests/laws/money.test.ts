import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { READINGS } from '../../src/engine/cashflow/posting.ts';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import type { Inputs, Payment, RunningCosts, WorkCost } from '../../src/engine/scenario/inputs/inputs.ts';
import { anyInputs } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

const all = (inputs: Inputs) => evaluate(inputs, EXPECTED, { facts: factsOf(inputs), rounding: 'unrounded' });

/** Every amount of money in the inputs, times k: prices, wages, floors, fees, caps, and the tables' exchange. */
const timesMoney = (inputs: Inputs, k: number): Inputs => {
  const work = <T extends Omit<WorkCost, 'by'>>(w: T): T => ({
    ...w,
    parts: w.parts * k,
    shopPrice: w.shopPrice === null ? null : w.shopPrice * k,
  });
  const bill = <T extends { aYear: number }>(b: T): T => ({ ...b, aYear: b.aYear * k });
  const costs = <T extends RunningCosts>(v: T): T => ({
    ...v,
    priceWhenNew: v.priceWhenNew * k,
    energy: { ...v.energy, price: v.energy.price * k },
    cover: bill(v.cover),
    registration: bill(v.registration),
    inspection: bill(v.inspection),
    tax: bill(v.tax),
    parkingAMonth: v.parkingAMonth * k,
    averageUpkeep: v.averageUpkeep * k,
    upkeep: v.upkeep.map(work),
    averageRepairs: {
      ...v.averageRepairs,
      priceRatio: v.averageRepairs.priceRatio * k,
      perDollar: v.averageRepairs.perDollar * k,
      statedAYear: v.averageRepairs.statedAYear === null ? null : v.averageRepairs.statedAYear * k,
    },
    components: v.components.map((part) => ({ ...work(part), tow: part.tow * k })),
    value:
      v.value.kind === 'decline'
        ? { ...v.value, perDistance: v.value.perDistance * k, downTo: v.value.downTo * k }
        : { ...v.value, points: v.value.points.map((p) => ({ ...p, value: p.value * k })) },
    floor: v.floor * k,
    selling: { ...v.selling, cost: v.selling.cost * k },
  });
  const pay = (p: Payment): Payment => {
    if (p.kind === 'cash') return p;
    if (p.kind === 'loan') return { ...p, downPayment: p.downPayment * k };
    return {
      ...p,
      startsFrom: p.startsFrom * k,
      residual: p.residual * k,
      dueAtSigning: p.dueAtSigning * k,
      overDistance: p.overDistance * k,
      acquisitionFee: p.acquisitionFee * k,
      dispositionFee: p.dispositionFee * k,
      purchaseFee: p.purchaseFee * k,
      earlyTermination: p.earlyTermination === null ? null : p.earlyTermination * k,
    };
  };
  const { household, vehicle } = inputs;
  return {
    household: {
      ...household,
      priceOfOwnHour: household.priceOfOwnHour * k,
      dayWithout: household.dayWithout * k,
      atHome: { ...household.atHome, shopHour: household.atHome.shopHour * k },
      savings: household.savings === null ? null : household.savings * k,
      spareEachMonth: household.spareEachMonth * k,
    },
    vehicle: {
      ...costs(vehicle),
      sellsFor: {
        running: vehicle.sellsFor.running * k,
        asItStands: vehicle.sellsFor.asItStands * k,
        tradeIn: vehicle.sellsFor.tradeIn === null ? null : vehicle.sellsFor.tradeIn * k,
        tradeInMended: vehicle.sellsFor.tradeInMended === null ? null : vehicle.sellsFor.tradeInMended * k,
        brokenDown: vehicle.sellsFor.brokenDown * k,
        scrap: vehicle.sellsFor.scrap * k,
      },
      loan: vehicle.loan && { ...vehicle.loan, owed: vehicle.loan.owed * k },
      storageADay: vehicle.storageADay * k,
      inAHurry: {
        ...vehicle.inAHurry,
        adds: vehicle.inAHurry.adds * k,
        refusedCosts: vehicle.inAHurry.refusedCosts * k,
      },
    },
    workNeeded: inputs.workNeeded.map((job) => ({
      ...work(job),
      notCured: work(job.notCured),
      moreFound: work(job.moreFound),
      patch: job.patch && work(job.patch),
      left: { aMonth: job.left.aMonth * k, valueLost: job.left.valueLost * k },
    })),
    replacement: inputs.replacement.map((deal) => ({
      ...costs(deal),
      price: deal.price * k,
      worthDayAfter: deal.worthDayAfter * k,
      tradeInCredit: deal.tradeInCredit === null ? null : deal.tradeInCredit * k,
      rebate: deal.rebate * k,
      fees: deal.fees.map((fee) => ({ ...fee, amount: fee.amount * k })),
      addOns: deal.addOns.map((fee) => ({ ...fee, amount: fee.amount * k })),
      payment: pay(deal.payment),
      inspectionBefore: deal.inspectionBefore * k,
      catchUp: deal.catchUp * k,
      oneOffs: deal.oneOffs.map((one) => ({ ...one, amount: one.amount * k })),
    })),
    anotherLikeOurs: inputs.anotherLikeOurs && {
      ...inputs.anotherLikeOurs,
      price: inputs.anotherLikeOurs.price === null ? null : inputs.anotherLikeOurs.price * k,
      inspectionBefore: inputs.anotherLikeOurs.inspectionBefore * k,
      catchUp: inputs.anotherLikeOurs.catchUp * k,
      hiddenFault: inputs.anotherLikeOurs.hiddenFault * k,
    },
    usualLike: {
      ...inputs.usualLike,
      inspectionBefore: inputs.usualLike.inspectionBefore * k,
      catchUp: inputs.usualLike.catchUp * k,
      hiddenFault: inputs.usualLike.hiddenFault * k,
    },
    doingWithout: inputs.doingWithout && { ...inputs.doingWithout, aDay: inputs.doingWithout.aDay * k },
    claim: null,
  };
};

describe('law 2: at a discount rate of nil', () => {
  it('the net present cost is the plain sum of the flows', () => {
    fc.assert(
      fc.property(anyInputs, (any) => {
        const inputs = { ...any, household: { ...any.household, moneyEarns: 0 } };
        for (const { flows, netPresentCost } of all(inputs))
          for (const reading of READINGS) {
            const plain = flows[reading].reduce((sum, amount) => sum + amount, 0);
            expect(Math.abs(netPresentCost[reading] - plain)).toBeLessThan(1e-6 + 1e-12 * Math.abs(plain));
          }
      }),
      { numRuns: 60 },
    );
  });
});

describe('law 3: all money times k', () => {
  it('gives every net present cost times k, unrounded', () => {
    fc.assert(
      fc.property(anyInputs, fc.constantFrom(0.1, 7.3, 150), (inputs, k) => {
        const scaled = all(timesMoney(inputs, k));
        all(inputs).forEach(({ netPresentCost, plan }, i) => {
          const other = scaled.find((one) => one.plan.id === plan.id) ?? scaled[i];
          for (const reading of READINGS) {
            const expected = netPresentCost[reading] * k;
            expect(Math.abs((other?.netPresentCost[reading] as number) - expected)).toBeLessThan(
              1e-6 * k + 1e-9 * Math.abs(expected),
            );
          }
        });
      }),
      { numRuns: 100 },
    );
  });
});
