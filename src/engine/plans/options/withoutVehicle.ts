import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { gettingAbout } from '../vehicle/gettingAbout.ts';
import type { Ways } from '../vehicle/option.ts';
import { capital, letGoWords } from '../vehicle/optionNames.ts';
import type { Plan } from '../vehicle/plan.ts';
import { bringsToday, offersToday } from '../vehicle/presentVehicle.ts';

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
