/** The places of the US: the table of tests, and what else is known of some of them. */
import type { LeftOut, PlaceRule, Reach, Sourced } from './placeRule.ts';
import { US_TESTS } from './usTests.ts';

type TotalLoss = PlaceRule['totalLoss'];
type TradeIn = PlaceRule['tradeIn'];
type Settlement = NonNullable<PlaceRule['settlement']>;
type NeverAgain = NonNullable<PlaceRule['neverAgain']>;
type Note = PlaceRule['notes'][number];
type By<T> = Readonly<Record<string, T>>;

const NO_LIMIT: Reach = { modelYears: null, valueAtLeast: null, uninsuredOnly: false };

const LEFT_OUT: By<readonly LeftOut[]> = {
  NV: ['paint', 'electronics', 'towing'],
  TX: ['paint', 'sales tax', 'hail damage'],
  VA: ['towing', 'storage', 'rental', 'lost market value'],
};

const REACH: By<Reach> = {
  FL: { ...NO_LIMIT, uninsuredOnly: true },
  IA: { ...NO_LIMIT, valueAtLeast: 500 },
  MI: { ...NO_LIMIT, modelYears: 'recent' },
  OK: { ...NO_LIMIT, modelYears: 10 },
};

const TEST_NOTES: By<string> = {
  AL: 'held against fair retail value',
  FL: 'for an uninsured vehicle, against the cost of replacing it; an insured one is a total loss when its insurer pays to replace it',
  IA: '50 % before July 2021; worth at least 500 before the damage',
  MD: 'a vehicle its owner keeps is not one "acquired" by the insurer',
  MI: 'speaks of late models; 75 % to under 91 % is salvage, from 91 % scrap',
  NV: 'of electronics only those the law specifies are left out; what bolts on is treated otherwise past ten years of age',
  OK: 'model years up to ten; 47 O.S. 1111 puts a total loss at 100 % of fair market value',
  TX: 'repainting, sales tax on the repair and hail damage do not count',
  VA: 'a vehicle recovered after theft: 75 % of value',
  WA: 'counts from a value that is indexed (7,660 in 2011)',
};

const NEVER_AGAIN: By<NeverAgain> = {
  MI: { percent: 91, operator: '>=', source: 'MCL 257.217c', evidence: 'read' },
  VA: { percent: 90, operator: '>', source: 'Va. Code 46.2-1600', evidence: 'secondary' },
};

const SETTLEMENTS: By<Settlement> = {
  CA: { tax: 'after salvage', fees: 'paid', source: '10 CCR 2695.8(b)(1)(A)', evidence: 'read' },
  NY: {
    tax: 'before salvage',
    fees: 'not known',
    source:
      '11 NYCRR 216.6(b); Insurance Department, Office of General Counsel, opinion of 30 April 2002, "Calculation of Total Loss Payments and Regulation 64"',
    evidence: 'read',
  },
};

const UNKNOWN_CREDIT: TradeIn = {
  credit: { kind: 'not known' },
  note: 'most places with a sales tax take it on the price less the trade-in: look this one up',
  source: 'no row for this place',
  evidence: 'secondary',
};

const noSalesTax = (note: string, source: string): TradeIn => ({
  credit: { kind: 'no sales tax' },
  note,
  source,
  evidence: 'memory',
});
const noCredit = (source: string, evidence: TradeIn['evidence'], note: string | null = null): TradeIn => ({
  credit: { kind: 'none' },
  note,
  source,
  evidence,
});

