import type { Range } from '../../quantity/range.ts';
import type { Claim, CoverPart } from './claim.ts';
import type { Fee, Payment } from './financing.ts';

export type { Fee, Lease, Payment } from './financing.ts';

/**
 * The engine's inputs: one plain number for every quantity of a scenario, complete, without optionals.
 *
 * Units, everywhere: money in currency units at the day of the decision's prices; rates, shares and chances as
 * fractions; distances in the household's unit (miles or kilometres); times in whole months unless the name says
 * otherwise. `null` means "there is no such thing here", never "unknown".
 *
 * The tree mirrors the scenario file: `vehicle.sellsFor.asItStands` is `vehicle.sells_for.as_it_stands` there.
 */
export interface Inputs {
  readonly household: Household;
  readonly vehicle: PresentVehicle;
  readonly workNeeded: readonly Job[];
  readonly replacement: readonly Replacement[];
  readonly doingWithout: DoingWithout | null;
  /** A collision not settled yet: the vehicle is described as it was before. */
  readonly claim: Claim | null;
}

export interface Household {
  readonly distanceAYear: number;
  /** H, 1 to 240 months. */
  readonly lookAhead: number;
  /** r, the annual effective discount rate: what the money would earn elsewhere. */
  readonly moneyEarns: number;
  /** Price of one own hour; 0 where the household does not price its time. */
  readonly priceOfOwnHour: number;
  /** Cost of one day without a vehicle (rides, rental). */
  readonly dayWithout: number;
  readonly pricesRise: PricesRise;
  /** Who does the repairs and upkeep that are known only on average. */
  readonly atHome: {
    /** Share of that work, by cost, done with own hands. */
    readonly share: number;
    /** Parts as a share of a shop's bill. */
    readonly partsShare: number;
    /** A shop's price of one hour: turns the labour part of a bill into own hours. */
    readonly shopHour: number;
  };
  /** Money put by for this; null: nobody said, so nothing is checked against it or put on the card. */
  readonly savings: number | null;
  readonly spareEachMonth: number;
  /** Annual nominal rate of the card or credit line that pays on the day what savings do not cover. */
  readonly cardRate: number;
}

/** Yearly growth of each family of prices, nominal. */
export interface PricesRise {
  readonly general: number;
  readonly energy: number;
  readonly cover: number;
  /** Parts, shop labour, scheduled upkeep and repairs. */
  readonly repairs: number;
  readonly ownTime: number;
  /** Prices of replacements for the same model age. */
  readonly vehicles: number;
  /** Registration, tax, inspection, parking. */
  readonly fees: number;
}

/** Who does a job in the plan that is compared: own hands or a shop. */
export type DoneBy = 'own' | 'shop';

/** What doing a job once costs either way. `shopPrice` null: no shop price was given, so parts plus hours at a shop's hour. */
export interface WorkCost {
  readonly by: DoneBy;
  readonly parts: number;
  readonly hours: number;
  readonly shopPrice: number | null;
}

/** How the market value moves; nominal. */
export type ValueLaw =
  | {
      readonly kind: 'decline';
      /** Compound decline a year. */
      readonly perYear: number;
      /** Further decline in money for each unit of distance driven. */
      readonly perDistance: number;
    }
  | {
      readonly kind: 'points';
      readonly points: readonly { readonly month: number; readonly value: number }[];
    };

export interface UpkeepItem extends WorkCost {
  readonly name: string;
  readonly everyDistance: number | null;
  readonly everyMonths: number | null;
  /** Run since it was last done; an item whose history is unknown is due in month 1. */
  readonly sinceDistance: number;
  readonly sinceMonths: number;
  /** Components (by position) whose clock this work restarts each time. */
  readonly renews: readonly number[];
}

/**
 * How one bill differs from the next: each stands for what its mean (the plain number beside it) is multiplied with,
 * the range's quantile over its mean. Null: every bill is the mean.
 */
