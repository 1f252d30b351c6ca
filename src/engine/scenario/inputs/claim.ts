/** A collision and what may be claimed for it: the numbers (`Claim`) and the words and facts (`ClaimFacts`). */
import type { LeftOut, PlaceRule } from '../places/placeRule.ts';

/** A vehicle like it, offered or sold, in the household's distance unit; exact to the cent. */
export interface ComparedVehicle {
  readonly what: string;
  readonly price: number;
  readonly odometer: number;
  /** What carries its price to the vehicle's own distance: positive where it has run more. */
  readonly forDistance: number;
  /** For condition and equipment: positive where the damaged vehicle was the better one. */
  readonly adjustment: number;
  /** price + forDistance + adjustment: what it says the vehicle was worth. */
  readonly says: number;
}

/** What a line of the estimate is for; a place may leave some of them out of the cost it holds against the value. */
export type EstimateKind = 'parts' | 'labour' | 'supplement' | 'other' | Exclude<LeftOut, 'sales tax'>;

/** One line: an amount, or hours at the insurer's rate. Exactly one of the two is there. Before tax. */
export interface ClaimLine {
  readonly what: string;
  readonly kind: EstimateKind;
  readonly amount: number | null;
  readonly labour: { readonly hours: number; readonly rate: number } | null;
  /** Of the line, what is not paid because the new part is better than the worn one. */
  readonly betterment: number;
  readonly taxed: boolean;
}

export interface ClaimEstimate {
  readonly lines: readonly ClaimLine[];
  /** Sales tax as a fraction of the taxed lines. */
  readonly tax: number;
  /**
   * Damage that shows once it is opened: the chance, what it then adds before tax, and the share of that which the
   * insurer pays once it has seen it. What it does not pay is the owner's.
   */
  readonly supplement: { readonly chance: number; readonly amount: number; readonly paid: number };
  /** What the shop asks for an hour; null: the same as the estimate, so there is no gap. */
  readonly shopHour: number | null;
  /** Days in the shop. */
  readonly days: number;
}

/** Needed to have it safe again, whoever repairs it. `inEstimate`: a line of the estimate holds it already. */
export interface ExtraWork {
  readonly costs: number;
  readonly inEstimate: boolean;
}

/** Work of the household's own plan. `shopPrice` null: parts, paint, and the hours at a shop's hour. */
export interface ClaimWork {
  readonly by: 'own' | 'shop';
  /** Used parts, as a rule. */
  readonly parts: number;
  readonly paint: number;
  readonly hours: number;
  readonly shopPrice: number | null;
  /** Tools bought for it, and what they bring afterwards. */
  readonly tools: number;
  readonly toolsBring: number;
  /** What only qualified work will do, over and above: paid whoever does the rest. */
  readonly qualified: number;
  /** Days without the vehicle. */
  readonly days: number;
  /** What stays visible: taken off any later sale, at today's prices. */
  readonly valueLost: number;
}

/** Keeping it after a total loss, and getting it back on the road. */
export interface Rebuild extends Omit<ClaimWork, 'days'> {
  readonly inspection: number;
  readonly retitling: number;
  readonly monthsOff: number;
  /** Chance that the papers are refused: it is then worth scrap. */
  readonly refused: number;
  /** Insurance a year once it is branded. */
  readonly insuranceAYear: number;
  /** Value against a clean title. */
  readonly titleFactor: number;
}

/** Paid ahead and in part unused when the vehicle goes: premium, service contract, gap cover. */
export interface PaidAheadFor {
  readonly what: string;
  /** It is the vehicle's own insurance, so it stands for what is unearned of its yearly bill. */
  readonly insurance: boolean;
  readonly paid: number;
  /** Months it was paid for, and how many of them are left. */
  readonly months: number;
  readonly left: number;
  /** What cancelling costs. */
  readonly fee: number;
}

/** Whether something paid ahead is the vehicle's own insurance: as told, else by its words; gap cover is not. */
export const isOwnInsurance = (what: string, told: boolean | undefined): boolean =>
  told ?? (/\b(insurance|premiums?)\b/i.test(what) && !/\bgap\b/i.test(what));

