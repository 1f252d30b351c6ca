import { monthly } from '../../cashflow/contracts/recurring.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { DoingWithout } from '../../scenario/inputs.ts';
import type { Context } from '../context.ts';
import type { Plan } from '../plan.ts';
import { bringsToday, offersToday } from '../presentVehicle.ts';
import { goesToday } from './goesToday.ts';
import { capital, letGoWords } from './names.ts';
import type { Ways } from './way.ts';

/** Getting about without a vehicle from a month on, to the horizon. */
export const gettingAbout = (without: DoingWithout, from: number, { levels, horizon }: Context): Contract =>
  monthly(
    {
      category: 'getting about without it',
      what: 'rides, a rental, a borrowed one',
      path: 'doing_without',
      reason: 'so many days a month at so much a day',
    },
    without.aDay * without.daysAMonth,
    levels.general,
    from,
    horizon,
  );

/** Letting it go and getting about without one. */
export const withoutWays = (ctx: Context): Ways => {
  if (!ctx.inputs.doingWithout) return { open: [], closed: [] };
  // Nothing is bought, so nothing is traded in. The best of the rest is what leaves most once it is sold.
  const offers = offersToday(ctx).filter((o) => !o.mended && o.letGo !== 'trade-in');
  const offer = offers.reduce((a, b) => (bringsToday(b, ctx) > bringsToday(a, ctx) ? b : a));
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const build = (at: Context): Plan => {
    const { doingWithout } = at.inputs;
    const about = doingWithout ? [gettingAbout(doingWithout, 1, at)] : [];
    const { contracts, awaited, toCome, owedAt } = goesToday(offer, at);
    return {
      id,
      side: 'without',
      label,
      replacement: null,
      work: 'skipped',
      letGo: offer.letGo,
      replaceMonth: null,
      contracts: [...contracts, ...about],
      changeOver: null,
      awaited,
      valueAt: () => 0,
      toCome,
      owedAt,
      vehicleAtEnd: '',
      purchase: null,
    };
  };
  return { open: [{ id, side: 'without', label, treatments: null, build }], closed: [] };
};
