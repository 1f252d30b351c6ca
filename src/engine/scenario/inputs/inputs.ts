import type { Range } from '../../quantity/range.ts';
import type { Claim, CoverPart, OwnDamage } from './claim.ts';
import type { Numbers } from './declared.ts';
import type { Fee, Payment } from './financing.ts';
import type * as HOME from './householdInputs.ts';
import type * as LIKE from './likeInputs.ts';
import type * as OWNED from './ownedInputs.ts';
import type * as PURCHASE from './purchaseInputs.ts';
import type { VehicleKind } from './tables.ts';
import type * as VEHICLE from './vehicleInputs.ts';
import type * as WORK from './workInputs.ts';

export type { Fee, Lease, Payment } from './financing.ts';

/**
 * The engine's inputs: one plain number for every quantity of a scenario, complete, without optionals.
 *
 * Units, everywhere: money in currency units at the day of the decision's prices; rates, shares and chances as
 * fractions; distances in the household's unit (miles or kilometres); times in whole months unless the name says
 * otherwise. `null` means "there is no such thing here", never "unknown". What a number alone says is at its declaration.
 *
 * The tree mirrors the scenario file: `vehicle.sellsFor.asItStands` is `vehicle.sells_for.as_it_stands` there.
 */
export interface Inputs {
  readonly household: Household;
  readonly vehicle: PresentVehicle;
  readonly workNeeded: readonly Job[];
  readonly replacement: readonly Replacement[];
  readonly doingWithout: DoingWithout | null;
  /** Another running one of the same kind, age and distance; null: there is none to be had. */
  readonly anotherLikeOurs: AnotherLikeOurs | null;
  /** The same as usual, whatever the file says: how any vehicle that is given up is renewed by its like, in thought. */
  readonly usualLike: AnotherLikeOurs;
  /** A collision not settled yet: the vehicle is described as it was before. */
  readonly claim: Claim | null;
}

export interface Household
  extends Numbers<typeof HOME.HOUSEHOLD>,
    Numbers<typeof HOME.FUND>,
    Numbers<typeof HOME.BIG_BILLS>,
    Omit<Numbers<typeof HOME.HOUSEHOLD_MORE>, 'tablePriceRatio' | 'fuelPrice' | 'powerPrice'> {
  readonly distanceAYear: number;
  /** Miles in one unit of the household's distance. */
  readonly milesAUnit: number;
  readonly pricesRise: PricesRise;
  readonly atHome: Numbers<typeof HOME.AT_HOME>;
}

/** Yearly growth of each family of prices, nominal. */
export type PricesRise = Numbers<typeof HOME.GENERAL_RISE & typeof HOME.FAMILIES_RISE>;

/** Who does a job in the plan that is compared: own hands or a shop. */
export type DoneBy = 'own' | 'shop';

/** What doing a job once costs either way. */
export interface WorkCost extends Numbers<typeof WORK.WORK_COST> {
  readonly by: DoneBy;
}

/** How the market value moves; nominal. */
export type ValueLaw =
  | ({
      readonly kind: 'decline';
      /** Further decline in money for each unit of distance driven. */
      readonly perDistance: number;
    } & Numbers<typeof VEHICLE.DECLINE> &
      Numbers<typeof VEHICLE.RUNNING_ONE>)
  | { readonly kind: 'points'; readonly points: readonly Numbers<typeof VEHICLE.POINT>[] };

export interface UpkeepItem extends WorkCost, Numbers<typeof WORK.UPKEEP_ITEM>, Numbers<typeof WORK.SINCE> {
  readonly name: string;
  /** Components (by position) whose clock this work restarts each time. */
  readonly renews: readonly number[];
}

/**
 * How one bill differs from the next: each stands for what its mean (the plain number beside it) is multiplied with,
 * the range's quantile over its mean. Null: every bill is the mean.
 */
export type BillRange = { readonly [N in keyof typeof WORK.WORK_COST]: Range | null };

export interface Component extends WorkCost, Numbers<typeof WORK.LIFE_LAW>, Numbers<typeof WORK.FAILURE> {
  readonly name: string;
  /** What its life is counted in. */
  readonly clock: 'distance' | 'months';
  /** Weibull scale (characteristic life), in the clock's unit. */
  readonly scale: number;
  /** Already run, in the clock's unit. */
  readonly run: number;
  /**
   * "It will last another ...": months until the part that is in fails, on average, and how that spreads; its successors
   * follow scale and shape. Null: the part that is in follows them too, from what it has run.
   */
  readonly another: { readonly months: number; readonly range: Range } | null;
  readonly bill: BillRange;
  /** A renewal restarts the clock, a patch leaves it running. */
  readonly repairIs: 'renewal' | 'patch';
  readonly unsafe: boolean;
}

/** A yearly bill and the months until it is next due; a bought vehicle pays at its start. */
export type YearlyBills = {
  readonly [B in keyof typeof VEHICLE.YEARLY_BILLS]: Numbers<(typeof VEHICLE.YEARLY_BILLS)[B]>;
};

/** Bills that are other ones from a date on, in money of the day of the decision; null: this one stays as it was. */
export interface BillChange extends Numbers<typeof VEHICLE.CHANGED> {
  /** The first month that ends after the date, 1 at the earliest. */
  readonly from: number;
  /** Cover for the vehicle itself that there is none of from then on: its losses are the household's own. */
  readonly coverEnds: readonly OwnDamage[];
  /** In the household's words; ''. */
  readonly why: string;
}

