import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { type Ways, wayOf } from '../vehicle/option.ts';
import { capital, letGoWords } from '../vehicle/optionNames.ts';
import type { Plan } from '../vehicle/plan.ts';
import { bringsToday, type Offer, offersToday } from '../vehicle/presentVehicle.ts';
import { doneWithout } from '../vehicle/replaceNowPlan.ts';

const without = (_ctx: Context, id: string, label: string, offer: Offer): Plan => ({
  ...doneWithout(goesToday(offer)),
  id,
  label,
  work: 'skipped',
  letGo: offer.letGo,
});

/** Letting it go and getting about without one. */
export const withoutWays = (ctx: Context): Ways => {
  if (!ctx.inputs.doingWithout) return { open: [], closed: [] };
  // Nothing is bought, so nothing is traded in. The best of the rest is what leaves most once it is sold.
  const offers = offersToday(ctx).filter((o) => !o.mended && o.letGo !== 'trade-in');
  const offer = offers.reduce((a, b) => (bringsToday(b, ctx) > bringsToday(a, ctx) ? b : a));
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const about = { id, side: 'without', label, treatments: null } as const;
  return { open: [wayOf(about, without, id, label, offer)], closed: [] };
};
