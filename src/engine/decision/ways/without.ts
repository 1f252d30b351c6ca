import { monthly } from '../../cashflow/contracts/recurring.ts';
import type { DoingWithout } from '../../scenario/inputs.ts';
import type { Context } from '../context.ts';
import { cashIn, type Plan } from '../plan.ts';
import { letGoToday, type Offer, offersToday } from '../presentVehicle.ts';
import { goesToday } from './goesToday.ts';
import { capital, letGoWords } from './names.ts';
import type { Ways } from './way.ts';

const perMonth = (without: DoingWithout | null): number => (without ? without.aDay * without.daysAMonth : 0);

/** Letting it go and getting about without one. */
export const withoutWays = (ctx: Context): Ways => {
  if (!ctx.inputs.doingWithout) return { open: [], closed: [] };
  // Nothing is bought, so nothing is traded in. The best of the rest is what leaves most once it is sold.
  const cost = (offer: Offer): number => cashIn([letGoToday(offer, ctx)], 0, ctx).counted;
  const offers = offersToday(ctx).filter((o) => !o.mended && o.letGo !== 'trade-in');
  const offer = offers.reduce((a, b) => (cost(b) < cost(a) ? b : a));
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const build = (at: Context): Plan => {
    const line = {
      category: 'getting about without it',
      what: 'rides, a rental, a borrowed one',
      path: 'doing_without',
      reason: 'so many days a month at so much a day',
    } as const;
    const getAbout = ({ inputs, levels, horizon }: Context) =>
      monthly(line, perMonth(inputs.doingWithout), levels.general, 1, horizon);
    return {
      id,
      side: 'without',
      label,
      replacement: null,
      work: 'skipped',
      letGo: offer.letGo,
      replaceMonth: null,
      contracts: [...goesToday(offer, at).contracts, getAbout(at)],
      changeOver: null,
      valueAt: () => 0,
      owedAt: () => 0,
      vehicleAtEnd: '',
      purchase: null,
    };
  };
  return { open: [{ id, side: 'without', label, treatments: null, build }], closed: [] };
};
