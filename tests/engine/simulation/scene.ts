/** Households for the repair limit: an old vehicle with parts of its own, and several ways to pay for another. */
import type { Component, Inputs, Lease, Replacement } from '../../../src/engine/scenario/inputs/inputs.ts';
import type { Scenario } from '../../../src/engine/scenario/inputs/scenario.ts';
import { factsOf, inputs } from '../../support/household.ts';

export const component = (name: string, more: Partial<Component> = {}): Component => ({
  name,
  clock: 'distance',
  scale: 180_000,
  shape: 3,
  run: 171_000,
  another: null,
  bill: { parts: null, hours: null, shopPrice: null },
  repairIs: 'renewal',
  by: 'shop',
  parts: 0,
  hours: 0,
  shopPrice: 2400,
  tow: 150,
  daysWithout: 4,
  unsafe: false,
  shareOfAverage: 0,
  ...more,
});

export const scenarioOf = (of: Inputs): Scenario => ({
  inputs: of,
  facts: factsOf(of),
  quantities: [],
  written: null,
});

/** The household of the engine's tests with changes to its parts. */
export const household = (more: {
  readonly household?: Partial<Inputs['household']>;
  readonly vehicle?: Partial<Inputs['vehicle']>;
  readonly replacement?: Partial<Replacement>;
  readonly workNeeded?: Inputs['workNeeded'];
}): Inputs => ({
  ...inputs,
  household: { ...inputs.household, ...more.household },
  vehicle: { ...inputs.vehicle, ...more.vehicle },
  workNeeded: more.workNeeded ?? inputs.workNeeded,
  replacement: inputs.replacement.map((one) => ({ ...one, ...more.replacement })),
});

export const lease: Lease = {
  startsFrom: 24_000,
  residual: 13_000,
  moneyFactor: 0.002,
  months: 36,
  dueAtSigning: 1500,
  distanceAYear: 8000,
  overDistance: 0.2,
  acquisitionFee: 600,
  dispositionFee: 350,
  taxOnPayment: 0.06,
  afterwards: 'again',
  purchaseFee: 250,
  earlyTermination: null,
};
