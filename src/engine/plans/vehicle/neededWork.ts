import { monthly, oneOff } from '../../cashflow/contracts/recurring.ts';
import { shopPriceOf, type WorkOnce, workOnce } from '../../cashflow/contracts/work.ts';
import { levelAt } from '../../cashflow/levels.ts';
import type { Contract, Line } from '../../cashflow/posting.ts';
import { remember } from '../../quantity/remember.ts';
import type { Job } from '../../scenario/inputs/inputs.ts';
import type { Facts } from '../../scenario/inputs/scenario.ts';
import { type Context, timesOf } from './context.ts';

/** How one job is met: done on the day, patched until the patch gives out, or left for as long as it can wait. */
export type Treatment = 'done' | 'patch' | 'wait';

/** What is done about each job, by its position in the scenario. */
export type Treatments = readonly Treatment[];

/** The month in which the proper work of a job is done; Infinity if never. */
const properlyDoneIn = (job: Job, treatment: Treatment): number => {
  if (treatment === 'done') return 0;
  if (treatment === 'patch') return job.patch?.months ?? 0;
  return job.canWait ?? Number.POSITIVE_INFINITY;
};

/**
 * The job may wait at least `months` months: it is no matter of safety, undone the vehicle may be driven farther than to
 * the shop, and nobody has said that it is not to be driven.
 */
export const mayWait = (job: Job, months: number, facts: Facts): boolean =>
  !job.safety &&
  job.mayBeDriven === 'yes' &&
  facts.mayBeDriven !== false &&
  !facts.recallStop &&
  (job.canWait === null || (job.canWait > 0 && job.canWait >= months));

/** The proper work is done by the end of `month`; what would fall on the day the vehicle goes is not done for it. */
export const isDoneBy = (job: Job, treatment: Treatment, month: number, until: number): boolean => {
  const when = properlyDoneIn(job, treatment);
  return when === 0 || (when <= month && when < until);
};

const asOnce = (
  cost: Pick<Job, 'parts' | 'hours' | 'shopPrice'>,
  by: Job['by'],
  daysWithout: number,
): WorkOnce => ({
  by,
  parts: cost.parts,
  hours: cost.hours,
  usualHours: cost.hours,
  shopPrice: cost.shopPrice,
  daysWithout,
  either: 0,
});

/** Where a job stands in the scenario. Kept, for a chance is looked up by these words in every future. */
const pathsOf = remember(
  (i: number) => {
    const job = `work_needed[${i}]`;
    return {
      job,
      patch: `${job}.patch`,
      left: `${job}.left`,
      again: `${job}.not_cured`,
      more: `${job}.more_found`,
    };
  },
  ([a], [b]) => a === b,
);

/**
 * The work a vehicle needs now, met as `treatments` says, for a vehicle held until the end of month `until`; each of its
 * chances as the future has it.
 */
export const neededWork = (ctx: Context, treatments: Treatments, until: number): Contract[] => {
  const contracts: Contract[] = [];
  ctx.inputs.workNeeded.forEach((job, i) => {
    const treatment = treatments[i] ?? 'done';
    const paths = pathsOf(i);
    const line = (what: string, reason: string, at = paths.job): Line => ({
      category: 'work needed now',
      what,
      path: at,
      reason,
    });
    const month = properlyDoneIn(job, treatment);
    if (treatment === 'patch' && job.patch) {
      const patch = asOnce(job.patch, job.patch.by, job.daysWithout);
      contracts.push(
        workOnce(line(`${job.name}, patched`, 'holds for a while', paths.patch), 0, patch, ctx.work),
      );
    }
    if (treatment === 'wait' && job.left.aMonth !== 0) {
      const leaving = line(`${job.name}, left undone`, 'every month until it is done', paths.left);
      contracts.push(monthly(leaving, job.left.aMonth, ctx.levels.general, 1, Math.min(until, month)));
    }
    // What would fall on the last day or later is not done for a vehicle that goes that day.
    if (month > 0 && month >= until) return;
    const prices = month === 0 ? ctx.work : ctx.workPutOff;
    const when = month === 0 ? 'done on the day' : 'done when it can wait no longer';
    contracts.push(workOnce(line(job.name, when), month, asOnce(job, job.by, job.daysWithout), prices));
    const again = asOnce(job.notCured, job.by, job.daysWithout);
    const more = asOnce(job.moreFound, job.by, 0);
    contracts.push(
      workOnce(
        line(`${job.name}, second attempt`, 'chance that the first does not cure it', paths.again),
        month,
        again,
        prices,
        timesOf(job.notCured.chance, paths.again, ctx.future),
      ),
      workOnce(
        line(`${job.name}, more found`, 'chance of finding more once opened', paths.more),
        month,
        more,
        prices,
        timesOf(job.moreFound.chance, paths.more, ctx.future),
      ),
    );
  });
  const { storageADay } = ctx.inputs.vehicle;
  if (storageADay === 0) return contracts;
  const stands = Math.max(
    0,
    ...ctx.inputs.workNeeded.map((job, i) =>
      job.mayBeDriven === 'no' && treatments[i] !== 'wait' ? job.daysWithout : 0,
    ),
  );
  const storage: Line = {
    category: 'work needed now',
    what: 'storage while it stands',
    path: 'vehicle.storage_a_day',
    reason: 'from the first day until it is mended',
  };
  contracts.push(oneOff(storage, 0, stands * storageADay));
  return contracts;
};

/** A job's price at a shop, at the day of the decision. */
export const jobShopPrice = (job: Job, ctx: Context): number => shopPriceOf(job, ctx.work.shopHour);

/**
 * What a buyer adds for a job once it is done: his part of a shop's price of that month, which falls from then on as the
 * vehicle's own value does.
 *
 * @param clean what the vehicle brings without it, `cleanWhen` by month
 */
export const buyersPart = (
  job: Job,
  treatment: Treatment,
  clean: number,
  cleanWhen: (month: number) => number,
  ctx: Context,
): number => {
  if (job.buyerPays === 0) return 0;
  const when = properlyDoneIn(job, treatment);
  const then = cleanWhen(when);
  const left = then > 0 ? clean / then : 0;
  return job.buyerPays * jobShopPrice(job, ctx) * levelAt(ctx.workPutOff.parts, when) * left;
};

/** The month in which work restarts a component's clock, by the component's position. */
export const renewedBy = (
  treatments: Treatments,
  until: number,
  ctx: Context,
): ReadonlyMap<number, number> => {
  const renewed = new Map<number, number>();
  ctx.inputs.workNeeded.forEach((job, i) => {
    const when = properlyDoneIn(job, treatments[i] ?? 'done');
    if (when < until) for (const part of job.renews) renewed.set(part, when);
  });
  return renewed;
};
