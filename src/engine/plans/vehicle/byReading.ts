import type { Reading } from '../../cashflow/posting.ts';

/** An amount as each reading has it. */
export type Amounts = (reading: Reading) => number;

export const NOTHING: Amounts = () => 0;

/** The same in every reading. */
export const all =
  (amount: number): Amounts =>
  () =>
    amount;

export const sum =
  (a: Amounts, b: Amounts): Amounts =>
  (reading) =>
    a(reading) + b(reading);

/** Amounts by month. */
export type AmountsAt = (month: number) => Amounts;
