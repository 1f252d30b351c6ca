/** What is done to the vehicle in a course: the work and its risks, and what the vehicle then is. */
import { oneOff } from '../../cashflow/contracts/recurring.ts';
import { TO_THE_CENT, UNROUNDED } from '../../cashflow/contracts/settlement/arithmetic.ts';
import { estimateTotals, labourRateGap } from '../../cashflow/contracts/settlement/estimate.ts';
import { workOnce } from '../../cashflow/contracts/work.ts';
import { levelAt } from '../../cashflow/levels.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { ClaimWork, Rebuild } from '../../scenario/inputs/claim.ts';
import type { PresentVehicle } from '../../scenario/inputs/inputs.ts';
import { type Context, onceFor, timesOf, upTo, withVehicle } from '../vehicle/context.ts';
import { gettingAbout } from '../vehicle/gettingAbout.ts';
import { jobShopPrice } from '../vehicle/neededWork.ts';
import { claimOf, estimateIn, paidForMore, type Settles, settled, shareFromOther } from './settlement.ts';
import { line } from './settlementFlows.ts';

/** What becomes of the damage while it is kept. */
export type Deed = 'shop' | 'own' | 'safe' | 'left' | 'rebuild';

/** The estimate with its tax, as if all of it were done. */
const repairCost = (ctx: Context): number => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  return onceFor(
    ctx,
    'repair cost',
    () => estimateTotals(UNROUNDED, estimateIn(UNROUNDED, claim, false), true).total,
  );
};

/** What the damage takes off the price as it stands; the needed work takes the rest, by shop price. */
const damageLoss = (ctx: Context): number => {
  const { running, asItStands } = ctx.inputs.vehicle.sellsFor;
  const repair = repairCost(ctx);
  const jobs = ctx.inputs.workNeeded.reduce((sum, job) => sum + jobShopPrice(job, ctx), 0);
  const share = repair + jobs > 0 ? repair / (repair + jobs) : 1;
  return Math.max(0, running - asItStands) * share;
};

/** What a buyer pays less for it afterwards, at today's prices. */
const lostAfter = (deed: Deed, ctx: Context): number => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const seen = claim.lostValue?.lost ?? 0;
  // Prices as stated are a clean title's: what the damage takes off a branded one is its part of that.
  if (deed === 'left') return damageLoss(ctx) * ctx.inputs.vehicle.brandFactor;
  if (deed === 'rebuild') return claim.rebuild?.valueLost ?? 0;
  const plan = deed === 'own' ? claim.ownRepair : deed === 'safe' ? claim.safeOnly : null;
  return seen + (plan?.valueLost ?? 0);
};

/** The inputs once the deed is done: the vehicle as it then is, and a loan of `owed`; no debt where that is nil. */
export const afterwards = (deed: Deed, owed: number, ctx: Context): Context => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { vehicle, workNeeded } = ctx.inputs;
  const rebuilt = deed === 'rebuild' ? claim.rebuild : null;
  const { running, asItStands } = vehicle.sellsFor;
  const jobsTake = Math.max(0, running - asItStands) - damageLoss(ctx);
  const changed: PresentVehicle = {
    ...vehicle,
    offTheRoad: rebuilt ? Math.ceil(rebuilt.monthsOff) : 0,
    brandFactor: vehicle.brandFactor * (rebuilt?.titleFactor ?? 1),
    damage: lostAfter(deed, ctx),
    cover: rebuilt ? { ...vehicle.cover, aYear: rebuilt.insuranceAYear } : vehicle.cover,
    // A rebuilt wreck is insured anew: what was to change of its old policy does not change the new one.
    changes: rebuilt
      ? vehicle.changes.map((one) => ({ ...one, cover: null, coverEnds: [] }))
      : vehicle.changes,
    sellsFor: {
      ...vehicle.sellsFor,
      asItStands: workNeeded.length > 0 ? running - jobsTake : asItStands,
    },
    loan: vehicle.loan && owed > 0 ? { ...vehicle.loan, owed } : null,
  };
  return withVehicle(changed, ctx);
};