export interface BillRange {
  readonly parts: Range | null;
  readonly hours: Range | null;
  readonly shopPrice: Range | null;
}

export interface Component extends WorkCost {
  readonly name: string;
  /** What its life is counted in. */
  readonly clock: 'distance' | 'months';
  /** Weibull scale (characteristic life), in the clock's unit. */
  readonly scale: number;
  /** Weibull shape. */
  readonly shape: number;
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
  readonly tow: number;
  readonly daysWithout: number;
  readonly unsafe: boolean;
  /** The share of the average repairs that it takes out at most: in each month no more than it is expected to bring. */
  readonly shareOfAverage: number;
}

/** What it costs to run a vehicle, whoever owns it and however it was paid for. */
export interface RunningCosts {
  /** Whole years since the model year, at month 0. */
  readonly age: number;
  readonly odometer: number;
  readonly priceWhenNew: number;
  readonly energy: {
    /** `per100`: units of energy per 100 of distance (l/100 km, kWh/100 km); `perUnit`: distance on one unit (mpg). */
    readonly stated: 'per100' | 'perUnit';
    readonly economy: number;
    readonly price: number;
  };
  readonly cover: {
    readonly aYear: number /** First due, in months; a bought vehicle pays at its start. */;
    readonly nextDue: number;
  };
  readonly registration: { readonly aYear: number; readonly nextDue: number };
  /** The unused part of a year's registration comes back when the vehicle goes. */
  readonly registrationRefunded: boolean;
  readonly inspection: { readonly aYear: number; readonly nextDue: number };
  readonly tax: { readonly aYear: number; readonly nextDue: number };
  readonly parkingAMonth: number;
  /** Scheduled upkeep known only on average: money for each unit of distance, a shop doing it. 0 once items are listed. */
  readonly averageUpkeep: number;
  readonly upkeep: readonly UpkeepItem[];
  /** Repairs nobody named: money for each unit of distance by age, a shop doing them. */
  readonly averageRepairs: {
    /** Multiplies the whole table, or the stated yearly amount. */
    readonly scale: number;
    /** From the table's price year to the day of the decision, and to the household's currency and distance unit. */
    readonly priceRatio: number;
    /** Currency units per US dollar: `priceWhenNew / perDollar` is the price when new that the table reads. */
    readonly perDollar: number;
    /** Type and powertrain multiplier of the table. */
    readonly typeFactor: number;
    /** A stated amount a year replaces the table. */
    readonly statedAYear: number | null;
    /** What one such repair costs at a shop on average, and how bills spread; they come one by one, at random. */
    readonly bill: { readonly mean: number; readonly range: Range | null };
    /** Share of them, the dearest, that leave it at the roadside. */
    readonly strands: number;
  };
  readonly components: readonly Component[];
  /** Repairs cost nothing while both last; 0 for none. Counted from the purchase (or from month 0). */
  readonly guarantee: { readonly months: number; readonly distance: number };
  readonly value: ValueLaw;
  /** The least it ever brings: scrap. */
  readonly floor: number;
  /** Value multiplier of a branded title; 1 for a clean one. */
  readonly brandFactor: number;
  /** One way of selling, used for every later sale: its cost and own hours. */
  readonly selling: { readonly cost: number; readonly hours: number; readonly weeks: number };
}

export interface PresentLoan {
  readonly owed: number;
  /** Note rate, nominal a year, compounded monthly. */
  readonly note: number;
  readonly monthsLeft: number;
}

/**
 * What ends the present vehicle for good: frame rot, an inspection it cannot pass, parts no longer made. It is found
 * out once a year, at the yearly inspection's date.
 */
export interface EndOfLife {
  readonly what: string;
  /** Chance at the first yearly inspection. */
  readonly chanceAYear: number;
  /** Added to it each year after. */
  readonly risesAYear: number;
}

