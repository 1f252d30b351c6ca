import { dangersOf, needsQualified, qualifiedTold, unsafeToLeave } from '../danger/dangers.ts';
import { DEFAULTS, type Default } from '../inputs/defaults.ts';
import type { DoneBy, Job, MayBeDriven, WorkCost } from '../inputs/inputs.ts';
import type { JobFacts, Quantity } from '../inputs/scenario.ts';
import { type Spec, WORK } from '../inputs/specs.ts';
import type { Stated } from '../reading/stated.ts';
import type { SparseJob } from '../schema/scenarioSchema.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.work;

interface SparseCost {
  readonly parts?: Stated | undefined;
  readonly hours?: Stated | undefined;
  readonly shop_price?: Stated | undefined;
}

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
  const words = (spec: Spec) => ({ words: `${prefix}${spec.words}`, varies });
  const or = (value: number | undefined, nil: Default): Default | Fallback =>
    value === undefined ? nil : following(value, 'the same again');
  const take = (key: string, path: keyof SparseCost, spec: Spec, same: number | undefined): number =>
    pen.take(key, path, spec, file?.[path], or(same, spec === WORK.hours ? D.hours : D.parts), words(spec));
  const priced = file?.shop_price !== undefined || (like !== undefined && like.shopPrice !== null);
  return {
    parts: take('parts', 'parts', WORK.parts, like?.parts),
    hours: take('hours', 'hours', WORK.hours, like?.hours),
    shopPrice: shopPrice
      ? pen.take(
          'shopPrice',
          'shop_price',
          WORK.shopPrice,
          file?.shop_price,
          shopPrice,
          words(WORK.shopPrice),
        )
      : priced
        ? take('shopPrice', 'shop_price', WORK.shopPrice, like?.shopPrice ?? undefined)
        : null,
  };
};

const NOTHING = { parts: 0, hours: 0, shopPrice: null } as const;

const chanceOf = (
  file: (SparseCost & { readonly chance: Stated }) | undefined,
  pen: Pen,
  none: Default,
  words: string,
  like?: Omit<WorkCost, 'by'>,
): Job['notCured'] => ({
  chance: pen.take('chance', 'chance', WORK.chance, file?.chance, none, { words }),
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
    wait === 'no' ? 0 : wait === 'yes' ? null : pen.take('canWait', 'can_wait', WORK.canWait, wait);
  const safety = file.safety ?? false;
  const { patch, left } = file;
  const patchPen = pen.at('patch', 'patch', `patch of ${file.job}`);
  const leftPen = pen.at('left', 'left');
  const again = pen.at('notCured', 'not_cured');
  const more = pen.at('moreFound', 'more_found');
  const job: Job = {
    name: file.job,
    by: qualifiedOnly ? 'shop' : doneBy(file),
    ...cost,
    canWait,
    safety,
    mayBeDriven: mayBeDriven(file, canWait, stands),
    notCured: chanceOf(file.not_cured, again, D.chanceNotCured, 'chance that it does not cure it', cost),
    moreFound: chanceOf(file.more_found, more, D.chanceMoreFound, 'chance of finding more'),
    patch: patch
      ? {
          by: qualifiedOnly ? 'shop' : doneBy(patch),
          ...completeCost(patch, patchPen),
          months: patchPen.take('months', 'lasts', WORK.lasts, patch.lasts),
        }
      : null,
    left: {
      aMonth: leftPen.take('aMonth', 'a_month', WORK.leftAMonth, left?.a_month, D.leftAMonth),
      valueLost: leftPen.take('valueLost', 'value_lost', WORK.valueLost, left?.value_lost, D.valueLost),
    },
    buyerPays: pen.take('buyerPays', 'buyer_pays', WORK.buyerPays, file.buyer_pays, D.buyerPays),
    daysWithout: pen.take('daysWithout', 'days_without', WORK.daysWithout, file.days_without, D.daysWithout),
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
