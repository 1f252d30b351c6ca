/** An invented claim as the engine tells it, on round numbers a person can add up. */
import type { ClaimView, CoverView } from '../../src/engine/decision/claim/view.ts';
import type { Decision } from '../../src/engine/decision/decision.ts';
import type { Cents } from '../../src/engine/quantity/money.ts';
import type { ClaimFacts } from '../../src/engine/scenario/claim.ts';
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
    neverAgain: null,
    settlement: { tax: 'after salvage', fees: 'paid', source: 'the rule book', evidence: 'stated' },
    tradeIn: { credit: { kind: 'full' }, note: null, source: 'the rule book', evidence: 'stated' },
    fault: null,
    notes: [],
  },
  placeWritten: true,
  valueStated: false,
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

export const claimView: ClaimView = {
  value: cents(6200),
  estimate: {
    lines: [
      { what: 'tailgate', kind: 'parts', hours: null, amount: cents(2070), betterment: cents(40) },
      { what: 'take off and refit', kind: 'labour', hours: 15, amount: cents(930), betterment: cents(0) },
    ],
    tax: cents(100),
    total: cents(3100),
  },
  test: {
    result: { status: 'repair' },
    repair: cents(3100),
    value: cents(6200),
    salvage: cents(850),
    from: cents(4340),
  },
  courses: [
    {
      id: 'own-repair/keep',
      label: 'Take the money and mend it at home',
      side: 'keep',
      inHand: cents(1840),
      hours: 18,
      netPresentCost: cents(9100),
      cheapest: { value: 0.71, error: 0.01 },
      statement,
      split: null,
      firstDay: [{ item: 'insurer pays the owner', amount: cents(-2560) }],
      risks: ['More damage may show once it is opened.'],
      forecloses: ['What is not repaired comes off a later claim.'],
    },
    {
      id: 'no-claim/keep',
      label: 'Make no claim',
      side: 'keep',
      inHand: cents(-260),
      hours: 0,
      netPresentCost: cents(9900),
      cheapest: { value: 0.29, error: 0.01 },
      statement: null,
      split: null,
      firstDay: [],
      risks: [],
      forecloses: [],
    },
  ],
  closed: [
    {
      id: 'rebuild',
      label: 'total loss, kept and rebuilt',
      why: 'the repair stays below the line of Harrowmere (70%)',
    },
  ],
  breakEvens: [
    {
      what: 'own hours at which a shop is as good',
      unit: 'hours',
      today: 18,
      tips: { status: 'at', at: 41 },
    },
    {
      what: 'bid for the wreck that makes keeping it pointless',
      unit: 'money',
      today: 850,
      tips: { status: 'never', reason: 'keeping the wreck is closed' },
    },
  ],
};

export const coverView: CoverView = {
  lenderRequires: false,
  savings: 2600,
  choices: [
    {
      what: 'collision',
      premium: 214,
      deductible: 500,
      withIt: 232,
      withoutIt: 121,
      worstWith: 500,
      worstWithout: 5900,
      claimsToPay: { status: 'at', at: 0.07 },
      valueToPay: { status: 'never', reason: 'claims would never make up the premium, whatever it is worth' },
      other: { premium: 158, deductible: 1000, gain: 38, tips: { status: 'at', at: 0.112 } },
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