/** Needed to have it safe again, whoever repairs it; a shop's estimate may hold it already. */
const extras = (byEstimate: boolean, ctx: Context): Contract[] => {
  const { alignment, calibration, belts } = claimOf(ctx.inputs, ctx.facts).claim;
  const all = [
    ['wheel alignment', 'alignment', alignment],
    ['sensors set anew', 'sensor_calibration', calibration],
    ['seat belts', 'seat_belts', belts],
  ] as const;
  return all.map(([what, key, extra]) =>
    oneOff(
      line('work needed now', what, `claim.also_needed.${key}`, 'without it, it is not safe again'),
      0,
      extra && !(byEstimate && extra.inEstimate) ? extra.costs : 0,
    ),
  );
};

/** How the insurer is asked for a repair; null where it is not, or not any more. */
type Claimed = 'repair done' | 'repair in money' | null;

/** Damage that shows once it is opened, and what the insurer pays of it where it may still be asked. */
const foundLater = (claimed: Claimed, days: number, ctx: Context): Contract[] => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { chance, amount } = claim.estimate.supplement;
  const times = timesOf(chance, 'claim.supplement', ctx.future);
  if (times === 0 || amount === 0) return [];
  const cost = amount * (1 + claim.estimate.tax);
  const paid = claimed ? paidForMore(ctx, { how: claimed, replaced: false, days, more: 0 }) : 0;
  const path = 'claim.estimate.supplement';
  return [
    oneOff(line('work needed now', 'more damage found', path, 'its chance, once opened'), 0, cost * times),
    oneOff(
      line('settlement', 'paid for what was found', path, 'once the insurer has seen it'),
      0,
      -paid * times,
    ),
  ];
};

/**
 * What a claim for lost market value brings, by its chance: only for a vehicle that was repaired, and from the other
 * driver's policy no more than the damage has left of its limit, what is found later too where that may be claimed.
 */
const lostValuePaid = (how: Settles, later: Claimed, days: number, ctx: Context): Contract[] => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  if (!claim.lostValue) return [];
  const times = timesOf(claim.lostValue.paid, 'claim.lost_value', ctx.future);
  const theirs = claim.lostValue.claimed * shareFromOther(claim, said);
  const limit = said.pays === 'other' ? claim.otherLimit : null;
  const within = (paid: number): number =>
    limit === null ? theirs : Math.max(0, Math.min(theirs, limit - paid));
  const asked = { how, replaced: false, days, more: 0 };
  const { payment } = settled(ctx, asked);
  const found = later ? timesOf(claim.estimate.supplement.chance, 'claim.supplement', ctx.future) : 0;
  // Both cases by their chance: a limit that binds in one of them does not bind on their average.
  const amount = (1 - found) * within(payment) + (found && found * within(payment + paidForMore(ctx, asked)));
  return [
    oneOff(
      line('settlement', 'lost market value', 'claim.lost_value', 'its chance, a claim of its own'),
      0,
      -amount * times,
    ),
  ];
};

/** What a shop asks for its hours beyond the insurer's rate. */
const dearerHours = (ctx: Context): number => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { shopHour } = claim.estimate;
  return shopHour === null ? 0 : labourRateGap(UNROUNDED, estimateIn(UNROUNDED, claim, false), shopHour);
};

const byShop = (claimed: boolean, ctx: Context): Contract[] => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { days } = claim.estimate;
  const bill =
    ctx.rounding === 'unrounded'
      ? repairCost(ctx)
      : estimateTotals(TO_THE_CENT, estimateIn(TO_THE_CENT, claim, false), true).total / 100;
  const without = claim.rental ? 0 : days * ctx.work.dayWithout;
  const work = 'work needed now';
  return [
    oneOff(line(work, "the shop's bill", 'claim.estimate', 'the estimate, with its tax'), 0, bill),
    oneOff(
      line(work, 'dearer hours than estimated', 'claim.estimate.shop_hour', "the owner's part"),
      0,
      dearerHours(ctx),
    ),
    oneOff(
      line('getting about without it', 'days in the shop', 'claim.estimate.days', 'until it is back'),
      0,
      without,
    ),
    ...foundLater(claimed ? 'repair done' : null, days, ctx),
  ];
};

