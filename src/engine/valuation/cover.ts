/**
 * Cover on an old vehicle: what it costs to have it, to go without, or to bear more of a claim oneself. Expected
 * values in closed form, in currency units of one period (a year, or a month at a month's premium, chance and value).
 */

/** One size that a loss may have. `total`: the whole value, whatever that is by then. */
export type LossSize = { readonly share: number; readonly loss: number | 'total' };

/** How a loss falls out, given that one happens: shares that sum to 1, sizes above nil and net of what a wreck brings. */
export type LossTable = readonly LossSize[];

/** Cover of one kind, such as collision. Deductible 0 or more. */
export interface Cover {
  /** Of the period. */
  readonly premium: number;
  readonly deductible: number;
}

/** What is at stake in the period. */
export interface Exposure {
  /** Expected losses in the period that this cover would answer for. */
  readonly claims: number;
  readonly losses: LossTable;
  /** What the vehicle is worth in the period. */
  readonly value: number;
}

/**
 * A loss table from two figures: the share of losses that are total, and the mean of the others. All partial losses
 * are then of that size, which makes what the owner bears under a deductible as large as that mean allows.
 */
export const lossesOf = (totalShare: number, meanPartialLoss: number): LossTable => [
  { share: totalShare, loss: 'total' },
  { share: 1 - totalShare, loss: meanPartialLoss },
];

const checked = (losses: LossTable): LossTable => {
  let shares = 0;
  let sound = true;
  for (const { share, loss } of losses) {
    shares += share;
    sound &&= share >= 0 && (loss === 'total' || loss >= 0);
  }
  if (!(sound && Math.abs(shares - 1) < 1e-9)) {
    throw new RangeError('the shares of a loss table are 0 or more and sum to 1, its losses are 0 or more');
  }
  return losses;
};

/** E min(loss, value, cap): what the owner bears of a loss, on average, when never more than `cap`. */
const borne = (losses: LossTable, value: number, cap: number): number => {
  let sum = 0;
  for (const { share, loss } of checked(losses))
    sum += share * Math.min(loss === 'total' ? value : loss, value, cap);
  return sum;
};

/**
 * Expected cost of the period with cover, premium + q E min(loss, deductible), or, with `cover` null, without it,
 * q E min(loss, value). A loss is never more than the value. One of the two is in every projection: going without is
 * not free, and there is no third.
 */
export const coverCost = (cover: Cover | null, { claims, losses, value }: Exposure): number =>
  cover === null
    ? claims * borne(losses, value, value)
    : cover.premium + claims * borne(losses, value, cover.deductible);

/** The most one loss can take from the household: what it has to be able to bear. 0 for an empty table of nils. */
export const worstLoss = (
  cover: Cover | null,
  { losses, value }: Pick<Exposure, 'losses' | 'value'>,
): number =>
  Math.min(
    cover === null ? value : cover.deductible,
    Math.max(
      0,
      ...checked(losses).map(({ share, loss }) =>
        share === 0 ? 0 : Math.min(loss === 'total' ? value : loss, value),
      ),
    ),
  );

/** Where cover pays for itself, or why there is no such place. */
export type Tips =
  | { readonly status: 'at'; readonly at: number }
  | { readonly status: 'always' | 'never'; readonly reason: string };

/**
 * The claims in a period from which cover costs less than going without: premium / E(min(loss, value) - min(loss,
 * deductible)). Never where a claim would pay nothing; always where the cover is free.
 */
export const claimsToPay = (
  { premium, deductible }: Cover,
  { losses, value }: Pick<Exposure, 'losses' | 'value'>,
): Tips => {
  if (premium <= 0) return { status: 'always', reason: 'the cover costs nothing' };
  const paid = borne(losses, value, value) - borne(losses, value, deductible);
  return paid > 0
    ? { status: 'at', at: premium / paid }
    : { status: 'never', reason: 'no loss is above the deductible' };
};

/**
 * The value of the vehicle from which cover costs less than going without. What a claim pays, q E(min(loss, value) -
 * min(loss, value, deductible)), rises with the value in straight pieces that bend at the deductible and at each size
 * of loss, so the crossing is exact. Never where even the dearest vehicle's claims would not make up the premium.
 */
export const valueToPay = (
  { premium, deductible }: Cover,
  { claims, losses }: Omit<Exposure, 'value'>,
): Tips => {
  if (premium <= 0) return { status: 'always', reason: 'the cover costs nothing' };
  const paid = (value: number): number =>
    claims * (borne(losses, value, value) - borne(losses, value, deductible));
  const bends = [deductible, ...losses.flatMap(({ loss }) => (loss === 'total' ? [] : [loss]))]
    .filter((bend) => bend >= deductible)
    .sort((a, b) => a - b);
  let from = 0;
  for (const bend of bends) {
    if (paid(bend) >= premium) {
      return {
        status: 'at',
        at: from + ((premium - paid(from)) * (bend - from)) / (paid(bend) - paid(from)),
      };
    }
    from = bend;
  }
  const slope = claims * losses.reduce((sum, { share, loss }) => sum + (loss === 'total' ? share : 0), 0);
  return slope > 0
    ? { status: 'at', at: from + (premium - paid(from)) / slope }
    : { status: 'never', reason: 'claims would never make up the premium, whatever it is worth' };
};

/** A change from one cover to another of a higher deductible, or lower; per period. */
export interface DeductibleChange {
  /** Premium saved; negative: it costs more. */
  readonly saved: number;
  /** More borne of losses on average; negative: less. */
  readonly borne: number;
  /** saved - borne: above 0, the change pays. */
  readonly gain: number;
  /** More to bear in the worst single loss. */
  readonly worst: number;
  /** Claims in a period at which it neither gains nor loses; always, never: it pays at any number of them, at none. */
  readonly tips: Tips;
}

/**
 * Changing the deductible: what is saved in premium against what is borne more. Below the tipping number of claims a
 * higher deductible pays, above it a lower one. The same premium with a higher deductible never pays.
 */
export const changeDeductible = (from: Cover, to: Cover, exposure: Exposure): DeductibleChange => {
  const { claims, losses, value } = exposure;
  const saved = from.premium - to.premium;
  const each = borne(losses, value, to.deductible) - borne(losses, value, from.deductible);
  return {
    saved,
    borne: claims * each,
    gain: saved - claims * each,
    worst: worstLoss(to, exposure) - worstLoss(from, exposure),
    tips: tipsOf(saved, each),
  };
};

/** Where saved = claims x each, for claims of 0 or more. */
const tipsOf = (saved: number, each: number): Tips => {
  const at = saved / each;
  if (each !== 0 && at > 0) return { status: 'at', at };
  return saved > 0 || (saved === 0 && each < 0)
    ? { status: 'always', reason: 'it saves premium and a claim costs no more' }
    : { status: 'never', reason: 'it saves no premium and a claim costs no less' };
};
