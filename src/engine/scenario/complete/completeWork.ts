import { dangersOf, needsQualified, qualifiedTold, unsafeToLeave } from '../danger/dangers.ts';
import type { DoneBy, Job, MayBeDriven, WorkCost } from '../inputs/inputs.ts';
import type { JobFacts, Quantity } from '../inputs/scenario.ts';
import * as WORK from '../inputs/workInputs.ts';
import type { SparseJob } from '../schema/scenarioSchema.ts';
import { type Fallback, following, type Pen, type Said } from './quantityBook.ts';

type SparseCost = Said<typeof WORK.WORK_COST>;

/** Own hands when hours are given, else a shop. */
export const doneBy = (file: SparseCost & { readonly by?: DoneBy | undefined }): DoneBy =>
  file.by ?? (file.hours ? 'own' : 'shop');

/** Where what a job costs is more than one bill: whether it is another each time, and the price a table has for it. */
interface CostDetails {
  readonly varies?: Quantity['varies'];
  readonly shopPrice?: Fallback | undefined;
}

/** Parts, hours and a shop's price; what is missing is nil (a shop's price: null), or as `like` has it. */
export const completeCost = (
  file: SparseCost | undefined,
  pen: Pen,
  like?: Omit<WorkCost, 'by'>,
  prefix = '',
  { varies = 'once', shopPrice }: CostDetails = {},
): Omit<WorkCost, 'by'> => {
  const same = (value: number | null | undefined) =>
    typeof value === 'number' ? following(value, 'the same again') : undefined;
  const or: Readonly<Record<string, Fallback | undefined>> = {
    parts: same(like?.parts),
    hours: same(like?.hours),
    shop_price: shopPrice ?? same(like?.shopPrice),
  };
  return pen.all(WORK.WORK_COST, file, ({ key, words }) => ({
    words: `${prefix}${words}`,
    varies,
    or: or[key],
  }));
};

const NOTHING = { parts: 0, hours: 0, shopPrice: null } as const;

const chanceOf = (
  group: typeof WORK.NOT_CURED | typeof WORK.MORE_FOUND,
  file: (SparseCost & Said<typeof group>) | undefined,
  pen: Pen,
  like?: Omit<WorkCost, 'by'>,
): Job['notCured'] => ({
  ...pen.all(group, file),
  ...(file ? completeCost(file, pen, like, like ? 'second attempt: ' : 'more found: ') : (like ?? NOTHING)),
});

/**
 * How far it may be driven with the job undone: as told, else as safety and waiting say. What cannot wait lets it go to
 * the shop and no farther; not even there where a danger shows (in the list of them, or without one in the job's words) and
 * nobody says it is safe, or the vehicle is not to be driven anyway.
 */
const mayBeDriven = (file: SparseJob, canWait: number | null, stands: boolean): MayBeDriven => {
  if (file.may_be_driven) return file.may_be_driven;
  if (file.immobilises || file.safety) return 'no';
  if (canWait !== 0) return 'yes';
  const words = file.dangers === undefined ? file.job : '';
  const danger = file.safety === undefined && unsafeToLeave(words, file.dangers) !== null;
  return danger || (stands && file.immobilises === undefined) ? 'no' : 'to_the_shop';
};

/**
 * One job, complete.
 *
 * @param components the names that `renews` may point at
 * @param stands nobody may drive the vehicle as it is, whatever the job
 */
export const completeJob = (
  file: SparseJob,
  position: number,
  root: Pen,
  components: readonly string[],
  stands: boolean,
): { readonly job: Job; readonly facts: JobFacts } => {
  const pen = root.at(`workNeeded.${position}`, `work_needed.${position}`, file.job);
  const dangers = dangersOf(file.job, file.dangers);
  const qualifiedOnly = needsQualified(dangers, qualifiedTold(file.qualified_only, file.own_hands));
  const cost = completeCost(file, pen);
  const wait = file.can_wait;
  const canWait =
    wait === 'no' ? 0 : wait === 'yes' ? null : pen.take('canWait', 'can_wait', WORK.CAN_WAIT, wait);
  const safety = file.safety ?? false;
  const { patch, left } = file;
  const patchPen = pen.at('patch', 'patch', `patch of ${file.job}`);
  const again = pen.at('notCured', 'not_cured');
  const more = pen.at('moreFound', 'more_found');
  const job: Job = {
    name: file.job,
    by: qualifiedOnly ? 'shop' : doneBy(file),
    ...cost,
    canWait,
    safety,
    mayBeDriven: mayBeDriven(file, canWait, stands),
    notCured: chanceOf(WORK.NOT_CURED, file.not_cured, again, cost),
    moreFound: chanceOf(WORK.MORE_FOUND, file.more_found, more),
    patch: patch
      ? {
          by: qualifiedOnly ? 'shop' : doneBy(patch),
          ...completeCost(patch, patchPen),
          ...patchPen.all(WORK.PATCH, patch),
        }
      : null,
    left: pen.at('left', 'left').all(WORK.LEFT, left),
    ...pen.all(WORK.JOB, file),
    renews: (file.renews ?? []).map((name) => components.indexOf(name)).filter((at) => at >= 0),
  };
  const facts: JobFacts = {
    name: file.job,
    dangers,
    qualifiedOnly,
    saidSafe: file.safety === undefined ? null : !file.safety,
    why: file.why ?? '',
    quoteEnds: file.quote_ends ?? '',
    someoneElsePays: file.someone_else_pays ?? '',
    firstTime: file.first_time ?? false,
    alreadySpent: file.already_spent?.value ?? 0,
  };
  return { job, facts };
};
