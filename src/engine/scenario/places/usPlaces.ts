/** The places of the US, each put together from facts/usTotalLoss.json and what facts/usClaims.json knows of it. */
import type { AsRead, Sourced } from '../facts/fact.ts';
import claimFile from '../facts/usClaims.json' with { type: 'json' };
import totalLossFile from '../facts/usTotalLoss.json' with { type: 'json' };
import type { FaultRule, LeftOut, Operator, PlaceRule, Reach } from './placeRule.ts';

type Settlement = NonNullable<PlaceRule['settlement']>;
type NeverAgain = NonNullable<PlaceRule['neverAgain']>;
type TradeIn = PlaceRule['tradeIn'];
/** Places by code: "US-VA". */
type ByCode<T> = Readonly<Record<string, T>>;

interface PlaceFile {
  readonly about: string;
  readonly unit: string;
  /** The month all of it was set down. */
  readonly date: string;
}

/** A test whose operator is left out is one whose operator is not known. */
type PlaceTest =
  | { readonly kind: 'percent'; readonly percent: number; readonly operator?: Operator }
  | { readonly kind: 'formula'; readonly operator?: Operator }
  | { readonly kind: 'insurer decides' };

export interface TotalLossFile extends PlaceFile {
  readonly places: ByCode<
    Sourced & {
      readonly name: string;
      readonly test: PlaceTest;
      readonly leftOut?: readonly LeftOut[];
      readonly reach?: Partial<Reach>;
      readonly note?: string;
      readonly neverAgain?: NeverAgain;
    }
  >;
}

export interface ClaimFile extends PlaceFile {
  readonly places: ByCode<{
    readonly settlement?: Settlement;
    readonly tradeIn?: Omit<TradeIn, 'note'> & { readonly note?: string };
    readonly notes?: PlaceRule['notes'];
  }>;
  /** What is said of a trade-in wherever no row knows better. */
  readonly tradeInElsewhere: TradeIn;
  readonly faults: readonly (Sourced & { readonly places: readonly string[]; readonly rule: FaultRule })[];
}

const TESTS = totalLossFile satisfies AsRead<TotalLossFile> as TotalLossFile;
const CLAIMS = claimFile satisfies AsRead<ClaimFile> as ClaimFile;

const NO_LIMIT: Reach = { modelYears: null, valueAtLeast: null, uninsuredOnly: false };

const totalLossOf = (found: TotalLossFile['places'][string]): PlaceRule['totalLoss'] => {
  const { test, leftOut = [], reach, note = null, source, evidence } = found;
  return {
    test: test.kind === 'insurer decides' ? test : { ...test, operator: test.operator ?? 'not known' },
    leftOut,
    reach: { ...NO_LIMIT, ...reach },
    note,
    source,
    evidence,
  };
};

const faultAt = (code: string): PlaceRule['fault'] => {
  const found = CLAIMS.faults.find(({ places }) => places.includes(code));
  return found ? { rule: found.rule, source: found.source, evidence: found.evidence } : null;
};

export const US_PLACES: readonly PlaceRule[] = Object.entries(TESTS.places).map(([code, found]) => {
  const { settlement = null, tradeIn = CLAIMS.tradeInElsewhere, notes = [] } = CLAIMS.places[code] ?? {};
  return {
    code,
    name: found.name,
    date: TESTS.date,
    totalLoss: totalLossOf(found),
    neverAgain: found.neverAgain ?? null,
    mayKeep: null,
    settlement,
    tradeIn: { ...tradeIn, note: tradeIn.note ?? null },
    fault: faultAt(code),
    notes,
  };
});
