/** Law 18: when the horizon moves by a month, no figure moves by more than that month's flows, repricing and decline. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leasePayment } from '../../src/engine/cashflow/contracts/lease.ts';
import { marketValue } from '../../src/engine/cashflow/contracts/marketValue.ts';
import type { Reading, Sink } from '../../src/engine/cashflow/posting.ts';
import { waysOf } from '../../src/engine/evaluation/options.ts';
import { evaluatePlan, presentCostOf } from '../../src/engine/evaluation/project.ts';
import { bigBillsAMonth } from '../../src/engine/plans/vehicle/bigBills.ts';
import { renewalOf } from '../../src/engine/plans/vehicle/boughtBigBills.ts';
import { renewable } from '../../src/engine/plans/vehicle/boughtVehicle.ts';
import { type Context, contextOf, EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { chanceOfEnd } from '../../src/engine/plans/vehicle/endOfLife.ts';
import { LIKE_OURS, offerAt, offerings } from '../../src/engine/plans/vehicle/likeOurs.ts';
import { OURS, ourLasting } from '../../src/engine/plans/vehicle/ours.ts';
import { smoothLevel, yearlyLevel, yearOf } from '../../src/engine/quantity/month.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Inputs, PresentVehicle, Replacement } from '../../src/engine/scenario/inputs/inputs.ts';
import type { Facts } from '../../src/engine/scenario/inputs/scenario.ts';
import { anyInputs, anyInputsThatMayEnd } from '../support/anyHousehold.ts';
import { factsOf } from '../support/household.ts';

interface Household {
  readonly inputs: Inputs;
  readonly facts: Facts;
}

/** One way at one horizon: what it costs, and by how much that may differ from a horizon one month shorter. */
interface Figure {
  readonly id: string;
  readonly side: string;
  readonly cost: number;
  /** Between what the last month's flows, repricing and decline may move it, in today's money. */
  readonly low: number;
  readonly high: number;
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);

/** What the market value may lose from one month to the next (a table of values may rise), and what selling it is repriced by. */
const declineOf = (
  vehicle: PresentVehicle | Replacement,
  inputs: Inputs,
  from: number,
  to: number,
): { readonly least: number; readonly most: number } => {
  const { household } = inputs;
  const { pricesRise: rise } = household;
  const now = 'price' in vehicle ? vehicle.worthDayAfter : vehicle.sellsFor.running;
  const terms = { now, law: vehicle.value, floor: vehicle.floor, brandFactor: vehicle.brandFactor };
  const at = (month: number): number => marketValue(terms, month, (month * household.distanceAYear) / 12);
  const { cost, hours, weeks } = vehicle.selling;
  const selling = (month: number): number =>
    cost * smoothLevel(rise.general, month) +
    hours * household.priceOfOwnHour * yearlyLevel(rise.ownTime, month) +
    (weeks / 52) *
      (vehicle.cover.aYear * yearlyLevel(rise.cover, month) +
        (vehicle.tax.aYear + 12 * vehicle.parkingAMonth) * yearlyLevel(rise.fees, month));
  const earns = (1 + household.moneyEarns) ** (1 / 12) - 1;
  const falls = at(from) - at(to);
  const most = Math.max(0, falls) + selling(to) - selling(from) + earns * (at(from) + selling(to));
  return { least: Math.min(0, falls), most };
};

/** A month's part of what is paid ahead for a year and comes back, and a month's interest on all of it. */
const billsOf = (vehicle: PresentVehicle | Replacement, inputs: Inputs, month: number): number => {
  const { pricesRise: rise, moneyEarns } = inputs.household;
  const surcharge = inputs.claim?.surcharge.aYear ?? 0;
  const aYear =
    (vehicle.cover.aYear + surcharge) * yearlyLevel(rise.cover, month) +
    vehicle.tax.aYear * yearlyLevel(rise.fees, month);
  return aYear / 12 + aYear * ((1 + moneyEarns) ** (1 / 12) - 1);
};

