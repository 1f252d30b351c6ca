/** The months in which a vehicle is run, and how it came to be there. */
export interface Span {
  /** Path of the vehicle in the scenario file, and its name. */
  readonly path: string;
  readonly name: string;
  /** Runs from the end of `start` to the end of `end`. */
  readonly start: number;
  readonly end: number;
  /** Months from `start` in which it is off the road: nothing is driven or worn, its bills go on. */
  readonly idle: number;
  /** A bought vehicle pays its yearly bills at its start, a kept one at their own date. */
  readonly bought: boolean;
  /** The month in which work restarts a component's clock, by the component's position. */
  readonly renewed: ReadonlyMap<number, number>;
  /** What its luck goes by: the path, and a number for each further vehicle of the same kind (a second lease). */
  readonly luck: string;
  /** Months of `start..end` for which the last yearly bill is not paid, because the vehicle is sold at `end` = H. */
  readonly lastYearlyBill: number;
}

/** No work renews anything. */
const NONE: ReadonlyMap<number, number> = new Map();
/** A span of a bought vehicle: its yearly bills fall at its start and every year after, before the horizon. */
export const boughtSpan = (path: string, name: string, start: number, end: number, nth = 0): Span => ({
  path,
  name,
  start,
  end,
  idle: 0,
  bought: true,
  renewed: NONE,
  luck: nth === 0 ? path : `${path}#${nth}`,
  lastYearlyBill: end - 1,
});
