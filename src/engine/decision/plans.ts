import type { Rounding } from '../cashflow/contracts/loan.ts';
import { owedAt } from '../cashflow/contracts/loan.ts';
import { monthly } from '../cashflow/contracts/recurring.ts';
import { type Bought, type Brought, bought, type Financing, NOTHING_BROUGHT } from './bought.ts';
import type { Context } from './context.ts';
import type { ClosedWay } from './decision.ts';
import { mayWait, neededWork, type Treatment, type Treatments } from './neededWork.ts';
import { presentClosed, replacementClosed } from './openWays.ts';
import type { Plan } from './plan.ts';
import {
  holdPresent,
  letGoToday,
  netValue,
  type Offer,
  offersToday,
  payOff,
  presentLoan,
  presentValueAt,
  sellLater,
} from './presentVehicle.ts';

/** A plan that is put together only when it is asked for: a solver wants two of them, not all. */
export interface Way extends Pick<Plan, 'id' | 'side' | 'label'> {
  readonly build: () => Plan;
}

/** Every way of the scenario: the open ones, and the closed ones with their reason. */
export interface Ways {
  readonly open: readonly Way[];
  readonly closed: readonly ClosedWay[];
}

/** A name as part of an id: lower case, words joined by hyphens. */
export const slug = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'unnamed';

/** Ids of the replacements, told apart by a number where two have the same name. */
export const replacementIds = (names: readonly string[]): string[] =>
  names.map((name, i) => {
    const id = slug(name);
    return names.some((other, j) => j !== i && slug(other) === id) ? `${id}-${i + 1}` : id;
  });

const keepPlan = (
  id: string,
  label: string,
  work: Plan['work'],
  treatments: Treatments,
  rounding: Rounding,
  ctx: Context,
): Plan => {
  const loan = presentLoan(ctx, rounding);
  return {
    id,
    side: 'keep',
    label,
    replacement: null,
    work,
    letGo: null,
    replaceMonth: null,
    contracts: holdPresent(treatments, ctx.horizon, loan, ctx),
    valueAt: (month, reading) =>
      netValue(ctx.inputs.vehicle, presentValueAt(treatments, month, ctx), month, reading, ctx),
    owedAt: (month) => (loan ? owedAt(loan, month) : 0),
    vehicleAtEnd: ctx.facts.vehicleName,
  };
};

const treatmentsOf = (ctx: Context, choose: (i: number) => Treatment): Treatments =>
  ctx.inputs.workNeeded.map((_, i) => choose(i));

const allDone = (ctx: Context): Treatments => treatmentsOf(ctx, () => 'done');

const keepWays = (rounding: Rounding, ctx: Context): Ways => {
  const { workNeeded } = ctx.inputs;
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  const add = (id: string, label: string, work: Plan['work'], treatments: Treatments): void => {
    const why = presentClosed(ctx.horizon, ctx);
    if (why) closed.push({ id, label, why });
    else
      open.push({
        id,
        side: 'keep',
        label,
        build: () => keepPlan(id, label, work, treatments, rounding, ctx),
      });
  };
  add('keep', workNeeded.length > 0 ? 'Mend it and keep it' : 'Keep it', 'mended', allDone(ctx));
  if (workNeeded.some((job) => job.patch))
    add(
      'keep/patched',
      'Patch it and keep it',
      'patched',
      treatmentsOf(ctx, (i) => (workNeeded[i]?.patch ? 'patch' : 'done')),
    );
  if (workNeeded.some((job) => mayWait(job, 1)))
    add(
      'keep/left',
      'Keep it, and leave what can wait',
      'left',
      treatmentsOf(ctx, (i) => (workNeeded[i] && mayWait(workNeeded[i], 1) ? 'wait' : 'done')),
    );
  else if (workNeeded.length > 0)
    closed.push({
      id: 'keep/left',
      label: 'Keep it, and leave the work undone',
      why: 'none of the work can wait: undone, it is not to be driven',
    });
  return { open, closed };
};

