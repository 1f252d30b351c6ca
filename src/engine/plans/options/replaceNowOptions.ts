import { bought } from '../vehicle/boughtVehicle.ts';
import type { Context } from '../vehicle/context.ts';
import { goesToday } from '../vehicle/disposalToday.ts';
import { replacementClosed } from '../vehicle/openOptions.ts';
import type { Way, Ways } from '../vehicle/option.ts';
import type { ClosedWay } from '../vehicle/optionIdentity.ts';
import { capital, letGoWords, replacementIds, slug } from '../vehicle/optionNames.ts';
import type { Financing } from '../vehicle/plan.ts';
import { offersToday } from '../vehicle/presentVehicle.ts';

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
        open.push({
          id,
          side: 'replace',
          label,
          treatments: null,
          build: (at) => {
            const old = goesToday(offer, at);
            const next = bought(index, 0, old.brought, financing, at);
            return {
              id,
              side: 'replace',
              label,
              replacement: index,
              work: offer.mended ? 'mended' : 'skipped',
              letGo: offer.letGo,
              replaceMonth: 0,
              contracts: [...old.contracts, ...next.contracts],
              changeOver: null,
              awaited: old.awaited,
              valueAt: next.valueAt,
              toCome: (at, reading) => old.toCome(at, reading) + next.toCome(at),
              owedAt: (at) => old.owedAt(at) + next.owedAt(at),
              vehicleAtEnd: name,
              purchase: next.purchase,
            };
          },
        });
      }
  });
  return { open, closed };
};