/** What is part of a year's fees but does not come back: named exceptions. */
const isLumpOfFees = (what: string): boolean =>
  what.startsWith('inspection,') || what.startsWith('registration,');

/** What an end found out at the last month's inspection costs: a change of vehicle, and selling the new one again. */
const frictionOf = (ctx: Context, month: number): number => {
  const all = offerings(ctx).map((index) => frictionWith(index, ctx, month));
  return Math.max(0, ...all);
};

const frictionWith = (index: number, ctx: Context, month: number): number => {
  const { inputs } = ctx;
  const { vehicle } = inputs;
  const { inAHurry: hurry, sellsFor } = vehicle;
  const next = offerAt(index, 0, ctx);
  const said = inputs.anotherLikeOurs;
  const finding =
    said && index === LIKE_OURS ? said.hiddenFault + said.hours * inputs.household.priceOfOwnHour : 0;
  const level = smoothLevel(Math.max(...Object.values(inputs.household.pricesRise)), month);
  const change =
    next.price * (1 + next.salesTax) -
    next.worthDayAfter +
    sum([...next.fees, ...next.addOns].map(({ amount }) => amount)) +
    next.inspectionBefore +
    next.catchUp +
    finding +
    next.registration.aYear +
    next.inspection.aYear;
  const lost = hurry.adds + hurry.days * (inputs.household.dayWithout + vehicle.storageADay);
  return (
    level * (change + lost + hurry.refused * hurry.refusedCosts) +
    sellsFor.running -
    Math.min(sellsFor.asItStands, sellsFor.scrap)
  );
};

