/** Random complete inputs, within what a scenario may say: what the laws are tried on. */
import fc from 'fast-check';
import { type Range, rangeLaw } from '../../src/engine/quantity/range.ts';
import type {
  Component,
  Household,
  Inputs,
  Job,
  Payment,
  PresentVehicle,
  Replacement,
  RunningCosts,
  UpkeepItem,
} from '../../src/engine/scenario/inputs/inputs.ts';
import * as base from './household.ts';

const amount = (max: number) => fc.integer({ min: 0, max }).map((n) => n);
const rate = (max: number) => fc.integer({ min: 0, max: Math.round(max * 1000) }).map((n) => n / 1000);

/** A range above nil with its likely value here. */
const around = (likely: number): Range => ({
  low: likely * 0.5,
  likely,
  high: likely * 1.8,
  min: 0,
  max: null,
});

const meanOf = (range: Range): number => {
  const law = rangeLaw(range);
  if ('refused' in law) throw new Error(law.refused);
  return law.mean;
};

const work = fc.record({
  by: fc.constantFrom('own' as const, 'shop' as const),
  parts: amount(1500),
  hours: amount(30),
  shopPrice: fc.option(amount(4000)),
});

const household: fc.Arbitrary<Household> = fc.record({
  distanceAYear: fc.integer({ min: 0, max: 25000 }),
  milesAUnit: fc.constantFrom(1, 0.621371),
  bigBills: fc.constantFrom(0, 1),
  lookAhead: fc.integer({ min: 1, max: 120 }),
  moneyEarns: rate(0.12),
  priceOfOwnHour: fc.constantFrom(0, 0, 12, 30),
  dayWithout: amount(60),
  pricesRise: fc.record({
    general: rate(0.06),
    energy: rate(0.06),
    cover: rate(0.08),
    repairs: rate(0.06),
    ownTime: rate(0.04),
    vehicles: rate(0.05),
    fees: rate(0.04),
  }),
  atHome: fc.record({ share: rate(1), partsShare: rate(1), shopHour: fc.integer({ min: 40, max: 200 }) }),
  savings: fc.option(amount(8000)),
  spareEachMonth: amount(800),
  cardRate: rate(0.3),
});

const component: fc.Arbitrary<Component> = fc
  .tuple(
    work,
    fc.record({
      name: fc.constantFrom('gearbox', 'alternator', 'water pump'),
      clock: fc.constantFrom('distance' as const, 'months' as const),
      scale: fc.integer({ min: 40, max: 300 }),
      shape: fc.constantFrom(1, 1.5, 3, 6),
      run: fc.integer({ min: 0, max: 250 }),
      repairIs: fc.constantFrom('renewal' as const, 'patch' as const),
      tow: amount(300),
      daysWithout: amount(5),
      unsafe: fc.boolean(),
    }),
    fc.record({
      parts: fc.boolean(),
      hours: fc.boolean(),
      shopPrice: fc.boolean(),
      another: fc.option(fc.constantFrom(2, 12, 40), { freq: 3 }),
    }),
  )
  .map(([cost, part, spread]) => {
    const unit = part.clock === 'distance' ? 1000 : 1;
    return {
      ...cost,
      ...part,
      scale: part.scale * unit,
      run: part.run * unit,
      another: spread.another && { months: meanOf(around(spread.another)), range: around(spread.another) },
      bill: {
        parts: spread.parts && cost.parts > 0 ? around(cost.parts) : null,
        hours: spread.hours && cost.hours > 0 ? around(cost.hours) : null,
        shopPrice: spread.shopPrice && cost.shopPrice ? around(cost.shopPrice) : null,
      },
      shareOfAverage: 0.1,
    };
  });

const upkeep: fc.Arbitrary<UpkeepItem> = fc
  .tuple(
    work,
    fc.record({
      name: fc.constantFrom('oil', 'belt', 'tyres'),
      everyDistance: fc.option(fc.integer({ min: 3000, max: 60000 })),
      everyMonths: fc.option(fc.integer({ min: 3, max: 90 })),
      sinceDistance: amount(60000),
      sinceMonths: amount(60),
    }),
  )
  .map(([cost, item]) => ({ ...cost, ...item, renews: [] }));

