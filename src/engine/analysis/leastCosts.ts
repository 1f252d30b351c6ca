import type { ByReading, Reading } from '../cashflow/posting.ts';
import { comparedWays } from '../evaluation/options.ts';
import { presentCostOf } from '../evaluation/project.ts';
import { keysApart } from '../evaluation/recording.ts';
import { recordingsOf, type Tape } from '../evaluation/tape.ts';
import { type Context, contextOf, EXPECTED, inFuture } from '../plans/vehicle/context.ts';
import type { Ground } from '../scenario/file/rewrite.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import type { Rivals } from '../valuation/leastCrossings.ts';

/** The least that each side costs, in one reading or in each; null where a side has no open way. */
export interface Sides<T> {
  readonly keep: T | null;
  readonly replace: T | null;
}

/** A side that is not open costs more than any that is. */
const NEVER_CHEAPER = 1e12;

const lower = (a: ByReading<number> | null, b: ByReading<number>): ByReading<number> =>
  a === null
    ? b
    : {
        counted: Math.min(a.counted, b.counted),
        cash: Math.min(a.cash, b.cash),
        shop: Math.min(a.shop, b.shop),
      };

/** What each side costs at its best, unrounded: every way tried, in each reading the best of that reading. */
export const leastCosts = (ctx: Context): Sides<ByReading<number>> => {
  let keep: ByReading<number> | null = null;
  let replace: ByReading<number> | null = null;
  const once = inFuture(EXPECTED, ctx);
  for (const way of comparedWays(once)) {
    const cost = presentCostOf(way.build(once), once);
    if (way.side === 'keep') keep = lower(keep, cost);
    else replace = lower(replace, cost);
  }
  return { keep, replace };
};

/** What every way that is compared costs at other numbers than the base's, unrounded and own time counted. */
export type CompareAt = (ground: Ground, apart?: readonly string[]) => Rivals;

/**
 * Compares ways at numbers near those of a base: what nothing moves is added up once. The sides choose anew at each.
 *
 * @returns a function of the numbers, and of the inputs in which they differ from the base's, where that is known
 */
export const comparisonFrom = ({ inputs, facts }: Ground): CompareAt => {
  const recordings = recordingsOf(contextOf(inputs, facts, EXPECTED, 'unrounded'));
  // One number is moved to its end before the next: a tape holds on to all of the numbers it was last asked about.
  let latest: { readonly name: string; readonly tape: Tape } | null = null;
  const tapeFor = (keys: readonly string[]): Tape => {
    const name = keys.join(' ');
    if (latest?.name !== name) latest = { name, tape: recordings.moving(keys) };
    return latest.tape;
  };
  const sameFacts = (other: Facts): boolean =>
    other === facts ||
    (keysApart(facts.jobs, other.jobs).length === 0 && keysApart(facts.claim, other.claim).length === 0);
  return (ground, apart) => {
    const tape = sameFacts(ground.facts) ? tapeFor(apart ?? keysApart(inputs, ground.inputs)) : null;
    const ctx = contextOf(ground.inputs, ground.facts, EXPECTED, 'unrounded', tape?.still);
    const [ids, keep, replace]: [string[], number[], number[]] = [[], [], []];
    for (const way of comparedWays(ctx)) {
      const cost = tape ? tape.costOf(tape.planOf(way, ctx), ctx) : presentCostOf(way.build(ctx), ctx);
      ids.push(way.id);
      (way.side === 'keep' ? keep : replace).push(cost.counted);
    }
    return { open: ids.join(' '), first: keep, second: replace, lead: leadOf(keep, replace) };
  };
};

const leadOf = (keep: readonly number[], replace: readonly number[]): number =>
  keep.length > 0 && replace.length > 0
    ? Math.min(...replace) - Math.min(...keep)
    : keep.length > 0
      ? NEVER_CHEAPER
      : replace.length > 0
        ? -NEVER_CHEAPER
        : 0;

/**
 * D = least cost of replacing less least cost of keeping, currency units, positive when keeping is cheaper. Where a side
 * is not open the other is ahead by more than any money; where neither is, 0.
 */
export const differenceBetween = ({ keep, replace }: Sides<ByReading<number>>, reading: Reading): number => {
  if (keep && replace) return replace[reading] - keep[reading];
  return keep ? NEVER_CHEAPER : replace ? -NEVER_CHEAPER : 0;
};

/** The same at these numbers: the sides choose anew for them. */
export const differenceAt = ({ inputs, facts }: Ground, reading: Reading = 'counted'): number =>
  differenceBetween(leastCosts(contextOf(inputs, facts, EXPECTED, 'unrounded')), reading);

/** The cheaper side's cost, own time counted; what differences are measured by. 0 where nothing is open. */
export const cheaperCost = ({ keep, replace }: Sides<ByReading<number>>): number =>
  Math.min(
    ...[keep, replace].map((side) => (side ? Math.abs(side.counted) : Number.POSITIVE_INFINITY)),
    keep || replace ? Number.POSITIVE_INFINITY : 0,
  );
