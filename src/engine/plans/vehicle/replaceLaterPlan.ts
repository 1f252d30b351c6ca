import type { Contract } from '../../cashflow/posting.ts';
import { replacedAt, type Sold } from './changeOver.ts';
import type { Context } from './context.ts';
import { holdOurs, mayEnd } from './givenUp.ts';
import { keepPlan, treatmentsOf } from './keepPlan.ts';
import { mayWait, type Treatments } from './neededWork.ts';
import { months, replacementIds } from './optionNames.ts';
import { presentUnusedToday } from './paidAhead.ts';
import type { Plan } from './plan.ts';
import { letGoToday, type Offer, offersToday, priceOf } from './presentVehicle.ts';
import { type Recipe, recipe } from './recipe.ts';
import { soldWalking } from './retirement.ts';
import type { Awaited, Sale } from './selling.ts';

/** How a plan that replaces at the end of month k meets the needed work: what can wait beyond k waits. */
export const laterTreatments = (month: number, ctx: Context): Treatments =>
  treatmentsOf(ctx, (i) => {
    const job = ctx.inputs.workNeeded[i];
    return job && mayWait(job, Math.max(1, month), ctx.facts) ? 'wait' : 'done';
  });

const saleToday = (ctx: Context, offer: Offer): Sale => letGoToday(offer, ctx);
const letGo = (ctx: Context, sale: Recipe<Sale>): Contract[] => [
  sale.from(ctx).contract,
  presentUnusedToday(ctx),
];
const proceeds = (ctx: Context, offer: Offer): number => priceOf(offer, ctx);
const awaitedToday = (ctx: Context, sale: Recipe<Sale>): Awaited | null => sale.from(ctx).awaited;

/** Selling it on the day of the decision, before anything is bought. */
const soldToday = (offer: Offer): Sold => {
  const sale = recipe(saleToday, offer);
  return {
    proceeds: recipe(proceeds, offer),
    pieces: [recipe(letGo, sale)],
    awaited: recipe(awaitedToday, sale),
  };
};

/**
 * Keeping to the end of month k, then replacing. k = 0 sells as it stands and skips the needed work; from k = 1 it is
 * done, save what can wait beyond k; k = H never replaces.
 *
 * @param ctx for what there is, not for how much
 */
export const laterPlan = (index: number, month: number, ctx: Context): Plan => {
  const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${month}`;
  const name = ctx.facts.replacementNames[index] as string;
  const label = `Keep it for ${months(month)}, then get the ${name}`;
  const treatments = laterTreatments(month, ctx);
  const work = treatments.includes('wait') ? 'left' : 'mended';
  if (month >= ctx.horizon) {
    const kept = mayEnd(keepPlan(id, label, work, treatments, ctx), ctx.horizon, treatments, ctx);
    return { ...kept, id, label, work, side: 'later' };
  }
  const offer = month === 0 ? offersToday(ctx).find((o) => !o.mended && o.privately) : undefined;
  const held = offer ? [] : holdOurs(treatments, month, ctx);
  const sold = offer ? soldToday(offer) : soldWalking(month, 'running', treatments);
  const plan: Plan = {
    ...replacedAt(index, month, treatments, held, sold, ctx),
    id,
    label,
    work: offer ? 'skipped' : work,
    letGo: offer ? 'as it stands' : 'private',
  };
  return mayEnd(plan, month, treatments, ctx);
};