const bill = fc.record({ aYear: amount(1500), nextDue: fc.integer({ min: 1, max: 12 }) });

const averageRepairs = fc
  .record({ likely: fc.constantFrom(200, 320, 900), spread: fc.boolean(), strands: rate(0.3) })
  .map(({ likely, spread, strands }) => ({
    ...base.vehicle.averageRepairs,
    bill: spread ? { mean: meanOf(around(likely)), range: around(likely) } : { mean: likely, range: null },
    strands,
  }));

const running: fc.Arbitrary<Partial<RunningCosts>> = fc.record({
  averageRepairs,
  age: fc.integer({ min: 0, max: 25 }),
  priceWhenNew: fc.integer({ min: 8000, max: 60000 }),
  cover: bill,
  registration: bill,
  inspection: bill,
  tax: bill,
  parkingAMonth: amount(80),
  averageUpkeep: rate(0.2),
  upkeep: fc.array(upkeep, { maxLength: 2 }),
  components: fc.array(component, { maxLength: 2 }),
  guarantee: fc.record({
    months: fc.constantFrom(0, 12, 36),
    distance: fc.constantFrom(0, 12000, 36000),
  }),
  value: fc.oneof(
    fc.record({
      kind: fc.constant('decline' as const),
      perYear: rate(0.3),
      perDistance: fc.constantFrom(0, 0.02, 0.05),
      downTo: fc.constantFrom(0, 0, 1500),
    }),
    fc.constant({
      kind: 'points' as const,
      points: [
        { month: 24, value: 2000 },
        { month: 60, value: 900 },
      ],
    }),
  ),
  floor: amount(800),
  brandFactor: fc.constantFrom(1, 0.7),
  selling: fc.record({ cost: amount(200), hours: amount(10), weeks: amount(6) }),
});

const vehicle: fc.Arbitrary<PresentVehicle> = fc
  .tuple(
    running,
    fc.record({
      sellsFor: fc.record({
        running: fc.integer({ min: 1000, max: 9000 }),
        asItStands: fc.integer({ min: 300, max: 1000 }),
        tradeIn: fc.option(fc.integer({ min: 200, max: 1000 })),
        tradeInMended: fc.option(fc.integer({ min: 300, max: 5000 })),
        brokenDown: fc.integer({ min: 300, max: 1000 }),
        scrap: amount(300),
      }),
      loan: fc.option(
        fc.record({
          owed: amount(6000),
          note: rate(0.15),
          monthsLeft: fc.integer({ min: 1, max: 48 }),
        }),
        { freq: 3 },
      ),
      storageADay: amount(30),
    }),
  )
  .map(([costs, own]) => ({ ...base.vehicle, ...costs, ...own }));

const fees = fc.array(
  fc.record({
    name: fc.constantFrom('documents', 'title'),
    amount: amount(600),
    financed: fc.boolean(),
    financeCharge: fc.boolean(),
  }),
  { maxLength: 2 },
);

const payment: fc.Arbitrary<Payment> = fc.oneof(
  fc.constant({ kind: 'cash' as const }),
  fc.record({
    kind: fc.constant('loan' as const),
    apr: rate(0.15),
    months: fc.integer({ min: 1, max: 84 }),
    downPayment: amount(4000),
    firstPayment: fc.integer({ min: 1, max: 4 }),
    interestDuringDelay: fc.boolean(),
    rollInShortfall: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('lease' as const),
    startsFrom: fc.integer({ min: 15000, max: 40000 }),
    residual: fc.integer({ min: 5000, max: 14000 }),
    moneyFactor: fc.constantFrom(0, 0.001, 0.0025),
    months: fc.integer({ min: 6, max: 48 }),
    dueAtSigning: amount(3000),
    distanceAYear: fc.constantFrom(10000, 12000),
    overDistance: fc.constantFrom(0, 0.2),
    acquisitionFee: amount(900),
    dispositionFee: amount(500),
    taxOnPayment: rate(0.1),
    afterwards: fc.constantFrom('again' as const, 'buy' as const),
    purchaseFee: amount(400),
    earlyTermination: fc.option(amount(3000)),
  }),
);

