import type { Need } from '../scenario/scenario.ts';
import type { Context } from './context.ts';

/** Why a vehicle fails a need that holds within the horizon; null if it meets them all or nobody said. */
const failsNeed = (
  needs: readonly Need[],
  offers: Readonly<Record<string, number | boolean>>,
  from: number,
  until: number,
): string | null => {
  for (const need of needs) {
    if (need.fromMonth >= until || from >= until) continue;
    const has = offers[need.what];
    if (has === undefined) continue;
    const enough = need.atLeast === true ? has !== false && has !== 0 : Number(has) >= need.atLeast;
    const since = need.fromMonth > 0 ? ` from month ${need.fromMonth}` : '';
    if (!enough) {
      const wanted = need.atLeast === true ? need.what : `${need.what} ${need.atLeast}`;
      return `it is needed for ${wanted}${since}, and it offers ${has === false ? 'none' : String(has)}`;
    }
  }
  return null;
};

/** Why the present vehicle cannot be held from now to the end of month `until`; null if it can. */
export const presentClosed = (until: number, ctx: Context): string | null => {
  const { facts } = ctx;
  const structureQuoted = facts.jobs.some((job) => job.dangers.includes('structure'));
  if (facts.structuralRust === 'found' && !structureQuoted)
    return 'its frame is rusted through and no qualified repair has been quoted';
  return failsNeed(facts.needs, facts.offers.vehicle, 0, until);
};

/** Why a replacement cannot serve from month `from` to the horizon; null if it can. */
export const replacementClosed = (index: number, from: number, ctx: Context): string | null =>
  failsNeed(ctx.facts.needs, ctx.facts.offers.replacement[index] ?? {}, from, ctx.horizon);
