import type { Claim, ClaimFacts } from '../../../../src/engine/scenario/inputs/claim.ts';
import type { Inputs } from '../../../../src/engine/scenario/inputs/inputs.ts';
import type { Facts } from '../../../../src/engine/scenario/inputs/scenario.ts';
import type { PlaceRule } from '../../../../src/engine/scenario/places/placeRule.ts';
import { factsOf, inputs as plain } from '../../../support/household.ts';

const said = { source: 'invented', evidence: 'stated' } as const;

export const place: PlaceRule = {
  code: 'Lowmere',
  name: 'Lowmere',
  date: '2026-11',
  totalLoss: {
    ...said,
    test: { kind: 'percent', percent: 75, operator: '>=' },
    leftOut: [],
    reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
    note: null,
  },
  mayKeep: null,
  neverAgain: null,
  settlement: { ...said, tax: 'before salvage', fees: 'paid' },
  tradeIn: { ...said, credit: { kind: 'none' }, note: null },
  fault: { ...said, rule: 'in proportion' },
  notes: [],
};

/** The estimate by hand: 1,000 + 10 h x 60 + 300 = 1,900; tax 8 % of 1,300 = 104; 2,004 in all. */
export const claim: Claim = {
  value: 6000,
  damageBefore: 0,
  estimate: {
    lines: [
      { what: 'bumper', kind: 'parts', amount: 1000, labour: null, betterment: 0, taxed: true },
      {
        what: 'labour',
        kind: 'labour',
        amount: null,
        labour: { hours: 10, rate: 60 },
        betterment: 0,
        taxed: false,
      },
      { what: 'paint', kind: 'paint', amount: 300, labour: null, betterment: 0, taxed: true },
    ],
    tax: 0.08,
    supplement: { chance: 0, amount: 0, paid: 1 },
    shopHour: null,
    days: 0,
  },
  deductible: 500,
  fault: 0,
  otherLimit: null,
  recovered: 0,
  surcharge: { aYear: 0, years: 0 },
  salvage: 900,
  salesTax: 0.08,
  titleFee: 40,
  transferFee: 25,
  rental: null,
  storage: null,
  tow: null,
  alignment: null,
  calibration: null,
  belts: null,
  childSeats: null,
  refunds: [],
  gap: null,
  lostValue: null,
  ownRepair: {
    by: 'own',
    parts: 250,
    paint: 150,
    hours: 20,
    shopPrice: null,
    tools: 0,
    toolsBring: 0,
    qualified: 0,
    days: 0,
    valueLost: 300,
  },
  safeOnly: {
    by: 'own',
    parts: 80,
    paint: 0,
    hours: 4,
    shopPrice: null,
    tools: 0,
    toolsBring: 0,
    qualified: 0,
    days: 0,
    valueLost: 900,
  },
  rebuild: {
    by: 'own',
    parts: 500,
    paint: 150,
    hours: 30,
    shopPrice: null,
    tools: 0,
    toolsBring: 0,
    qualified: 0,
    valueLost: 0,
    inspection: 120,
    retitling: 60,
    monthsOff: 0,
    refused: 0,
    insuranceAYear: 900,
    titleFactor: 0.7,
  },
};

const claimFacts: ClaimFacts = {
  what: 'a trailer rolled into it',
  happened: '',
  pays: 'own',
  insurer: '',
  place,
  comparables: [],
  perDistance: 0,
  comparablesSay: null,
  lender: null,
  estimate: { total: null, parts: ['used', 'not said', 'not said'], taxOnlyWhenPaid: true },
  taxOnlyWhenBought: false,
  recoveredFor: null,
  structure: 'sound',
  airbagsDeployed: false,
  flooded: false,
  injured: false,
  signingCloses: false,
  answerBy: [],
  storagePaidUntil: '',
  rebuild: { insuranceQuoted: true, retitlingConfirmed: true, inspected: true },
};

/** The test household's vehicle, hit: nothing else to mend, worth 6,000 before and 3,600 as it stands. */
export const hit = (
  changes: Partial<Claim> = {},
  facts: Partial<ClaimFacts> = {},
  owed = 0,
): { readonly inputs: Inputs; readonly facts: Facts } => {
  const { vehicle } = plain;
  const inputs: Inputs = {
    ...plain,
    household: { ...plain.household, savings: null },
    vehicle: {
      ...vehicle,
      sellsFor: { ...vehicle.sellsFor, running: 6000, asItStands: 3600, tradeIn: null, scrap: 400 },
      loan: owed > 0 ? { owed, note: 0.06, monthsLeft: 24 } : null,
    },
    workNeeded: [],
    claim: { ...claim, ...changes },
  };
  return { inputs, facts: { ...factsOf(inputs), claim: { ...claimFacts, ...facts } } };
};

/** Under this rule the same estimate is a total loss: 2,004 of 6,000 is more than 30 %. */
export const strict: PlaceRule = {
  ...place,
  totalLoss: { ...place.totalLoss, test: { kind: 'percent', percent: 30, operator: '>=' } },
};
