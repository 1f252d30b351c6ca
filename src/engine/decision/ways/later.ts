import type { Context } from '../context.ts';
import type { ClosedWay } from '../decision.ts';
import { mayWait, type Treatments } from '../neededWork.ts';
import { presentClosed, replacementClosed } from '../openWays.ts';
import { presentUnusedToday } from '../paidAhead.ts';
import { cashIn, named, type Plan } from '../plan.ts';
import { holdPresent, letGoToday, type Offer, offersToday, presentLoan, priceOf } from '../presentVehicle.ts';
import { mayEnd } from './ending.ts';
import { keepPlan, treatmentsOf } from './keep.ts';
import { months, replacementIds } from './names.ts';
import { replacedAt, type Sold } from './replaced.ts';
import { soldWalking } from './walk.ts';
import type { Way, Ways } from './way.ts';

/** How a plan that replaces at the end of month k meets the needed work: what can wait beyond k waits. */
export const laterTreatments = (month: number, ctx: Context): Treatments =>
  treatmentsOf(ctx, (i) => {
    const job = ctx.inputs.workNeeded[i];
    return job && mayWait(job, Math.max(1, month), ctx.facts) ? 'wait' : 'done';
  });

/** Selling it on the day of the decision, before anything is bought. */
const soldToday = (offer: Offer, ctx: Context): Sold => {
  const { contract, awaited } = letGoToday(offer, ctx);
  return { proceeds: priceOf(offer, ctx), contracts: [contract, presentUnusedToday(ctx)], awaited };
};

/**
 * Keeping to the end of month k, then replacing. k = 0 sells as it stands and skips the needed work; from k = 1 it is
 * done, save what can wait beyond k; k = H never replaces.
 */
export const laterPlan = (index: number, month: number, ctx: Context): Plan => {
  const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${month}`;
  const name = ctx.facts.replacementNames[index] as string;
  const label = `Keep it for ${months(month)}, then get the ${name}`;
  const treatments = laterTreatments(month, ctx);
  const work = treatments.includes('wait') ? 'left' : 'mended';
  if (month >= ctx.horizon) {
    const kept = mayEnd(keepPlan(id, label, work, treatments, ctx), ctx.horizon, treatments, ctx);
    return named(kept, { id, label, work, letGo: kept.letGo, side: 'later' });
  }
  const offer = month === 0 ? offersToday(ctx).find((o) => !o.mended && o.privately) : undefined;
  const held = offer ? [] : holdPresent(treatments, month, presentLoan(ctx), ctx);
  const sold = offer ? soldToday(offer, ctx) : soldWalking(month, 'running', treatments, ctx);
  const plan = named(replacedAt(index, month, treatments, held, sold, ctx), {
    id,
    label,
    work: offer ? 'skipped' : work,
    letGo: offer ? 'as it stands' : 'private',
  });
  return mayEnd(plan, month, treatments, ctx);
};

/** Months the present vehicle may be driven with all of its needed work undone; 0 if it may not. */
const drivableUndone = (ctx: Context): number => {
  const { workNeeded } = ctx.inputs;
  if (!workNeeded.every((job) => mayWait(job, 1, ctx.facts))) return 0;
  return Math.min(ctx.horizon - 1, ...workNeeded.map((job) => job.canWait ?? Number.POSITIVE_INFINITY));
};

/** The longest that anybody saves for a change-over, in months. */
const LONGEST_SAVING = 120;

/** Months of saving until the cash of the day is there; null when it already is, or spare money never gets there. */
const monthsOfSaving = (index: number, ctx: Context): number | null => {
  const { savings, spareEachMonth } = ctx.inputs.household;
  if (savings === null || spareEachMonth <= 0) return null;
  const missing = (month: number): number => {
    const { changeOver } = laterPlan(index, month, ctx);
    return changeOver ? cashIn(changeOver.contracts, month, ctx).cash - savings - spareEachMonth * month : 0;
  };
  if (missing(0) <= 0) return null;
  const last = Math.min(LONGEST_SAVING, ctx.horizon - 1);
  for (let month = 1; month <= last; month++) if (missing(month) <= 1e-9) return month;
  return null;
};

/** The ways that drive on with the work undone while saving for the replacement. */
export const drivingOnWays = (ctx: Context): Ways => {
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  const most = drivableUndone(ctx);
  ctx.inputs.replacement.forEach((_, index) => {
    const saving = monthsOfSaving(index, ctx);
    if (saving === null) return;
    const name = ctx.facts.replacementNames[index] as string;
    const label = `Drive on for ${months(saving)} while saving, then get the ${name}`;
    const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${saving}`;
    const why =
      ctx.inputs.workNeeded.length > 0 && saving > most
        ? most > 0
          ? `the work can wait only ${months(most)}`
          : 'with the work undone it is not to be driven'
        : (presentClosed(saving, ctx) ?? replacementClosed(index, saving, ctx));
    if (why) closed.push({ id, label, why });
    else
      open.push({
        id,
        side: 'later',
        label,
        treatments: null,
        build: (at) => {
          const plan = laterPlan(index, saving, at);
          return named(plan, { id, label, work: plan.work, letGo: plan.letGo });
        },
      });
  });
  return { open, closed };
};
