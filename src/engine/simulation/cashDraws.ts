import type { Detail } from './cashDetail.ts';

/** What is kept of one way's money in each future; arrays by draw. Cash in currency units. */
export interface DetailDraws {
  readonly worstMonth: Float64Array;
  readonly worstYear: Float64Array;
  /** The largest single repair bill within two years; 0 for none. */
  readonly worstBill: Float64Array;
  /** Cash paid out by the end of each fan month; fan months in a row for each draw. */
  readonly fan: Float32Array;
  /** The fund to start with so that it never runs dry. */
  readonly needed: Float64Array;
  /** Month in which the fund of savings first runs dry; 0: never, or savings are not known. */
  readonly dryIn: Int16Array;
  /** 1 where the fund does not last through months without income. */
  readonly incomeDry: Uint8Array;
  readonly stopsFirstYear: Float32Array;
  readonly stops: Float32Array;
  readonly days: Float32Array;
}

/** Months at whose end the fan is looked at: about ten of them, the horizon the last. */
export const fanMonths = (horizon: number): number[] => {
  const step = Math.max(1, Math.round(horizon / 10));
  const months: number[] = [];
  for (let m = 0; m < horizon; m += step) months.push(m);
  return [...months, horizon];
};

/** From when on months without income are looked at: the first year has gone well. */
const FIRST_YEAR = 12;

export const detailDraws = (n: number, fan: number): DetailDraws => ({
  worstMonth: new Float64Array(n),
  worstYear: new Float64Array(n),
  worstBill: new Float64Array(n),
  fan: new Float32Array(n * fan),
  needed: new Float64Array(n),
  dryIn: new Int16Array(n),
  incomeDry: new Uint8Array(n),
  stopsFirstYear: new Float32Array(n),
  stops: new Float32Array(n),
  days: new Float32Array(n),
});

/** The household's side of a fund: what it starts with, what goes in, what a month takes besides lumps. */
export interface Fund {
  /** Null: not known, or private. */
  readonly savings: number | null;
  readonly setAside: number;
  readonly monthsWithoutIncome: number;
  readonly regular: { readonly keep: number; readonly replace: number };
}

/**
 * Writes what one way's detail of one draw says.
 *
 * @param kept months for which the way takes what keeping takes; from then on what a replacement takes
 */
export const record = (
  into: DetailDraws,
  i: number,
  detail: Detail,
  kept: number,
  fund: Fund,
  fan: readonly number[],
): void => {
  const { cash, lumps } = detail;
  const { savings, setAside, monthsWithoutIncome, regular } = fund;
  const H = cash.length - 1;
  let worstMonth = 0;
  let worstYear = 0;
  let running = 0;
  let paid = cash[0] as number;
  let next = 0;
  if (fan[next] === 0) into.fan[i * fan.length + next++] = paid;
  let level = 0;
  let lowest = 0;
  let dryIn = 0;
  const start = savings === null ? null : savings - (cash[0] as number);
  let stops = 0;
  let days = 0;
  for (let m = 1; m <= H; m++) {
    const out = cash[m] as number;
    const usual = m <= kept ? regular.keep : regular.replace;
    if (out > worstMonth) worstMonth = out;
    running += out - (m > 12 ? (cash[m - 12] as number) : 0);
    if (running > worstYear) worstYear = running;
    paid += out;
    if (fan[next] === m) into.fan[i * fan.length + next++] = paid;
    level += setAside - (usual - regular.keep) - (lumps[m] as number);
    if (level < lowest) lowest = level;
    if (start !== null && dryIn === 0 && start + level < 0) dryIn = m;
    if (m === Math.min(FIRST_YEAR, H)) {
      into.incomeDry[i] = start !== null && start + level < monthsWithoutIncome * usual ? 1 : 0;
      into.stopsFirstYear[i] = stops + (detail.stops[m] as number);
    }
    stops += detail.stops[m] as number;
    days += detail.days[m] as number;
  }
  into.worstMonth[i] = worstMonth;
  into.worstYear[i] = worstYear;
  into.worstBill[i] = detail.worst.bill;
  into.needed[i] = -lowest;
  into.dryIn[i] = dryIn;
  into.stops[i] = stops;
  into.days[i] = days;
};

/** Writes what another way's record of the same draw says. */
export const recordAlike = (into: DetailDraws, from: DetailDraws, i: number, fan: number): void => {
  into.worstMonth[i] = from.worstMonth[i] as number;
  into.worstYear[i] = from.worstYear[i] as number;
  into.worstBill[i] = from.worstBill[i] as number;
  for (let k = i * fan; k < (i + 1) * fan; k++) into.fan[k] = from.fan[k] as number;
  into.needed[i] = from.needed[i] as number;
  into.dryIn[i] = from.dryIn[i] as number;
  into.incomeDry[i] = from.incomeDry[i] as number;
  into.stopsFirstYear[i] = from.stopsFirstYear[i] as number;
  into.stops[i] = from.stops[i] as number;
  into.days[i] = from.days[i] as number;
};