/** What it costs to run a vehicle, whoever owns it and however it was paid for. */
export interface RunningCosts
  extends YearlyBills,
    Numbers<typeof VEHICLE.PRESENT>,
    Numbers<typeof VEHICLE.MONTHLY_BILLS>,
    Numbers<typeof VEHICLE.WORTH> {
  /** Whole years since the model year, at month 0. */
  readonly age: number;
  /** Which column of the tables it belongs to. */
  readonly bodyStyle: VehicleKind;
  readonly energy: Numbers<typeof VEHICLE.FUEL> & {
    /** `per100`: units of energy per 100 of distance (l/100 km, kWh/100 km); `perUnit`: distance on one unit (mpg). */
    readonly stated: 'per100' | 'perUnit';
  };
  /** The unused part of a year's registration comes back when the vehicle goes. */
  readonly registrationRefunded: boolean;
  /** In the order of their dates. */
  readonly changes: readonly BillChange[];
  /** Scheduled upkeep known only on average: money for each unit of distance, a shop doing it. 0 once items are listed. */
  readonly averageUpkeep: number;
  readonly upkeep: readonly UpkeepItem[];
  /** Repairs nobody named: money for each unit of distance by age, a shop doing them. */
  readonly averageRepairs: Omit<Numbers<typeof VEHICLE.REPAIRS>, 'bill'> & {
    /** From the table's price year to the day of the decision, and to the household's currency and distance unit. */
    readonly priceRatio: number;
    /** Currency units per US dollar: `priceWhenNew / perDollar` is the price when new that the table reads. */
    readonly perDollar: number;
    /** Type and powertrain multiplier of the table. */
    readonly typeFactor: number;
    /** What one such repair costs at a shop on average, and how bills spread; they come one by one, at random. */
    readonly bill: { readonly mean: number; readonly range: Range | null };
  };
  readonly components: readonly Component[];
  /** Repairs cost nothing while both last; 0 for none. Counted from the purchase (or from month 0). */
  readonly guarantee: Numbers<typeof VEHICLE.GUARANTEE> & { readonly distance: number };
  readonly value: ValueLaw;
  readonly selling: Numbers<typeof VEHICLE.SELLING>;
}

export type PresentLoan = Numbers<typeof OWNED.LOAN_LEFT>;

/**
 * What ends the present vehicle for good: frame rot, an inspection it cannot pass, parts no longer made. It is found
 * out once a year, at the yearly inspection's date.
 */
export interface EndOfLife extends Numbers<typeof OWNED.END> {
  readonly what: string;
}

/** What replacing in a hurry adds to replacing in peace, once the vehicle has broken down. */
export type InAHurry = Numbers<typeof OWNED.HURRY>;

export interface PresentVehicle extends RunningCosts, Numbers<typeof OWNED.STANDING> {
  readonly sellsFor: Numbers<typeof OWNED.SALE>;
  readonly loan: PresentLoan | null;
  /** Damage that stays, taken off whatever it would bring later, in today's money as undone work is; 0 in every file. */
  readonly damage: number;
  /** Months from today in which it is off the road, as a wreck that is being rebuilt is; 0 in every file. */
  readonly offTheRoad: number;
  readonly ends: readonly EndOfLife[];
  readonly inAHurry: InAHurry;
  /** Of the yearly insurance, what answers for damage to the vehicle itself; null: not told apart. */
  readonly ownDamage: { readonly [kind in OwnDamage]: CoverPart | null };
}

/** `to_the_shop`: only there, and no farther. */
export type MayBeDriven = 'yes' | 'to_the_shop' | 'no';

export interface Job extends WorkCost, Numbers<typeof WORK.JOB> {
  readonly name: string;
  /** Months it can wait: 0 not at all, null for ever. */
  readonly canWait: number | null;
  readonly safety: boolean;
  /** How far it may be driven with this undone. Not at all: it stands, and pays for standing, from the first day. */
  readonly mayBeDriven: MayBeDriven;
  /** Chance that the work does not cure the fault, and what the second attempt costs (parts, hours, shop). */
  readonly notCured: Numbers<typeof WORK.NOT_CURED> & Omit<WorkCost, 'by'>;
  /** Chance of finding more once opened, and what that adds. */
  readonly moreFound: Numbers<typeof WORK.MORE_FOUND> & Omit<WorkCost, 'by'>;
  /** A cheaper repair that holds for a while; the proper one follows when it gives out. */
  readonly patch: (WorkCost & Numbers<typeof WORK.PATCH>) | null;
  readonly left: Numbers<typeof WORK.LEFT>;
  /** Components (by position in vehicle.components) whose clock this work restarts. */
  readonly renews: readonly number[];
}

export interface Replacement
  extends RunningCosts,
    Numbers<typeof VEHICLE.BOUGHT>,
    Numbers<typeof PURCHASE.SALES_TAX>,
    Omit<Numbers<typeof PURCHASE.OFFER>, 'downPayment'>,
    Numbers<typeof PURCHASE.FIRST_YEAR> {
  readonly name: string;
  readonly condition: 'new' | 'used';
  readonly price: number;
  /** At most so much of a trade-in lowers what is taxed; 0: none of it; null: all of it. */
  readonly tradeInCredit: number | null;
  readonly fees: readonly Fee[];
  /** Voluntary: part of the cost, never a finance charge. */
  readonly addOns: readonly Fee[];
  readonly payment: Payment;
  readonly oneOffs: readonly ({ readonly name: string } & Numbers<typeof PURCHASE.ONE_OFF>)[];
}

export type AnotherLikeOurs = Numbers<typeof LIKE.LIKE_OURS>;

export type DoingWithout = Numbers<typeof HOME.WITHOUT>;