const figuresAt = ({ inputs: of, facts }: Household, horizon: number, reading: Reading): Figure[] => {
  const inputs = { ...of, household: { ...of.household, lookAhead: horizon } };
  const { household, vehicle } = inputs;
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const [last, before] = [horizon, horizon - 1];
  const v = (1 + household.moneyEarns) ** (-1 / 12);
  const due = new Set(inputs.workNeeded.flatMap((job) => [job.canWait, job.patch?.months ?? null]));
  return waysOf(ctx)
    .open.filter(({ side }) => side !== 'later')
    .map((way) => {
      const plan = way.build(ctx);
      const { onCard } = evaluatePlan(plan, ctx);
      let [month, low, high] = [0, 0, 0];
      const either = (amount: number): void => {
        low -= amount;
        high += amount;
      };
      const add = (category: string, what: string, at: number, amount: number): void => {
        if (isLumpOfFees(what) && at >= before) either(Math.abs(amount));
        if (at !== last || category === 'lease' || category === 'loan') return;
        if (category === 'insurance' || category === 'registration, tax, inspection') return;
        if (category !== "what we'd own at the end") month += amount;
      };
      const sink: Sink = {
        post: ({ category, what }, at, counted, cash, shop) =>
          add(category, what, at, { counted, cash, shop }[reading]),
        series: ({ category }, from, to, levels, counted, cash, shop) => {
          if (from > last || to < last) return;
          const level = levels[Math.min(last, levels.length - 1)] as number;
          const amount = level * { counted, cash, shop }[reading];
          if (category === 'insurance') month += amount;
          else add(category, '', last, amount);
        },
        time: null,
        stands: null,
      };
      const cost = presentCostOf(plan, ctx, sink)[reading];

      const deal = plan.replacement === null ? null : offerAt(plan.replacement, 0, ctx);
      const nexts = offerings(ctx).map((index) => offerAt(index, 0, ctx));
      const kept = way.side === 'keep';
      const mayEnd = kept && (vehicle.ends.length > 0 || household.bigBills > 0);
      const held = [...(kept ? [vehicle] : []), ...(deal ? [deal] : [])];
      // Used up and worth less: both cost, and no more than this.
      for (const one of held) {
        const { least, most } = declineOf(one, inputs, before, last);
        low += least;
        high += billsOf(one, inputs, last) + most;
      }
      // Big bills of the last two months: on the last day of all one takes the value, a month before it renews the vehicle.
      const met = [
        ...(kept ? [OURS] : []),
        ...(kept ? offerings(ctx) : plan.replacement === null ? [] : [plan.replacement]).map((index) =>
          renewable(index, 0),
        ),
      ];
      for (const one of met) {
        const rate = bigBillsAMonth(one.vehicleAt(ctx), yearOf(last), ctx);
        if (rate > 0) either(2 * rate * Math.abs(renewalOf(one, before, ctx)[reading]));
      }
      // Walking away is worked out in a few months of all, and taken in a straight line between: those move with the horizon.
      if (mayEnd) either(0.004 * Math.abs(cost));
      // What the last month brings comes only to those that are still there.
      const gone = mayEnd ? 1 - (ourLasting(ctx).there[reading][before] as number) : 0;
      low -= gone * Math.max(0, month);
      high += gone * Math.max(0, -month);
      // Once it has ended the next one ages from the month in which it was got, at the price of then.
      for (const next of mayEnd ? nexts : []) {
        const { most } = declineOf(next, inputs, 0, 1);
        high += billsOf(next, inputs, last) + most * smoothLevel(household.pricesRise.vehicles, last);
        // Fees that do not come back, paid once more or once less since it was got: a named exception.
        either(
          (next.registration.aYear + next.inspection.aYear) * yearlyLevel(household.pricesRise.fees, last),
        );
      }
      if (kept) {
        // What buyers pay for work, and the gap that undone work takes its part of, fall as the value does.
        const now = vehicle.sellsFor.running;
        const { value: law, floor, brandFactor } = vehicle;
        const driven = (before * household.distanceAYear) / 12;
        const then = marketValue({ now, law, floor, brandFactor }, before, driven);
        const clean = Math.min(now * brandFactor, then) || 1;
        // Work put off is paid for at its month's price, which is no more than this.
        const dearer = smoothLevel(household.pricesRise.repairs, before);
        const buyersPay = sum(
          inputs.workNeeded.map(
            (job) => (job.shopPrice ?? job.parts + job.hours * household.atHome.shopHour) * job.buyerPays,
          ),
        );
        const { least, most } = declineOf(vehicle, inputs, before, last);
        high += (most * buyersPay * dearer) / clean;
        low += (least * buyersPay * dearer) / clean;
        if (way.id === 'keep/left') low -= most;
        // Work put off that falls due: a named exception.
        if (due.has(before)) either(Number.POSITIVE_INFINITY);
        const asked = chanceOfEnd(vehicle, before)[before] as number;
        if (asked > 0) high += asked * frictionOf(ctx, last);
      }
      const notes = [deal?.payment.kind === 'loan' ? deal.payment.apr : 0, vehicle.loan?.note ?? 0];
      if (deal?.lowRateInstead) notes.push(deal.lowRateInstead);
      for (const { payment } of mayEnd ? nexts : []) if (payment.kind === 'loan') notes.push(payment.apr);
      const interest = (owed: number, nominal: number): number => owed * (v * (1 + nominal / 12) - 1);
      const owed = plan.owedAt(ctx, before);
      low += Math.min(...notes.map((note) => interest(owed, note)));
      high += Math.max(...notes.map((note) => interest(owed, note)));
      for (const { short } of onCard) either(Math.abs(interest(short[reading], household.cardRate)));
      if (deal?.payment.kind === 'lease') {
        const { payment } = deal;
        const level = smoothLevel(household.pricesRise.vehicles, last);
        const over = Math.max(0, household.distanceAYear - payment.distanceAYear) / 12;
        const once = payment.dueAtSigning + payment.acquisitionFee + payment.dispositionFee;
        high += level * (leasePayment(payment) + once / payment.months + over * payment.overDistance);
        either(((payment.earlyTermination ?? 0) + once) * (1 - v) * level);
        // The end of a lease: a named exception.
        if (last % payment.months <= 1 || before % payment.months === 0) either(Number.POSITIVE_INFINITY);
      }
      const [then, now] = [month * v ** last, v ** before];
      return {
        id: way.id,
        side: way.side,
        cost,
        low: then + low * now - 1e-6,
        high: then + high * now + 1e-6,
      };
    });
};

