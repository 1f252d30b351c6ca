import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { replacementClosed } from '../vehicle/openOptions.ts';
import { type Way, type Ways, wayOf } from '../vehicle/option.ts';
import type { ClosedWay } from '../vehicle/optionIdentity.ts';
import { capital, letGoWords, replacementIds, slug } from '../vehicle/optionNames.ts';
import type { Financing, Plan } from '../vehicle/plan.ts';
import { type Offer, offersToday } from '../vehicle/presentVehicle.ts';
import { replacedToday } from '../vehicle/replaceNowPlan.ts';

const replaceNow = (
  ctx: Context,
  id: string,
  label: string,
  index: number,
  offer: Offer,
  financing: Financing,
): Plan => ({
  ...replacedToday(goesToday(offer), index, financing, ctx),
  id,
  label,
  work: offer.mended ? 'mended' : 'skipped',
  letGo: offer.letGo,
});

/** The ways that replace it today: each replacement, with each way of letting the old one go. */
export const replaceNowWays = (ctx: Context): Ways => {
  const { replacement } = ctx.inputs;
  const ids = replacementIds(ctx.facts.replacementNames);
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  replacement.forEach((deal, index) => {
    const name = ctx.facts.replacementNames[index] as string;
    const why = replacementClosed(index, 0, ctx);
    if (why) {
      closed.push({ id: `replace/${ids[index]}`, label: `Get the ${name}`, why });
      return;
    }
    const financings: Financing[] =
      deal.payment.kind === 'loan' && deal.lowRateInstead !== null
        ? ['as offered', 'low rate']
        : ['as offered'];
    for (const offer of offersToday(ctx))
      for (const financing of financings) {
        const way = `${offer.mended ? 'mended' : 'as-it-stands'}/${slug(offer.letGo)}`;
        const id = `replace/${ids[index]}/${way}${financing === 'low rate' ? '/low-rate' : ''}`;
        const low = financing === 'low rate' ? ' at the low rate' : '';
        const label = `${capital(letGoWords(offer))}, and get the ${name}${low}`;
        open.push(
          wayOf(
            { id, side: 'replace', label, treatments: null },
            replaceNow,
            id,
            label,
            index,
            offer,
            financing,
          ),
        );
      }
  });
  return { open, closed };
};
