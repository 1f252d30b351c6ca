/** A collision and what may be claimed for it: the numbers (`Claim`) and the words and facts (`ClaimFacts`). */

import type { LeftOut, PlaceRule } from '../places/placeRule.ts';
import type * as CLAIM from './claimInputs.ts';
import type { Numbers } from './declared.ts';
import type * as OWNED from './ownedInputs.ts';
import type * as WORK from './workInputs.ts';

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
export interface ClaimLine extends Omit<Numbers<typeof CLAIM.LINE>, 'hours' | 'rate'> {
  readonly what: string;
  readonly kind: EstimateKind;
  readonly labour: { readonly hours: number; readonly rate: number } | null;
  readonly taxed: boolean;
}

export interface ClaimEstimate
  extends Omit<Numbers<typeof CLAIM.ESTIMATE>, 'total'>,
    Numbers<typeof CLAIM.SHOP> {
  readonly lines: readonly ClaimLine[];
  readonly supplement: Numbers<typeof CLAIM.SUPPLEMENT>;
}

/** Needed to have it safe again, whoever repairs it. `inEstimate`: a line of the estimate holds it already. */
export interface ExtraWork {
  readonly costs: number;
  readonly inEstimate: boolean;
}

type ExtraWorks = { readonly [W in keyof typeof CLAIM.EXTRAS]: ExtraWork | null };

/** Work of the household's own plan. Parts: used ones, as a rule; no shop price: parts, paint, and the hours at a shop's hour. */
interface PlannedWork extends Numbers<typeof WORK.WORK_COST>, Numbers<typeof CLAIM.PLAN> {
  readonly by: 'own' | 'shop';
}

export interface ClaimWork extends PlannedWork, Numbers<typeof CLAIM.PLAN_DAYS> {}

/** Keeping it after a total loss, and getting it back on the road. */
export interface Rebuild extends PlannedWork, Numbers<typeof CLAIM.REBUILD> {}

/** Paid ahead and in part unused when the vehicle goes: premium, service contract, gap cover. */
export interface PaidAheadFor extends Numbers<typeof CLAIM.PREPAID> {
  readonly what: string;
  /** It is the vehicle's own insurance, so it stands for what is unearned of its yearly bill. */
  readonly insurance: boolean;
}

/** Whether something paid ahead is the vehicle's own insurance: as told, else by its words; gap cover is not. */
export const isOwnInsurance = (what: string, told: boolean | undefined): boolean =>
  told ?? (/\b(insurance|premiums?)\b/i.test(what) && !/\bgap\b/i.test(what));

/** Money in currency units; before tax unless the name says otherwise. `null`: there is no such thing here. */
export interface Claim
  extends Numbers<typeof CLAIM.SETTLEMENT>,
    Numbers<typeof CLAIM.RECOVERY>,
    Numbers<typeof CLAIM.TOTAL_LOSS>,
    ExtraWorks {
  readonly estimate: ClaimEstimate;
  readonly surcharge: Numbers<typeof CLAIM.SURCHARGE>;
  readonly rental: Numbers<typeof CLAIM.RENTAL> | null;
  readonly storage: Numbers<typeof CLAIM.STORAGE> | null;
  readonly tow: Numbers<typeof CLAIM.TOW> | null;
  readonly refunds: readonly PaidAheadFor[];
  readonly gap: Numbers<typeof CLAIM.GAP> | null;
  readonly lostValue: Numbers<typeof CLAIM.LOST_VALUE> | null;
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

/** What cover for the vehicle itself answers for. */
export const OWN_DAMAGE = ['collision', 'comprehensive'] as const;
export type OwnDamage = (typeof OWN_DAMAGE)[number];

/** One kind of cover on an old vehicle; its premium is part of the yearly insurance. */
export interface CoverPart extends Numbers<typeof OWNED.COVER> {
  /** Another deductible on offer, with its premium. */
  readonly other: { readonly aYear: number; readonly deductible: number } | null;
}
