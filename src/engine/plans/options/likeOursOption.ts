import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { nameOf } from '../vehicle/held.ts';
import { LIKE_OURS, LIKE_PATH } from '../vehicle/likeOurs.ts';
import { replacementClosed } from '../vehicle/openOptions.ts';
import { type Ways, wayOf } from '../vehicle/option.ts';
import { capital, letGoWords } from '../vehicle/optionNames.ts';
import type { Plan } from '../vehicle/plan.ts';
import { bestSaleToday, type Offer } from '../vehicle/presentVehicle.ts';
import { replacedToday } from '../vehicle/replaceNowPlan.ts';

const anotherLikeOurs = (ctx: Context, id: string, label: string, offer: Offer): Plan => ({
  ...replacedToday(goesToday(offer), LIKE_OURS, 'as offered', ctx),
  side: 'like',
  id,
  label,
  work: 'skipped',
  letGo: offer.letGo,
});

/** Letting it go as it stands and buying another running one of its kind, age and distance. */
export const likeOursWays = (ctx: Context): Ways => {
  if (ctx.inputs.anotherLikeOurs === null) return { open: [], closed: [] };
  const offer = bestSaleToday(ctx);
  const id = LIKE_PATH;
  const label = `${capital(letGoWords(offer))}, and get ${nameOf(LIKE_OURS, ctx)}`;
  const why = replacementClosed(LIKE_OURS, 0, ctx);
  if (why) return { open: [], closed: [{ id, label, why }] };
  const about = { id, side: 'like', label, treatments: null } as const;
  return { open: [wayOf(about, anotherLikeOurs, id, label, offer)], closed: [] };
};