const cheapestOf = (all: readonly Figure[], side: string): Figure | null =>
  all
    .filter((one) => one.side === side)
    .reduce<Figure | null>((a, b) => (a && a.cost <= b.cost ? a : b), null);

/** The steps of every way, and of D, that nothing of their month justifies. */
const unjustified = (
  household: Household,
  from: number,
  to: number,
  reading: Reading = 'counted',
): { readonly steps: string[]; readonly looked: number } => {
  const steps: string[] = [];
  let looked = 0;
  let before = figuresAt(household, from, reading);
  for (let horizon = from + 1; horizon <= to; horizon++) {
    const now = figuresAt(household, horizon, reading);
    const look = (what: string, step: number, low: number, high: number): void => {
      if (!Number.isFinite(low) || !Number.isFinite(high)) return;
      looked += 1;
      if (step < low || step > high)
        steps.push(
          `${what}, ${horizon - 1} to ${horizon}: ${step.toFixed(2)} is not in ${low.toFixed(2)} .. ${high.toFixed(2)}`,
        );
    };
    for (const one of now) {
      const was = before.find(({ id }) => id === one.id);
      if (was) look(one.id, one.cost - was.cost, one.low, one.high);
    }
    // Each side's least moves by no less, and no more, than one of the two ways that are least then or now.
    const moves = (
      side: string,
    ): { readonly step: number; readonly low: number; readonly high: number } | null => {
      const [was, is] = [cheapestOf(before, side), cheapestOf(now, side)];
      const both = now.filter(({ id }) => id === was?.id || id === is?.id);
      if (!was || !is || both.length === 0) return null;
      return {
        step: is.cost - was.cost,
        low: Math.min(...both.map((one) => one.low)),
        high: Math.max(...both.map((one) => one.high)),
      };
    };
    const [keep, replace] = [moves('keep'), moves('replace')];
    if (keep && replace)
      look('D', replace.step - keep.step, replace.low - keep.high, replace.high - keep.low);
    before = now;
  }
  return { steps, looked };
};

const folder = new URL('../../scenarios/', import.meta.url);

describe('law 18: smooth in the horizon', () => {
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.yaml')))
    it(`of ${file}, from one to ten years`, () => {
      const read = parseScenario(readFileSync(new URL(file, folder), 'utf8'), { file, today: '2026-11-25' });
      if ('problems' in read) throw new Error('a demo is refused');
      const { steps, looked } = unjustified(read.scenario, 12, 120);
      expect(steps).toEqual([]);
      expect(looked).toBeGreaterThan(200);
      for (const reading of ['cash', 'shop'] as const)
        expect(unjustified(read.scenario, 12, 48, reading).steps).toEqual([]);
    });

  /** Leases end in other months once an end has come: of a vehicle that may end, the next one is bought. */
  const bought = (inputs: Inputs): Inputs => ({
    ...inputs,
    replacement: inputs.replacement.map((deal) =>
      deal.payment.kind === 'lease' ? { ...deal, payment: { kind: 'cash' } } : deal,
    ),
  });
  for (const [name, any] of [
    ['anything', anyInputs],
    ['what may come to its end', anyInputsThatMayEnd.map(bought)],
  ] as const)
    it(`of any household: ${name}`, () => {
      let all = 0;
      for (const inputs of fc.sample(any, { numRuns: 12, seed: 18 })) {
        const { steps, looked } = unjustified({ inputs, facts: factsOf(inputs) }, 12, 72);
        expect(steps).toEqual([]);
        all += looked;
      }
      expect(all).toBeGreaterThan(2000);
    });
});
