/**
 * The two ways in which the sums of a claim are run, as with a loan: to the cent in decimal arithmetic, as an insurer's
 * statement has them, and unrounded in currency units, for a solver that needs a smooth function. Each rule is written
 * once, for either. Adding and taking off is the same in both, and exact in cents.
 */
import { Decimal } from '../../../quantity/decimal.ts';
import { type Cents, toCents } from '../../../quantity/money.ts';

/** `N`: Cents for the statement, plain currency units for the unrounded twin. */
export interface Arithmetic<N extends number = Cents> {
  /** An amount in currency units, as places write their caps and floors. */
  readonly units: (amount: number) => N;
  /** amount x factor, rounded half up to the cent where there are cents; sign of the amount kept. */
  readonly times: (amount: N, factor: number) => N;
  /** amount x part / whole, rounded likewise, with no rounding in between; 0 when `whole` is 0. */
  readonly share: (amount: N, part: number, whole: number) => N;
}

const whole = (cents: Decimal): Cents => cents.toDecimalPlaces(0).plus(0).toNumber() as Cents;

export const TO_THE_CENT: Arithmetic = {
  units: toCents,
  times: (amount, factor) => whole(new Decimal(amount).times(factor)),
  share: (amount, part, of) => (of === 0 ? (0 as Cents) : whole(new Decimal(amount).times(part).div(of))),
};

export const UNROUNDED: Arithmetic<number> = {
  units: (amount) => amount,
  times: (amount, factor) => amount * factor,
  share: (amount, part, of) => (of === 0 ? 0 : (amount * part) / of),
};

export const sum = <N extends number>(amounts: readonly N[]): N => {
  let total = 0;
  for (let k = 0; k < amounts.length; k++) total += amounts[k] as number;
  return total as N;
};
export const plus = <N extends number>(a: N, b: N): N => (a + b) as N;
/** The sum of what each of a list comes to: no list of amounts is made, for these sums are run in every drawn future. */
export const sumOf = <T, N extends number>(all: readonly T[], amount: (one: T) => N): N => {
  let total = 0;
  for (let k = 0; k < all.length; k++) total += amount(all[k] as T);
  return total as N;
};
export const less = <N extends number>(a: N, b: N): N => (a - b) as N;
export const lesser = <N extends number>(a: N, b: N): N => (a < b ? a : b);
export const atLeastNil = <N extends number>(a: N): N => (a > 0 ? a : (0 as N));
/** The amount with its sign turned, never -0. */
export const turned = <N extends number>(a: N): N => (a === 0 ? a : (-a as N));

/** Refuses an amount that has to be nil or more, by name: a claim's figures are given without signs. */
export const noSign = (amounts: Readonly<Record<string, number>>): void => {
  // Not by entries: a settlement is worked out in every future, and lists of pairs cost more than its sums.
  for (const name in amounts)
    if (!((amounts[name] as number) >= 0)) throw new RangeError(`${name} must be 0 or more`);
};
