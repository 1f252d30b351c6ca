/**
 * What a place's law says about a damaged vehicle, as data. The same type whether a rule ships with the program or is
 * written out in a scenario. Percentages are whole numbers of a hundred, as statutes write them, so that a threshold is
 * met or missed exactly.
 */
import type { Sourced } from '../facts/fact.ts';

/** Whether the line itself is over it (`>=`) or only what lies beyond (`>`); statutes differ. */
export type Operator = '>=' | '>' | 'not known';

/** When repair is too dear to be one: by a share of value, by repair + salvage against value, or as the insurer finds. */
export type TotalLossTest =
  | { readonly kind: 'percent'; readonly percent: number; readonly operator: Operator }
  | { readonly kind: 'formula'; readonly operator: Operator }
  | { readonly kind: 'insurer decides' };

/** Costs that some places leave out of the repair cost that is held against the value. */
export type LeftOut =
  | 'paint'
  | 'electronics'
  | 'towing'
  | 'storage'
  | 'rental'
  | 'lost market value'
  | 'hail damage'
  | 'sales tax';

/** Which vehicles a test speaks of; null or false: no such limit is known. */
export interface Reach {
  /** At most so many model years old; 'recent' where the row says so without telling how recent. */
  readonly modelYears: number | 'recent' | null;
  /** Worth at least so much before the damage, in the place's currency. */
  readonly valueAtLeast: number | null;
  /** The test is for vehicles that no insurer pays for; where one pays, it decides. */
  readonly uninsuredOnly: boolean;
}

/**
 * Tax when an insurer pays a total loss. `before salvage`: on the whole value, then salvage comes off. `after salvage`:
 * on the value less the salvage the owner keeps. A surrendered vehicle has no salvage to take off: both come to the
 * same. `not paid`: no tax in a settlement.
 */
export type TaxOrder = 'before salvage' | 'after salvage' | 'not paid';

/** What lowers the tax on the next vehicle, and by how much; amounts in the place's currency. */
export type TradeInCredit =
  | { readonly kind: 'full' }
  | { readonly kind: 'none' }
  /** `cap` in year `from`, `risesAYear` more each year after; once it has passed `lastCap` there is no cap. */
  | {
      readonly kind: 'capped';
      readonly from: number;
      readonly cap: number;
      readonly risesAYear: number;
      readonly lastCap: number;
    }
  | { readonly kind: 'no sales tax' }
  | { readonly kind: 'not known' };

/**
 * The most of a trade-in that lowers what is taxed in a calendar year, in currency units: infinite where all of it does,
 * 0 where none does or nothing is taxed. Not known, and null, before the first year that caps are given for.
 */
export const mostCredited = (credit: TradeInCredit, year: number): number | null => {
  switch (credit.kind) {
    case 'full':
      return Number.POSITIVE_INFINITY;
    case 'none':
    case 'no sales tax':
      return 0;
    case 'not known':
      return null;
    case 'capped': {
      if (year < credit.from) return null;
      const cap = credit.cap + credit.risesAYear * (year - credit.from);
      return cap > credit.lastCap ? Number.POSITIVE_INFINITY : cap;
    }
  }
};

/** What is left of a claim on the other driver when the owner is partly at fault. */
export type FaultRule = 'in proportion' | 'nothing from half' | 'nothing above half' | 'nothing if any';

export interface PlaceRule {
  /** ISO 3166-2, such as "US-VA"; a scenario that writes its own rule may call it anything. */
  readonly code: string;
  readonly name: string;
  /** The month this was set down, "2026-11". */
  readonly date: string;
  readonly totalLoss: Sourced & {
    readonly test: TotalLossTest;
    /** Empty where nothing is known to be left out. */
    readonly leftOut: readonly LeftOut[];
    readonly reach: Reach;
    /** What a reader should know of its scope; null: nothing noted. */
    readonly note: string | null;
  };
  /** Repair cost, as a share of value, from which the vehicle can never be rebuilt for the road; null: none known. */
  readonly neverAgain: (Sourced & { readonly percent: number; readonly operator: Operator }) | null;
  /** How tax, and the fees of the papers, enter a settlement; null: not known. */
  readonly settlement:
    | (Sourced & { readonly tax: TaxOrder | 'not known'; readonly fees: 'paid' | 'not known' })
    | null;
  /** Whether an owner may keep a total loss and rebuild it; null: not known. */
  readonly mayKeep: boolean | null;
  readonly tradeIn: Sourced & { readonly credit: TradeInCredit; readonly note: string | null };
  /** Null: not known. */
  readonly fault: (Sourced & { readonly rule: FaultRule }) | null;
  readonly notes: readonly (Sourced & { readonly words: string })[];
}

/** A row that was not read in the law itself is shown as "check this". */
export const toBeChecked = ({ evidence }: Sourced): boolean =>
  evidence === 'secondary' || evidence === 'memory';
