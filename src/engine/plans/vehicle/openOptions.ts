import type { Facts, Need } from '../../scenario/inputs/scenario.ts';
import type { Context } from './context.ts';
import { LIKE_OURS } from './likeOurs.ts';

/** A need in words: a file writes "child_seats". */
export const needWords = (what: string): string => what.replaceAll('_', ' ');

type Offers = Readonly<Record<string, number | boolean>>;

/** What a vehicle offers against a need; undefined where nobody said. A need may be called what every object answers to. */
export const offered = (offers: Offers, what: string): number | boolean | undefined =>
  Object.hasOwn(offers, what) ? offers[what] : undefined;

/** Why a vehicle fails a need that holds within the horizon; null if it meets them all or nobody said. */
const failsNeed = (needs: readonly Need[], offers: Offers, from: number, until: number): string | null => {
  for (const need of needs) {
    if (need.fromMonth >= until || from >= until) continue;
    const has = offered(offers, need.what);
    if (has === undefined) continue;
    const enough = need.atLeast === true ? has !== false && has !== 0 : Number(has) >= need.atLeast;
    const since = need.fromMonth > 0 ? ` from month ${need.fromMonth}` : '';
    if (!enough) {
      const what = needWords(need.what);
      return need.atLeast === true
        ? `${what} is needed${since}, and it has none`
        : `${what} ${need.atLeast} is needed${since}, and it has ${has === false ? 'none' : String(has)}`;
    }
  }
  return null;
};

/** Its frame is rusted through, and no qualified repair of it has been quoted. */
export const presentRotten = (facts: Facts): boolean =>
  facts.structuralRust === 'found' && !facts.jobs.some((job) => job.dangers.includes('structure'));

/** Why the present vehicle cannot be held from now to the end of month `until`; null if it can. */
export const presentClosed = (until: number, ctx: Context): string | null => {
  const { facts } = ctx;
  if (presentRotten(facts)) return 'its frame is rusted through and no qualified repair has been quoted';
  return failsNeed(facts.needs, facts.offers.vehicle, 0, until);
};

/** Why a replacement cannot serve from month `from` to the horizon; null if it can. */
export const replacementClosed = (index: number, from: number, ctx: Context): string | null => {
  const { needs, offers } = ctx.facts;
  // Another like ours offers what ours does.
  const has = index === LIKE_OURS ? offers.vehicle : (offers.replacement[index] ?? {});
  return failsNeed(needs, has, from, ctx.horizon);
};