const replacement: fc.Arbitrary<Replacement> = fc
  .tuple(
    running,
    fc.record({
      price: fc.integer({ min: 6000, max: 40000 }),
      salesTax: rate(0.1),
      tradeInCredit: fc.constantFrom(0, null, 400),
      rebate: amount(2000),
      fees,
      addOns: fees,
      payment,
      lowRateInstead: fc.option(rate(0.04)),
      inspectionBefore: amount(200),
      catchUp: amount(1000),
      condition: fc.constantFrom('new' as const, 'used' as const),
    }),
  )
  .map(([costs, deal]) => ({
    ...base.replacement,
    ...costs,
    ...deal,
    worthDayAfter: deal.price * 0.9,
  }));

const job: fc.Arbitrary<Job> = fc
  .tuple(
    work,
    fc.record({
      name: fc.constantFrom('clutch', 'brakes', 'heater'),
      canWait: fc.constantFrom(0, 0, 6, 24, null),
      chance: rate(0.4),
      more: rate(0.4),
      patch: fc.option(fc.tuple(work, fc.integer({ min: 1, max: 40 }))),
      left: fc.record({ aMonth: amount(20), valueLost: amount(300) }),
      buyerPays: rate(1),
      daysWithout: amount(10),
      safety: fc.boolean(),
      stands: fc.boolean(),
    }),
  )
  .map(([cost, { chance, more, patch, canWait, safety, stands, ...rest }]) => ({
    ...cost,
    ...rest,
    canWait,
    safety: canWait === 0 && safety,
    mayBeDriven: canWait !== 0 ? 'yes' : safety || stands ? 'no' : 'to_the_shop',
    notCured: { ...cost, chance },
    moreFound: { ...cost, chance: more },
    patch: patch && { ...patch[0], months: patch[1] },
    renews: [],
  }));

/** Complete inputs of an invented household: one or two replacements, up to three jobs; nothing ends the vehicle. */
export const anyInputs: fc.Arbitrary<Inputs> = fc.record({
  household,
  vehicle,
  workNeeded: fc.array(job, { maxLength: 3 }),
  replacement: fc
    .array(replacement, { minLength: 1, maxLength: 2 })
    .map((deals) => deals.map((deal, i) => ({ ...deal, name: i === 0 ? 'small hatchback' : 'tall van' }))),
  doingWithout: fc.option(fc.record({ aDay: amount(40), daysAMonth: amount(25) })),
  anotherLikeOurs: fc.option(
    fc.record({
      price: fc.option(amount(9000)),
      above: rate(0.3),
      taxAndFees: rate(0.1),
      inspectionBefore: amount(300),
      catchUp: amount(900),
      hiddenFault: amount(900),
      hours: amount(20),
      days: amount(10),
    }),
  ),
  usualLike: fc.constant(base.inputs.usualLike),
  claim: fc.constant(null),
});

const end = fc.record({
  what: fc.constantFrom('frame rot', 'parts no longer made'),
  chanceAYear: rate(0.3),
  risesAYear: rate(0.1),
});

/** The same, of a vehicle that one or two things may end for good. */
export const anyInputsThatMayEnd: fc.Arbitrary<Inputs> = fc
  .tuple(
    anyInputs,
    fc.array(end, { minLength: 1, maxLength: 2 }),
    fc.record({ adds: amount(800), days: amount(10), refused: rate(0.4), refusedCosts: amount(1500) }),
  )
  .map(([inputs, ends, inAHurry]) => ({ ...inputs, vehicle: { ...inputs.vehicle, ends, inAHurry } }));
