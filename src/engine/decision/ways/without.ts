import type { Rounding } from '../../cashflow/contracts/loan.ts';
import { monthly } from '../../cashflow/contracts/recurring.ts';
import type { Context } from '../context.ts';
import type { Plan } from '../plan.ts';
import { offersToday } from '../presentVehicle.ts';
import { goesToday } from './goesToday.ts';
import { capital, letGoWords } from './names.ts';
import type { Ways } from './way.ts';

/** Letting it go and getting about without one. */
export const withoutWays = (rounding: Rounding, ctx: Context): Ways => {
  const without = ctx.inputs.doingWithout;
  if (!without) return { open: [], closed: [] };
  const best = offersToday(ctx).filter((o) => !o.mended);
  const offer = best.reduce((a, b) => (b.price > a.price ? b : a));
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const build = (): Plan => {
    const line = {
      category: 'getting about without it',
      what: 'rides, a rental, a borrowed one',
      path: 'doing_without',
      reason: 'so many days a month at so much a day',
    } as const;
    return {
      id,
      side: 'without',
      label,
      replacement: null,
      work: 'skipped',
      letGo: offer.letGo,
      replaceMonth: null,
      contracts: [
        ...goesToday(offer, rounding, ctx).contracts,
        monthly(line, without.aDay * without.daysAMonth, ctx.levels.general, 1, ctx.horizon),
      ],
      valueAt: () => 0,
      owedAt: () => 0,
      vehicleAtEnd: '',
      purchase: null,
    };
  };
  return { open: [{ id, side: 'without', label, build }], closed: [] };
};
