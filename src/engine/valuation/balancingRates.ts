/** The rates at which amounts at different times are worth nothing together: what APR and rate of return both ask. */
import { crossings } from './crossings.ts';
import { brent, type Fn } from './roots.ts';

/** An amount after `t` full periods and a fraction `f` (0 ≤ f < 1) of one, worth amount/((1 + f·i)(1 + i)^t) today. */
export type Term = { readonly amount: number; readonly t: number; readonly f: number };

/** Rates per period, as fractions above -1. No answer has a reason; several are all given. */
export type BalancingRates =
  | { readonly status: 'one'; readonly rate: number }
  | { readonly status: 'several'; readonly rates: readonly number[]; readonly nearestZero: number }
  | { readonly status: 'none'; readonly reason: 'amounts of one sign only' | 'no rate balances them' };

const SCAN_POINTS = 801;

/**
 * Every rate i > -1 at which the terms' present values add up to 0. One change of sign over time has at most one
 * (each later amount loses worth against an earlier one as i grows); more are searched by a scan that is finest
 * around 0 %. Amounts of nil, and those of one time that cancel, change no answer, wherever they stand.
 */
export const balancingRates = (terms: readonly Term[]): BalancingRates => {
  const netted = byTime(terms);
  const changes = netted.filter(
    ({ amount }, k) => k > 0 && Math.sign(amount) !== Math.sign(netted[k - 1]?.amount ?? 0),
  ).length;
  if (changes === 0) return { status: 'none', reason: 'amounts of one sign only' };
  const worth = worthAt(netted);
  const rates = changes === 1 ? single(worth) : scanned(worth, netted);
  const [rate] = rates;
  if (rate === undefined) return { status: 'none', reason: 'no rate balances them' };
  if (rates.length === 1) return { status: 'one', rate };
  const nearestZero = rates.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a));
  return { status: 'several', rates, nearestZero };
};

/** In order of time, one term each, without those that come to nil but for rounding. */
const byTime = (terms: readonly Term[]): Term[] => {
  const times = new Map<number, { readonly term: Term; sum: number; size: number }>();
  for (const term of terms) {
    const at = times.get(term.t + term.f) ?? { term, sum: 0, size: 0 };
    at.sum += term.amount;
    at.size += Math.abs(term.amount);
    times.set(term.t + term.f, at);
  }
  return [...times]
    .sort(([a], [b]) => a - b)
    .filter(([, { sum, size }]) => Math.abs(sum) > 1e-14 * size)
    .map(([, { term, sum }]) => ({ amount: sum, t: term.t, f: term.f }));
};

/** All rates from -100 % to infinity as y from -1 to 1: losses as they are, gains as the share the discount takes. */
const rateOf = (y: number): number => (y <= 0 ? y : y / (1 - y));
const HIGHEST = 1 - 2 ** -40;

/**
 * The terms' worth at the rate of y, seen from the first time for gains and from the last for losses, so that no
 * power overflows; the factor between the two is positive and 1 at 0 %, so signs and zeros are kept.
 */
const worthAt = (terms: readonly Term[]): Fn => {
  const first = terms.reduce((least, { t }) => Math.min(least, t), Number.POSITIVE_INFINITY);
  const last = terms.reduce((most, { t }) => Math.max(most, t), 0);
  return (y) => {
    const rate = rateOf(y);
    const pull: Fn = y <= 0 ? (t) => (1 + y) ** (last - t) : (t) => (1 - y) ** (t - first);
    return terms.reduce((sum, { amount, t, f }) => sum + (amount * pull(t)) / (1 + f * rate), 0);
  };
};

const single = (worth: Fn): number[] =>
  Math.sign(worth(-1)) * Math.sign(worth(HIGHEST)) < 0 ? [rateOf(brent(worth, -1, HIGHEST, 1e-15))] : [];

const scanned = (worth: Fn, terms: readonly Term[]): number[] => {
  const size = terms.reduce((sum, { amount }) => sum + Math.abs(amount), 0);
  const found = crossings((s) => worth(s ** 3 * HIGHEST), -1, 1, SCAN_POINTS, { unit: 1e-9 * size });
  return found.roots.map(({ at }) => rateOf(at ** 3 * HIGHEST));
};