/** The old vehicle goes today, by one offer; what it brought is known to the purchase. */
const goesToday = (offer: Offer, rounding: Rounding, ctx: Context) => {
  const loan = presentLoan(ctx, rounding);
  const payoff = loan ? owedAt(loan, 0) : 0;
  const brought: Brought = {
    tradeIn: offer.letGo === 'trade-in' ? offer.price : 0,
    payoff,
    proceeds: offer.letGo === 'trade-in' ? 0 : offer.price,
  };
  const mending = offer.mended ? neededBeforeSale(ctx) : [];
  return { brought, contracts: [...mending, ...letGoToday(offer, ctx), ...payOff(loan, 0)] };
};

/** Mending it to sell it: all the work on the day, and nothing of what comes after. */
const neededBeforeSale = (ctx: Context) => neededWork(allDone(ctx), ctx.horizon, ctx);

const LET_GO_WORDS: Record<Offer['letGo'], string> = {
  private: 'sell it privately',
  'as it stands': 'sell it as it stands',
  'trade-in': 'trade it in',
  scrap: 'scrap it',
};

const letGoWords = (offer: Offer): string =>
  offer.mended ? `mend it, then ${LET_GO_WORDS[offer.letGo]}` : LET_GO_WORDS[offer.letGo];

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const replaceNowWays = (rounding: Rounding, ctx: Context): Ways => {
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
          build: () => {
            const old = goesToday(offer, rounding, ctx);
            const next = bought(index, 0, old.brought, financing, rounding, ctx);
            return {
              id,
              side: 'replace',
              label,
              replacement: index,
              work: offer.mended ? 'mended' : 'skipped',
              letGo: offer.letGo,
              replaceMonth: 0,
              contracts: [...old.contracts, ...next.contracts],
              valueAt: next.valueAt,
              owedAt: next.owedAt,
              vehicleAtEnd: name,
            };
          },
        });
      }
  });
  return { open, closed };
};

/**
 * Keeping to the end of month k, then replacing. k = 0 sells as it stands and skips the needed work; from k = 1 it is
 * done, save what can wait beyond k; k = H never replaces.
 */