/** What replacing in a hurry adds to replacing in peace, once the vehicle has broken down. */
export interface InAHurry {
  /** Money: a worse price, a tow, storage. */
  readonly adds: number;
  /** Days without a vehicle until another is there. */
  readonly days: number;
  /** Chance that the loan is refused, and what is paid more in that case. */
  readonly refused: number;
  readonly refusedCosts: number;
}

export interface PresentVehicle extends RunningCosts {
  readonly sellsFor: {
    /** Private sale, needed work done. */
    readonly running: number;
    /** Private sale as it stands today. */
    readonly asItStands: number;
    /** Dealer's offer as it stands, against a purchase; null: none was made. */
    readonly tradeIn: number | null;
    /** Dealer's offer with the work done. */
    readonly tradeInMended: number | null;
    readonly scrap: number;
  };
  readonly loan: PresentLoan | null;
  /** A day of standing about unable to move: storage. */
  readonly storageADay: number;
  /** Damage that stays, taken off whatever it would bring later, in today's money as undone work is; 0 in every file. */
  readonly damage: number;
  /** Months from today in which it is off the road, as a wreck that is being rebuilt is; 0 in every file. */
  readonly offTheRoad: number;
  readonly ends: readonly EndOfLife[];
  readonly inAHurry: InAHurry;
  /** Of the yearly insurance, what answers for damage to the vehicle itself; null: not told apart. */
  readonly ownDamage: { readonly collision: CoverPart | null; readonly comprehensive: CoverPart | null };
}

/** `to_the_shop`: only there, and no farther. */
export type MayBeDriven = 'yes' | 'to_the_shop' | 'no';

export interface Job extends WorkCost {
  readonly name: string;
  /** Months it can wait: 0 not at all, null for ever. */
  readonly canWait: number | null;
  readonly safety: boolean;
  /** How far it may be driven with this undone. Not at all: it stands, and pays for standing, from the first day. */
  readonly mayBeDriven: MayBeDriven;
  /** Chance that the work does not cure the fault, and what the second attempt costs (parts, hours, shop). */
  readonly notCured: { readonly chance: number } & Omit<WorkCost, 'by'>;
  /** Chance of finding more once opened, and what that adds. */
  readonly moreFound: { readonly chance: number } & Omit<WorkCost, 'by'>;
  /** A cheaper repair that holds for a while; the proper one follows when it gives out. */
  readonly patch: (WorkCost & { readonly months: number }) | null;
  /** What leaving it undone costs a month, and takes off the sale price at the end. */
  readonly left: { readonly aMonth: number; readonly valueLost: number };
  /** Share of what a shop would charge that a buyer pays for, at the end; at most 1. */
  readonly buyerPays: number;
  /** Days the vehicle stands (waiting for parts, in the shop) and cannot be used. */
  readonly daysWithout: number;
  /** Components (by position in vehicle.components) whose clock this work restarts. */
  readonly renews: readonly number[];
}

export interface Replacement extends RunningCosts {
  readonly name: string;
  readonly condition: 'new' | 'used';
  readonly price: number;
  /** Market value the day after it is bought, privately. */
  readonly worthDayAfter: number;
  readonly salesTax: number;
  /** At most so much of a trade-in lowers what is taxed; 0: none of it; null: all of it. */
  readonly tradeInCredit: number | null;
  readonly rebate: number;
  readonly fees: readonly Fee[];
  /** Voluntary: part of the cost, never a finance charge. */
  readonly addOns: readonly Fee[];
  readonly payment: Payment;
  /** The maker's low rate offered instead of the rebate, for loans; null where there is no such choice. */
  readonly lowRateInstead: number | null;
  readonly inspectionBefore: number;
  /** Tyres, brakes, fluids, belt in the first year of a used one; posted at month 6. */
  readonly catchUp: number;
  readonly oneOffs: readonly { readonly name: string; readonly month: number; readonly amount: number }[];
}

export interface DoingWithout {
  readonly aDay: number;
  readonly daysAMonth: number;
}
