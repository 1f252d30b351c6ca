/** Where the answer about a claim turns, in the claim's own terms. At average inputs, own time counted. */
import { totalLossFrom } from '../cashflow/contracts/settlement/totalLoss.ts';
import { presentCostOf } from '../evaluation/project.ts';
import { thresholdOf } from '../plans/collision/eligibility.ts';
import { claimOf, settled } from '../plans/collision/settlement.ts';
import { type Context, contextOf, EXPECTED, unrounded } from '../plans/vehicle/context.ts';
import type { Way } from '../plans/vehicle/option.ts';
import { leastOf } from '../quantity/least.ts';
import { withInput } from '../scenario/inputs/lens.ts';
import { crossings } from '../valuation/crossings.ts';
import type { ClaimTip } from './collisionViews.ts';

const costAt = (way: Way, ctx: Context, key: string | null, value: number): number => {
  const inputs = key === null ? ctx.inputs : withInput(ctx.inputs, key, value);
  const at = contextOf(inputs, ctx.facts, EXPECTED, 'unrounded');
  return presentCostOf(way.build(at), at).counted;
};

const cheapestOf = (
  ways: readonly Way[],
  ctx: Context,
): { readonly way: Way; readonly cost: number } | null =>
  leastOf(
    ways.map((way) => ({ way, cost: costAt(way, ctx, null, 0) })),
    ({ cost }) => cost,
  );

const under = (ways: readonly Way[], ...ids: readonly string[]): Way[] =>
  ways.filter((way) => ids.some((id) => way.id.startsWith(`${id}/`)));

const CASH = [
  'claim/own-repair',
  'claim/safe-only',
  'claim/left',
  'claim/sold-damaged',
  'claim/traded-in',
  'claim/scrapped',
];

/**
 * The payout below which own repair no longer is the cheapest thing to do with the cash or without it: a dollar less
 * costs a dollar more, in cash or as debt, while what takes no cash does not move.
 */
const payoutTip = (open: readonly Way[], ctx: Context): ClaimTip => {
  const own = cheapestOf(under(open, 'claim/own-repair'), ctx);
  const other = cheapestOf(
    open.filter((way) => !under([way], ...CASH).length),
    ctx,
  );
  if (!own || !other)
    return { what: 'payout', at: null, words: 'own repair, or what it would be held against, is closed' };
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const days = claim.ownRepair?.days ?? 0;
  const { payment } = settled(unrounded(ctx), { how: 'repair in money', replaced: false, days, more: 0 });
  const at = payment - (other.cost - own.cost);
  return at > 0
    ? { what: 'payout', at, words: `below this payout it is no dearer to: ${other.way.label}` }
    : { what: 'payout', at: null, words: 'own repair pays whatever the payout' };
};

/** The hours of own work at which a shop's repair costs the same. */
const hoursTip = (open: readonly Way[], ctx: Context): ClaimTip => {
  const [own] = under(open, 'claim/own-repair').filter(({ side }) => side === 'keep');
  const [shop] = under(open, 'claim/shop-repair').filter(({ side }) => side === 'keep');
  if (!own || !shop) return { what: 'hours', at: null, words: 'own repair or a shop’s repair is closed' };
  const against = costAt(shop, ctx, null, 0);
  const found = crossings(
    (hours) => costAt(own, ctx, 'claim.ownRepair.hours', hours) - against,
    0,
    1000,
    100,
  );
  const at = found.roots[0]?.at ?? null;
  const words =
    at !== null
      ? 'beyond these hours a shop is as good'
      : found.signAtLow < 0
        ? 'own repair is cheaper however long it takes'
        : 'a shop is cheaper even if own work took no time';
  return { what: 'hours', at, words };
};

/** The bid for the wreck from which keeping it costs more than giving it up. */
const salvageTip = (open: readonly Way[], ctx: Context): ClaimTip => {
  const kept = cheapestOf(under(open, 'claim/rebuild'), ctx)?.way;
  const other = cheapestOf(under(open, 'claim/total-loss'), ctx);
  if (!kept || !other)
    return { what: 'salvage', at: null, words: 'keeping the wreck, or giving it up, is closed' };
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const gain = (bid: number): number => costAt(kept, ctx, 'claim.salvage', bid) - other.cost;
  const found = claim.value > 0 ? crossings(gain, 0, claim.value, 100) : null;
  const at = found?.roots[0]?.at ?? null;
  const words =
    at !== null
      ? 'above this bid there is no point in keeping the wreck'
      : (found?.signAtLow ?? 1) > 0
        ? 'keeping the wreck costs more whatever is bid for it'
        : 'keeping the wreck costs less whatever is bid for it';
  return { what: 'salvage', at, words };
};

const estimateTip = (ctx: Context): ClaimTip => {
  const { said } = claimOf(ctx.inputs, ctx.facts);
  const { value, salvage } = thresholdOf(ctx);
  const from = totalLossFrom(said.place.totalLoss.test, value, salvage);
  return from === null
    ? {
        what: 'estimate',
        at: null,
        words: 'no rule draws a line: the insurer decides, or nobody has bid for the wreck',
      }
    : { what: 'estimate', at: from / 100, words: 'from this repair cost on it is a total loss' };
};

export const claimTips = (open: readonly Way[], ctx: Context): ClaimTip[] => [
  payoutTip(open, ctx),
  hoursTip(open, ctx),
  salvageTip(open, ctx),
  estimateTip(ctx),
];
