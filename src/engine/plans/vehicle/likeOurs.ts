import { marketValue } from '../../cashflow/contracts/marketValue.ts';
import type {
  AnotherLikeOurs,
  Fee,
  Payment,
  PresentVehicle,
  Replacement,
  RunningCosts,
} from '../../scenario/inputs/inputs.ts';
import { type Context, onceFor } from './context.ts';

/** The place of another one like ours among what can be bought: behind none of the replacements that a file names. */
export const LIKE_OURS = -1;
/** Where it stands in a scenario file, and what its luck goes by. */
export const LIKE_PATH = 'another_like_ours';

const NONE: readonly never[] = [];
const NO_GUARANTEE: RunningCosts['guarantee'] = { months: 0, distance: 0 };
const CASH: Payment = { kind: 'cash' };

/**
 * Another running one of the present vehicle's kind, age and distance, as a purchase: whatever ours costs to run it costs
 * too, but nothing is known of its parts, so nothing of the average is taken out by name. Each number is read where it is
 * asked for: what reads are recorded of has read just what it needs.
 */
class LikeOurs implements Replacement {
  private readonly ours: PresentVehicle;
  private readonly said: AnotherLikeOurs;
  private readonly ctx: Context;
  private readonly month: number;
  readonly name = 'another like ours';
  readonly condition = 'used';
  readonly components = NONE;
  readonly guarantee = NO_GUARANTEE;
  readonly payment = CASH;
  readonly fees: readonly Fee[] = NONE;
  readonly addOns: readonly Fee[] = NONE;
  readonly oneOffs = NONE;
  readonly rebate = 0;
  readonly lowRateInstead = null;
  readonly tradeInCredit = 0;
  readonly brandFactor = 1;

  constructor(said: AnotherLikeOurs, month: number, ctx: Context) {
    this.ours = ctx.undamaged;
    this.said = said;
    this.ctx = ctx;
    this.month = month;
  }

  /** What it would bring privately then: what ours would, running and with clean papers. */
  get worthDayAfter(): number {
    return worthLikeOurs(this.month, this.ctx);
  }
  /** Of the same model year, so it falls as ours does. */
  get price(): number {
    const { price, above } = this.said;
    const today = this.ours.sellsFor.running;
    if (price === null) return this.worthDayAfter * (1 + above);
    return this.month === 0 || today <= 0 ? price : price * (this.worthDayAfter / today);
  }
  get salesTax(): number {
    return this.said.taxAndFees;
  }
  get inspectionBefore(): number {
    return this.said.inspectionBefore;
  }
  get catchUp(): number {
    return this.said.catchUp;
  }
  get age(): number {
    return this.ours.age + Math.floor(this.month / 12);
  }
  get odometer(): number {
    return this.ours.odometer + this.month * this.ctx.distanceAMonth;
  }
  get priceWhenNew(): number {
    return this.ours.priceWhenNew;
  }
  get energy(): Replacement['energy'] {
    return this.ours.energy;
  }
  get cover(): Replacement['cover'] {
    return this.ours.cover;
  }
  get registration(): Replacement['registration'] {
    return this.ours.registration;
  }
  get registrationRefunded(): boolean {
    return this.ours.registrationRefunded;
  }
  get inspection(): Replacement['inspection'] {
    return this.ours.inspection;
  }
  get tax(): Replacement['tax'] {
    return this.ours.tax;
  }
  get parkingAMonth(): number {
    return this.ours.parkingAMonth;
  }
  get averageUpkeep(): number {
    return this.ours.averageUpkeep;
  }
  get upkeep(): Replacement['upkeep'] {
    return this.ours.upkeep.map((item) => ({ ...item, sinceDistance: 0, sinceMonths: 0, renews: NONE }));
  }
  get averageRepairs(): Replacement['averageRepairs'] {
    return this.ours.averageRepairs;
  }
  get value(): Replacement['value'] {
    return this.ours.value;
  }
  get floor(): number {
    return this.ours.floor;
  }
  get selling(): Replacement['selling'] {
    return this.ours.selling;
  }
}

/** What ours would bring at the end of a month, running and with clean papers, by the market alone. */
export const worthLikeOurs = (month: number, ctx: Context): number => {
  const { sellsFor, value: law, floor } = ctx.undamaged;
  if (month === 0) return sellsFor.running;
  return marketValue(
    { now: sellsFor.running, law, floor, brandFactor: 1 },
    month,
    month * ctx.distanceAMonth,
  );
};

const likeOurs = (month: number, ctx: Context): Replacement => {
  const said = ctx.inputs.anotherLikeOurs;
  if (said === null) throw new Error('there is none like ours to be had');
  return onceFor(ctx, `another like ours in ${month}`, () => new LikeOurs(said, month, ctx));
};

/**
 * What can be bought, by its place: a replacement that the file names, at today's price, or another one like ours as it
 * is at the end of a month.
 */
export const offerAt = (index: number, month: number, ctx: Context): Replacement =>
  index === LIKE_OURS ? likeOurs(month, ctx) : (ctx.inputs.replacement[index] as Replacement);

/** How much dearer or cheaper than today what can be bought is at the end of a month; for `offerAt` of that month. */
export const priceLevelAt = (index: number, month: number, ctx: Context): number =>
  index === LIKE_OURS ? 1 : ctx.vehiclePriceLevel(month);

/** Everything that can be bought in this scenario, by its place. */
export const offerings = ({ inputs }: Context): number[] => [
  ...inputs.replacement.keys(),
  ...(inputs.anotherLikeOurs === null ? [] : [LIKE_OURS]),
];
