import { keepWays } from '../plans/options/keepOptions.ts';
import { likeOursWays } from '../plans/options/likeOursOption.ts';
import { replaceNowWays } from '../plans/options/replaceNowOptions.ts';
import { drivingOnWays } from '../plans/options/saveThenReplace.ts';
import { withoutWays } from '../plans/options/withoutVehicle.ts';
import type { Context } from '../plans/vehicle/context.ts';
import type { Way, Ways } from '../plans/vehicle/option.ts';
import { claimWays, comparedCourses } from './collisionOptions.ts';

/** The ways of the two sides that are compared, without those that have results of their own. */
export const comparedWays = (ctx: Context): readonly Way[] =>
  ctx.inputs.claim ? comparedCourses(ctx) : [keepWays(ctx), replaceNowWays(ctx)].flatMap(({ open }) => open);

/** Every way of the scenario, in a settled order that decides no figure. */
export const waysOf = (ctx: Context): Ways => {
  if (ctx.inputs.claim) return claimWays(ctx);
  const parts = [keepWays(ctx), replaceNowWays(ctx), likeOursWays(ctx), drivingOnWays(ctx), withoutWays(ctx)];
  return { open: parts.flatMap((p) => p.open), closed: parts.flatMap((p) => p.closed) };
};
