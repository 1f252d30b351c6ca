import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { type Ways, wayOf } from '../vehicle/option.ts';
import { capital, letGoWords } from '../vehicle/optionNames.ts';
import type { Plan } from '../vehicle/plan.ts';
import { bestSaleToday, type Offer } from '../vehicle/presentVehicle.ts';
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
  const offer = bestSaleToday(ctx);
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const about = { id, side: 'without', label, treatments: null } as const;
  return { open: [wayOf(about, without, id, label, offer)], closed: [] };
};
