import type { Rounding } from '../../cashflow/contracts/loan.ts';
import type { Context } from '../context.ts';
import { keepWays } from './keep.ts';
import { drivingOnWays } from './later.ts';
import { replaceNowWays } from './replaceNow.ts';
import type { Ways } from './way.ts';
import { withoutWays } from './without.ts';

/** Every way of the scenario, in a settled order that decides no figure. */
export const waysOf = (rounding: Rounding, ctx: Context): Ways => {
  const parts = [
    keepWays(rounding, ctx),
    replaceNowWays(rounding, ctx),
    drivingOnWays(rounding, ctx),
    withoutWays(rounding, ctx),
  ];
  return { open: parts.flatMap((p) => p.open), closed: parts.flatMap((p) => p.closed) };
};
