import type { Context } from '../context.ts';
import type { Plan } from '../plan.ts';
import { bringsToday, offersToday } from '../presentVehicle.ts';
import { gettingAbout } from './gettingAbout.ts';
import { goesToday } from './goesToday.ts';
import { capital, letGoWords } from './names.ts';
import type { Ways } from './way.ts';

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
