/** An invented claim as the engine tells it, on round numbers a person can add up. */
import type { ClaimView, CoverView } from '../../src/engine/analysis/collisionViews.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import type { ClaimFacts } from '../../src/engine/scenario/inputs/claim.ts';
import { decision, facts } from './fixture.ts';

const cents = (units: number): Cents => Math.round(units * 100) as Cents;

export const claimFacts: ClaimFacts = {
  what: 'Parked, and hit by a trailer',
  happened: '2026-11-12',
  pays: 'own',
  insurer: 'the Harrow Mutual',
  place: {
    code: 'Harrowmere',
    name: 'Harrowmere',
    date: '2026-11',
    totalLoss: {
      test: { kind: 'percent', percent: 70, operator: '>=' },
      leftOut: ['towing'],
      reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
      note: null,
      source: 'a chart of adjusters',
      evidence: 'secondary',
    },
    mayKeep: null,
    neverAgain: null,
    settlement: { tax: 'after salvage', fees: 'paid', source: 'the rule book', evidence: 'stated' },
    tradeIn: { credit: { kind: 'full' }, note: null, source: 'the rule book', evidence: 'stated' },
    fault: null,
    notes: [],
  },
  comparables: [
    { what: 'one in Eastbury', price: 6400, odometer: 170000, forDistance: -56, adjustment: 0, says: 6344 },
    { what: 'one in Stonely', price: 5800, odometer: 180000, forDistance: 344, adjustment: -88, says: 6056 },
  ],
  perDistance: 0.04,
  comparablesSay: 6200,
  lender: { name: 'the credit union', paidFirst: true, requiresRepair: true, cheque: null },
  estimate: { total: 3100, parts: ['used', 'not said'], taxOnlyWhenPaid: false },
  taxOnlyWhenBought: false,
  recoveredFor: null,
  structure: 'sound',
  airbagsDeployed: false,
  flooded: false,
  injured: null,
  signingCloses: null,
  answerBy: [{ what: 'answer to the offer', date: '2026-12-11', past: false }],
  storagePaidUntil: '2026-12-02',
  rebuild: { insuranceQuoted: false, retitlingConfirmed: false, inspected: false },
};

const statement = {
  lines: [
    { item: 'repair', amount: cents(3000) },
    { item: 'tax on the repair', amount: cents(100) },
    { item: 'betterment', amount: cents(-40) },
    { item: 'deductible', amount: cents(-500) },
  ],
  payment: cents(2560),
} as const;

const byReading = (units: number) => ({ counted: cents(units), cash: cents(units), shop: cents(units) });

const claimView: ClaimView = {
  payer: 'own',
  place: claimFacts.place,
  comparables: null,
  value: cents(6200),
  estimate: {
    lines: [
      { what: 'tailgate', kind: 'parts', part: 'used', amount: cents(2070), betterment: cents(40) },
      {
        what: 'take off and refit',
        kind: 'labour',
        part: 'not said',
        amount: cents(930),
        betterment: cents(0),
      },
    ],
    totals: {
      amounts: [cents(2070), cents(930)],
      beforeTax: cents(3000),
      tax: cents(100),
      total: cents(3100),
      betterment: cents(40),
    },
  },
  threshold: {
    result: { status: 'repair' },
    tested: cents(3100),
    salvage: cents(850),
    from: cents(4340),
    left: cents(1148),
  },
  courses: [
    {
      id: 'no-claim/keep',
      label: 'Make no claim',
      side: 'keep',
      inHand: cents(-260),
      hours: 0,
      cost: byReading(9900),
      statement: null,
      atMost: null,
      split: null,
      risks: [],
      forecloses: [],
    },
    {
      id: 'keep',
      label: 'Take the money and mend it at home',
      side: 'keep',
      inHand: cents(1840),
      hours: 18,
      cost: byReading(9100),
      statement,
      atMost: cents(2600),
      split: {
        payment: cents(2560),
        owed: cents(2000),
        lender: cents(2000),
        owner: cents(560),
        shop: cents(0),
        refund: cents(0),
        gap: cents(0),
        stillOwed: cents(0),
      },
      risks: ['More damage may show once it is opened.'],
      forecloses: ['What is not repaired comes off a later claim.'],
    },
  ],
  closed: [
    {
      id: 'rebuild',
      label: 'total loss, kept and rebuilt',
      why: 'the repair stays below the line of Harrowmere (70%)',
    },
  ],
  tips: [
    { what: 'hours', at: 41, words: 'own hours, a shop is as good.' },
    { what: 'salvage', at: null, words: 'no bid for the wreck matters, as keeping it is closed.' },
  ],
};

const coverView: CoverView = {
  value: 5900,
  chanceAYear: { collision: 0.035, comprehensive: null },
  mustKeep: 'the lender requires it',
  parts: [
    {
      kind: 'collision',
      premium: 214,
      deductible: 500,
      withIt: 232,
      without: 121,
      worst: { withIt: 500, without: 5900 },
      savingsAfter: { withIt: 2100, without: -3300 },
      claimsTip: { status: 'at', at: 0.07 },
      valueTip: { status: 'never', reason: 'claims would never make up the premium, whatever it is worth' },
      other: { aYear: 158, deductible: 1000, gain: 38, worst: 500, claimsTip: { status: 'at', at: 0.112 } },
    },
  ],
};

/** The household of the fixture after its collision. */
export const afterCollision: Decision = {
  ...decision,
  facts: { ...facts, claim: claimFacts },
  claim: claimView,
  cover: coverView,
};