const TRADE_IN: By<TradeIn> = {
  AK: noSalesTax('no state sales tax on vehicles; ask for local ones', 'general'),
  CA: noCredit('CDTFA Regulation 1654', 'secondary', 'the allowance is part of what is taxed'),
  DC: noCredit('D.C. Code 50-2201.03', 'secondary', 'an excise on value; partly from memory'),
  DE: noSalesTax('a document fee instead of a sales tax', '30 Del. C. 3002'),
  HI: noCredit('H.R.S. 237', 'secondary', 'general excise on the full price; partly from memory'),
  KY: {
    credit: { kind: 'not known' },
    note: 'sources disagree: a list says no credit, the law as recalled lets an attested price less trade-in stand',
    source: 'KRS 138.450',
    evidence: 'memory',
  },
  MD: { credit: { kind: 'full' }, note: null, source: 'Md. Transp. 13-809', evidence: 'memory' },
  MI: {
    credit: { kind: 'capped', from: 2019, cap: 5000, risesAYear: 1000, lastCap: 14_000 },
    note: 'the cap of 2019 and its rise were read, later ones follow by adding',
    source: 'MCL 205.51 and 205.92; Revenue Administrative Bulletin 2022-17',
    evidence: 'read',
  },
  MT: noSalesTax('no state sales tax on vehicles', 'general'),
  NH: noSalesTax('no state sales tax on vehicles', 'general'),
  OR: noSalesTax('a privilege or use tax on new vehicles only (0.5 %)', 'ORS 320.405 and following'),
  VA: noCredit(
    'Va. Code 58.1-2401 and following; DMV text quoted second-hand',
    'secondary',
    'on the price before trade-in (4.15 %, with a least tax); popular articles that tell of a credit contradict it',
  ),
};

const ANY_FAULT: NonNullable<PlaceRule['fault']> = {
  rule: 'nothing if any',
  source:
    'Principles of Risk Management and Insurance, 13th edition, note after Matthiesen, Wickert and Lehrer, "Contributory negligence / comparative fault laws in all 50 states" (2014)',
  evidence: 'secondary',
};
const FAULT: By<NonNullable<PlaceRule['fault']>> = {
  AL: ANY_FAULT,
  DC: ANY_FAULT,
  MD: ANY_FAULT,
  NC: ANY_FAULT,
  VA: ANY_FAULT,
};

const NOTES: By<readonly Note[]> = {
  CA: [
    {
      words:
        'Salvage may be taken off at what a salvage pool, dealer, auction or dismantler would pay; ask who: the insurer has to name the buyer. It must also tell of the duty to notify the motor vehicle department.',
      source: '10 CCR 2695.8(b)(1)(A)',
      evidence: 'read',
    },
  ],
  IA: [
    {
      words:
        'Repaired salvage gets a prior-salvage title for good, after an examination by a peace officer (fee 50, later 53).',
      source: 'Iowa DOT, Iowa Legal Aid',
      evidence: 'read',
    },
  ],
  NV: [
    {
      words:
        'Who keeps a salvage vehicle tells the lienholder within 10 days, who sends the title on with a salvage application within 30.',
      source: 'NRS 487.800, an older codification',
      evidence: 'read',
    },
  ],
  NY: [
    {
      words:
        'A comparable may have run at most 4,000 miles more than yours, or 10 % more, whichever is greater.',
      source: '11 NYCRR 216.7(a)(4)',
      evidence: 'read',
    },
  ],
  TX: [
    {
      words:
        'Repaired salvage is titled anew on a rebuilt vehicle statement, with a remark that it was rebuilt.',
      source: 'Texas Comptroller, motor vehicle tax guide',
      evidence: 'read',
    },
  ],
};

const placeOf = (
  at: string,
  name: string,
  test: TotalLoss['test'],
  { source, evidence }: Sourced,
): PlaceRule => ({
  code: `US-${at}`,
  name,
  date: '2026-11',
  totalLoss: {
    test,
    leftOut: LEFT_OUT[at] ?? [],
    reach: REACH[at] ?? NO_LIMIT,
    note: TEST_NOTES[at] ?? null,
    source,
    evidence,
  },
  neverAgain: NEVER_AGAIN[at] ?? null,
  mayKeep: null,
  settlement: SETTLEMENTS[at] ?? null,
  tradeIn: TRADE_IN[at] ?? UNKNOWN_CREDIT,
  fault: FAULT[at] ?? null,
  notes: NOTES[at] ?? [],
});

export const US_PLACES: readonly PlaceRule[] = US_TESTS.map(([at, name, test, source, evidence]) =>
  placeOf(at, name, test, { source, evidence }),
);