/** Money in currency units; before tax unless the name says otherwise. `null`: there is no such thing here. */
export interface Claim {
  /** Actual cash value before the collision, without tax: as stated, else the mean of the adjusted comparables. */
  readonly value: number;
  /** Damage it had before and that was not repaired: off the value. */
  readonly damageBefore: number;
  readonly estimate: ClaimEstimate;
  /** As the policy has it; 0 unless the own insurer pays. */
  readonly deductible: number;
  /** Own share of the fault. */
  readonly fault: number;
  /** The most the other driver's policy still pays; null: not known to bind. */
  readonly otherLimit: number | null;
  /** Chance that the own insurer gets the money back from the other side. 0 unless the own insurer pays. */
  readonly recovered: number;
  /** Dearer insurance afterwards where a claim is made on the own policy: a year, and for how many. */
  readonly surcharge: { readonly aYear: number; readonly years: number };
  /** What is bid for the wreck; null: no bid. */
  readonly salvage: number | null;
  /** What enters a total loss beside the value. */
  readonly salesTax: number;
  /** Title of a comparable, paid where it is surrendered. */
  readonly titleFee: number;
  /** Papers of a salvage vehicle, paid where it is kept. */
  readonly transferFee: number;
  /** Rental: what a day costs, what of it the insurer pays, and for how many days. */
  readonly rental: { readonly aDay: number; readonly paidADay: number; readonly paidDays: number } | null;
  /** Where it stands: so much a day, for so many days from today, of which the insurer pays the first. */
  readonly storage: { readonly aDay: number; readonly days: number; readonly paidDays: number } | null;
  /** Towing it home or to a shop: what it costs, and the most the insurer pays of it. */
  readonly tow: { readonly costs: number; readonly paid: number } | null;
  readonly alignment: ExtraWork | null;
  readonly calibration: ExtraWork | null;
  readonly belts: ExtraWork | null;
  /** Needed whichever way, another vehicle included. */
  readonly childSeats: ExtraWork | null;
  readonly refunds: readonly PaidAheadFor[];
  readonly gap: { readonly limit: number | null; readonly notCovered: number } | null;
  /** What a buyer pays less though it is well repaired, what is claimed for that, and the chance that it is paid. */
  readonly lostValue: { readonly lost: number; readonly claimed: number; readonly paid: number } | null;
  readonly ownRepair: ClaimWork | null;
  /** Only what makes it safe and legal. */
  readonly safeOnly: ClaimWork | null;
  readonly rebuild: Rebuild | null;
}

/** Whose insurer pays. */
export type Payer = 'own' | 'other' | 'nobody';

/** What becomes of a cheque that names the lender too. */
export type ChequeGoes = 'released to the owner' | 'only for the repair' | 'put to the loan';

/** What kind of part a line of the estimate counts with. */
export type PartKind = "maker's own" | "other maker's" | 'used' | 'rebuilt' | 'not said';

/** Words and facts of a claim. A yes or no that is `null`: nobody said. */
export interface ClaimFacts {
  /** What happened, in the household's words. */
  readonly what: string;
  /** ISO day of the collision; '' if not told. */
  readonly happened: string;
  readonly pays: Payer;
  readonly insurer: string;
  readonly place: PlaceRule;
  /** What the value rests on, line by line; where none was stated it is their mean, rounded to the cent. */
  readonly comparables: readonly ComparedVehicle[];
  /** What one mile or kilometre more on a comparable adds to its price; 0 without comparables. */
  readonly perDistance: number;
  /** The mean of what the comparables say; null without any. */
  readonly comparablesSay: number | null;
  /** Null: nothing is owed on the vehicle. */
  readonly lender: {
    readonly name: string;
    /** Named in the policy: paid before the owner. */
    readonly paidFirst: boolean | null;
    readonly requiresRepair: boolean | null;
    /** Null: nobody asked. */
    readonly cheque: ChequeGoes | null;
  } | null;
  readonly estimate: {
    /** The total that stands on the estimate, tax included; null: not told. It agrees with the lines to the cent. */
    readonly total: number | null;
    readonly parts: readonly PartKind[];
    readonly taxOnlyWhenPaid: boolean;
  };
  /** Whether tax and fees of a replacement are paid only once one is bought. */
  readonly taxOnlyWhenBought: boolean;
  /** How the own insurer shares what it gets back: null where the place or the policy is not known. */
  readonly recoveredFor: 'owner first' | 'in proportion' | null;
  /** Hidden structure: looked at by somebody qualified, and what was found. */
  readonly structure: 'sound' | 'damaged' | 'not checked';
  readonly airbagsDeployed: boolean | null;
  readonly flooded: boolean | null;
  readonly injured: boolean | null;
  /** Whether signing closes the claim. */
  readonly signingCloses: boolean | null;
  readonly answerBy: readonly { readonly what: string; readonly date: string; readonly past: boolean }[];
  /** ISO day until which the insurer pays for storage; '' if told in days or not at all. */
  readonly storagePaidUntil: string;
  /** What a rebuilt one waits for. */
  readonly rebuild: {
    readonly insuranceQuoted: boolean;
    readonly retitlingConfirmed: boolean;
    readonly inspected: boolean;
  };
}

/** One kind of cover on an old vehicle; its premium is part of the yearly insurance. */
export interface CoverPart {
  readonly aYear: number;
  readonly deductible: number;
  /** Chance of a loss a year that it would answer for. */
  readonly chanceAYear: number;
  /** Mean of the losses that are not total. */
  readonly meanLoss: number;
  /** Share of the losses that are total. */
  readonly totalShare: number;
  /** Another deductible on offer, with its premium. */
  readonly other: { readonly aYear: number; readonly deductible: number } | null;
}