/** Work of the household's own plan, with its tools. */
const byPlan = (plan: Omit<ClaimWork, 'days'>, key: string, days: number, ctx: Context): Contract[] => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const { by, parts, paint, hours, shopPrice, qualified, tools, toolsBring } = plan;
  const once = {
    by,
    parts: parts + paint,
    hours,
    usualHours: hours,
    shopPrice,
    daysWithout: claim.rental ? 0 : days,
    either: qualified,
  };
  const bought = by === 'own' ? tools - toolsBring : 0;
  const toolLine = line(
    'work needed now',
    'tools, less what they bring',
    `claim.${key}.tools`,
    'bought for it',
  );
  return [
    workOnce(
      line('work needed now', 'the damage', `claim.${key}`, 'the plan of the household'),
      0,
      once,
      ctx.work,
    ),
    (sink) => {
      if (bought !== 0) sink.post(toolLine, 0, bought, bought, 0);
    },
  ];
};

/** Getting about while it is off the road. */
const offTheRoad = ({ monthsOff }: Rebuild, ctx: Context): Contract[] => {
  const { doingWithout, household } = ctx.inputs;
  const until = Math.min(ctx.horizon, Math.ceil(monthsOff));
  if (until < 1) return [];
  if (doingWithout) return gettingAbout(upTo(until, ctx), 1);
  const about = line(
    'getting about without it',
    'off the road',
    'claim.rebuild.months_off_road',
    'every day of it',
  );
  const aMonth = (365.25 * household.dayWithout) / 12;
  return [
    (sink) => {
      for (let m = 1; m <= until; m++) {
        const amount = aMonth * Math.min(1, monthsOff - m + 1) * levelAt(ctx.levels.general, m);
        if (amount !== 0) sink.post(about, m, amount, amount, amount);
      }
    },
  ];
};

/** Days without the vehicle, for a rental. */
export const daysOf = (deed: Deed, ctx: Context): number => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  if (deed === 'shop') return claim.estimate.days;
  return (deed === 'own' ? claim.ownRepair?.days : deed === 'safe' ? claim.safeOnly?.days : 0) ?? 0;
};

/** The work of a deed, with its risks. `claimed`: a claim is made, so that what is found later may be claimed too. */
export const deedContracts = (deed: Deed, claimed: boolean, ctx: Context): Contract[] => {
  const { claim, said } = claimOf(ctx.inputs, ctx.facts);
  const days = daysOf(deed, ctx);
  const lost = (how: Settles, later: Claimed): Contract[] =>
    claimed ? lostValuePaid(how, later, days, ctx) : [];
  switch (deed) {
    case 'shop':
      return [...byShop(claimed, ctx), ...extras(true, ctx), ...lost('repair done', 'repair done')];
    case 'own': {
      const open = claimed && said.signingCloses === false ? 'repair in money' : null;
      const work = claim.ownRepair ? byPlan(claim.ownRepair, 'own_repair', days, ctx) : [];
      return [
        ...work,
        ...foundLater(open, days, ctx),
        ...extras(false, ctx),
        ...lost('repair in money', open),
      ];
    }
    case 'safe':
      return [
        ...(claim.safeOnly ? byPlan(claim.safeOnly, 'safe_only', days, ctx) : []),
        ...extras(false, ctx),
      ];
    case 'left':
      return [];
    case 'rebuild': {
      const { rebuild } = claim;
      if (!rebuild) return [];
      const papers = line(
        'work needed now',
        'inspection and papers',
        'claim.rebuild',
        'before it is back on the road',
      );
      return [
        ...byPlan(rebuild, 'rebuild', 0, ctx),
        ...foundLater(null, 0, ctx),
        ...extras(false, ctx),
        oneOff(papers, 0, rebuild.inspection + rebuild.retitling),
        ...offTheRoad(rebuild, ctx),
      ];
    }
  }
};