export const laterPlan = (index: number, month: number, rounding: Rounding, ctx: Context): Plan => {
  const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${month}`;
  const name = ctx.facts.replacementNames[index] as string;
  const label = `Keep it for ${month} months, then get the ${name}`;
  if (month >= ctx.horizon)
    return { ...keepPlan(id, label, 'mended', allDone(ctx), rounding, ctx), side: 'later' };
  const treatments = treatmentsOf(ctx, (i) => {
    const job = ctx.inputs.workNeeded[i];
    return job && mayWait(job, Math.max(1, month)) ? 'wait' : 'done';
  });
  const loan = presentLoan(ctx, rounding);
  const payoff = loan ? owedAt(loan, month) : 0;
  const standing = treatmentsOf(ctx, () => 'wait');
  const at0 = month === 0;
  const proceeds = at0 ? ctx.inputs.vehicle.sellsFor.asItStands : presentValueAt(treatments, month, ctx);
  const next: Bought = bought(
    index,
    month,
    { ...NOTHING_BROUGHT, payoff, proceeds },
    'as offered',
    rounding,
    ctx,
  );
  const offer = offersToday(ctx).find((o) => !o.mended && o.privately);
  const old =
    at0 && offer
      ? letGoToday(offer, ctx)
      : [...holdPresent(at0 ? standing : treatments, month, loan, ctx), sellLater(treatments, month, ctx)];
  return {
    id,
    side: 'later',
    label,
    replacement: index,
    work: treatments.includes('wait') ? 'left' : 'mended',
    letGo: at0 ? 'as it stands' : 'private',
    replaceMonth: month,
    contracts: [...old, ...payOff(loan, month), ...next.contracts],
    valueAt: (at, reading) =>
      at < month
        ? netValue(ctx.inputs.vehicle, presentValueAt(treatments, at, ctx), at, reading, ctx)
        : next.valueAt(at, reading),
    owedAt: (at) => (at < month ? (loan ? owedAt(loan, at) : 0) : next.owedAt(at)),
    vehicleAtEnd: name,
  };
};

/** Months the present vehicle may be driven with all of its needed work undone; 0 if it may not. */
export const drivableUndone = (ctx: Context): number => {
  const { workNeeded } = ctx.inputs;
  if (workNeeded.length === 0 || ctx.facts.mayBeDriven === false || ctx.facts.recallStop) return 0;
  if (!workNeeded.every((job) => mayWait(job, 1))) return 0;
  return Math.min(ctx.horizon - 1, ...workNeeded.map((job) => job.canWait ?? Number.POSITIVE_INFINITY));
};

/** Months of saving until the cash of the day is there; null when it already is, or spare money never gets there. */
const monthsOfSaving = (index: number, ctx: Context): number | null => {
  const { household, replacement } = ctx.inputs;
  const deal = replacement[index];
  if (!deal || household.savings === null || household.spareEachMonth <= 0) return null;
  const onTheDay =
    deal.payment.kind === 'loan'
      ? deal.payment.downPayment
      : deal.payment.kind === 'lease'
        ? deal.payment.dueAtSigning + deal.payment.acquisitionFee
        : deal.price;
  const short = onTheDay - ctx.inputs.vehicle.sellsFor.asItStands - household.savings;
  return short > 0 ? Math.ceil(short / household.spareEachMonth) : null;
};

const drivingOnWays = (rounding: Rounding, ctx: Context): Ways => {
  const open: Way[] = [];
  const closed: ClosedWay[] = [];
  const most = drivableUndone(ctx);
  ctx.inputs.replacement.forEach((_, index) => {
    const saving = monthsOfSaving(index, ctx);
    if (saving === null || saving >= ctx.horizon) return;
    const name = ctx.facts.replacementNames[index] as string;
    const label = `Drive on for ${saving} months while saving, then get the ${name}`;
    const id = `later/${replacementIds(ctx.facts.replacementNames)[index]}/${saving}`;
    const why =
      ctx.inputs.workNeeded.length > 0 && saving > most
        ? most > 0
          ? `the work can wait only ${most} months`
          : 'with the work undone it is not to be driven'
        : (presentClosed(saving, ctx) ?? replacementClosed(index, saving, ctx));
    if (why) closed.push({ id, label, why });
    else
      open.push({
        id,
        side: 'later',
        label,
        build: () => ({ ...laterPlan(index, saving, rounding, ctx), id, label }),
      });
  });
  return { open, closed };
};

const withoutWays = (rounding: Rounding, ctx: Context): Ways => {
  const without = ctx.inputs.doingWithout;
  if (!without) return { open: [], closed: [] };
  const best = offersToday(ctx).filter((o) => !o.mended);
  const offer = best.reduce((a, b) => (b.price > a.price ? b : a));
  const id = 'without';
  const label = `${capital(letGoWords(offer))}, and do without`;
  const build = (): Plan => {
    const line = {
      category: 'getting about without it',
      what: 'rides, a rental, a borrowed one',
      path: 'doing_without',
      reason: 'so many days a month at so much a day',
    } as const;
    return {
      id,
      side: 'without',
      label,
      replacement: null,
      work: 'skipped',
      letGo: offer.letGo,
      replaceMonth: null,
      contracts: [
        ...goesToday(offer, rounding, ctx).contracts,
        monthly(line, without.aDay * without.daysAMonth, ctx.levels.general, 1, ctx.horizon),
      ],
      valueAt: () => 0,
      owedAt: () => 0,
      vehicleAtEnd: '',
    };
  };
  return { open: [{ id, side: 'without', label, build }], closed: [] };
};

/** Every way of the scenario, in a settled order that decides no figure. */
export const waysOf = (rounding: Rounding, ctx: Context): Ways => {
  const parts = [
    keepWays(rounding, ctx),
    replaceNowWays(rounding, ctx),
    drivingOnWays(rounding, ctx),
    withoutWays(rounding, ctx),
  ];
  return { open: parts.flatMap((p) => p.open), closed: parts.flatMap((p) => p.closed) };
};
