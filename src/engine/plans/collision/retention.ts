/** The courses that keep it: what is settled, what is done, and the keep projection that both run on into. */
import { owedAt } from '../../cashflow/contracts/loan.ts';
import { oneOff } from '../../cashflow/contracts/recurring.ts';
import type { Split } from '../../cashflow/contracts/settlement/lossPayee.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { replacedAt } from '../vehicle/changeOver.ts';
import { type Context, onceIn, timesOf } from '../vehicle/context.ts';
import { awaitedBy, mayEnd, nextAfterEnd } from '../vehicle/endMixture.ts';
import { gettingAbout } from '../vehicle/gettingAbout.ts';
import { allDone, keepPlan } from '../vehicle/keepPlan.ts';
import { presentUnearnedAt, presentUnusedBack } from '../vehicle/paidAhead.ts';
import { named, type Plan } from '../vehicle/plan.ts';
import { holdPresent, payOff, presentLoan } from '../vehicle/presentVehicle.ts';
import { laterPlan } from '../vehicle/replaceLaterPlan.ts';
import { type Asked, claimOf, type Settles, settled } from './settlement.ts';
import { byClaim, byCollision, line, settlement } from './settlementFlows.ts';
import { afterwards, type Deed, daysOf, deedContracts } from './treatment.ts';

/** A course that keeps it: whether, and how, an insurer settles, and what is done to the vehicle. */
export interface Course {
  readonly id: string;
  readonly label: string;
  /** Null: no claim is made. */
  readonly how: Settles | null;
  readonly deed: Deed;
}

export const COURSES: readonly Course[] = [
  { id: 'claim/shop-repair', label: 'Have a shop repair it', how: 'repair done', deed: 'shop' },
  { id: 'claim/own-repair', label: 'Take the cash, mend it ourselves', how: 'repair in money', deed: 'own' },
  {
    id: 'claim/safe-only',
    label: 'Take the cash, make it safe and legal',
    how: 'repair in money',
    deed: 'safe',
  },
  { id: 'claim/left', label: 'Take the cash, leave the damage', how: 'repair in money', deed: 'left' },
  { id: 'claim/rebuild', label: 'Total loss: keep the wreck and rebuild it', how: 'kept', deed: 'rebuild' },
  { id: 'claim/no-claim-shop', label: 'No claim, a shop on own money', how: null, deed: 'shop' },
  { id: 'claim/no-claim-own', label: 'No claim, mend it ourselves', how: null, deed: 'own' },
  { id: 'claim/no-claim-safe', label: 'No claim, make it safe and legal', how: null, deed: 'safe' },
  { id: 'claim/no-claim-left', label: 'No claim, leave the damage', how: null, deed: 'left' },
  {
    id: 'claim/no-claim-rebuild',
    label: 'No claim, rebuild it under branded papers',
    how: null,
    deed: 'rebuild',
  },
];

export const askedOf = ({ how, deed }: Course, ctx: Context): Asked | null =>
  how === null ? null : { how, replaced: false, days: daysOf(deed, ctx), more: 0 };

/** A course up to the end of its day, and the inputs that it leaves. */
interface Laid {
  readonly day: readonly Contract[];
  readonly after: Context;
}

/** Within a drawn future a course is laid out once, whether it is kept or replaced later. */
const layOut = (course: Course, ctx: Context): Laid =>
  onceIn(ctx.future, course, [], () => layOutAnew(course, ctx));

const layOutAnew = (course: Course, ctx: Context): Laid => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  const asked = askedOf(course, ctx);
  const split: Split<number> | null = asked && settled(ctx, asked);
  const days = daysOf(course.deed, ctx);
  const owed = ctx.inputs.vehicle.loan?.owed ?? 0;
  // A total loss ends the loan on the day, kept wreck or not; a repair's payment may have lowered it.
  const total = course.how === 'kept';
  const seats = !(course.deed === 'shop' && claim.childSeats?.inEstimate);
  return {
    day: [
      ...(asked && split
        ? [...settlement(split, asked, total, ctx), ...byClaim(split, days, true, ctx)]
        : []),
      ...byCollision(days, seats, ctx),
      ...deedContracts(course.deed, split !== null, ctx),
    ],
    after: afterwards(course.deed, total ? 0 : split ? split.stillOwed : owed, ctx),
  };
};

/** Postings that count for a part. */
const part =
  (contract: Contract, share: number): Contract =>
  (sink) =>
    contract({
      post: (at, month, counted, cash, shop) =>
        sink.post(at, month, counted * share, cash * share, shop * share),
      series: (at, from, to, levels, counted, cash, shop) =>
        sink.series(at, from, to, levels, counted * share, cash * share, shop * share),
      time: sink.time && ((at, month, hours) => sink.time?.(at, month, hours * share)),
      stands: sink.stands && ((month, stops, days) => sink.stands?.(month, stops * share, days * share)),
    });

/** The papers are refused once it is rebuilt: it goes as scrap, and the cheapest replacement takes its place. */
const refusedPlan = (plan: Plan, month: number, ctx: Context): Plan => {
  const { vehicle, doingWithout } = ctx.inputs;
  const scrap: Contract = oneOff(
    line('selling the old one', 'sold: scrap', 'claim.rebuild.refused', 'it may not be driven again'),
    month,
    -vehicle.sellsFor.scrap,
  );
  const back = presentUnusedBack(month, ctx);
  const held = holdPresent(allDone(ctx), month, presentLoan(ctx), ctx);
  const cheapest = nextAfterEnd(ctx.inputs);
  if (cheapest !== null) {
    const sold = { proceeds: vehicle.sellsFor.scrap, contracts: [scrap, back], awaited: null };
    const next = replacedAt(cheapest, month, allDone(ctx), held, sold, ctx);
    return {
      ...plan,
      contracts: [...next.contracts, ...(next.changeOver?.contracts ?? [])],
      changeOver: null,
      valueAt: (at, reading) => (at < month ? vehicle.sellsFor.scrap : next.valueAt(at, reading)),
      toCome: next.toCome,
      owedAt: next.owedAt,
    };
  }
  const loan = presentLoan(ctx);
  return {
    ...plan,
    contracts: [
      ...held,
      scrap,
      back,
      ...payOff(loan, month, null, ctx).contracts,
      ...(doingWithout ? [gettingAbout(doingWithout, month + 1, ctx)] : []),
    ],
    changeOver: null,
    valueAt: (at) => (at < month ? vehicle.sellsFor.scrap : 0),
    toCome: (at) => (at < month ? presentUnearnedAt(at, ctx) : 0),
    owedAt: (at) => (at < month && loan ? owedAt(loan, at) : 0),
  };
};

/** Rebuilt, its papers are or are not given; expected, the two count by their chances. */
const mayBeRefused = (plan: Plan, course: Course, ctx: Context): Plan => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  if (course.deed !== 'rebuild' || !claim.rebuild) return plan;
  const times = timesOf(claim.rebuild.refused, 'claim.rebuild.refused', ctx.future);
  if (times === 0) return plan;
  const month = Math.min(ctx.horizon - 1, Math.max(1, Math.ceil(claim.rebuild.monthsOff)));
  const refused = refusedPlan(plan, month, ctx);
  if (times === 1) return refused;
  const mixed = (given: number, not: number): number => (1 - times) * given + times * not;
  return {
    ...plan,
    contracts: [
      ...plan.contracts.map((contract) => part(contract, 1 - times)),
      ...refused.contracts.map((contract) => part(contract, times)),
    ],
    changeOver: plan.changeOver && {
      month: plan.changeOver.month,
      contracts: plan.changeOver.contracts.map((contract) => part(contract, 1 - times)),
      awaited: awaitedBy(1 - times, plan.changeOver.awaited),
    },
    valueAt: (at, reading) => mixed(plan.valueAt(at, reading), refused.valueAt(at, reading)),
    toCome: (at, reading) => mixed(plan.toCome(at, reading), refused.toCome(at, reading)),
    owedAt: (at) => mixed(plan.owedAt(at), refused.owedAt(at)),
  };
};

const joined = (id: string, label: string, plan: Plan, course: Course, { day, after }: Laid): Plan => {
  const run = mayBeRefused(plan, course, after);
  const work = course.deed === 'left' ? 'left' : course.deed === 'safe' ? 'patched' : 'mended';
  return named(run, { id, label, work, letGo: run.letGo, contracts: [...day, ...run.contracts] });
};

/** The course, then kept to the horizon. */
export const keepCourse = (course: Course, id: string, label: string, ctx: Context): Plan => {
  const laid = layOut(course, ctx);
  const done = allDone(ctx);
  const plan = mayEnd(keepPlan(id, label, 'mended', done, laid.after), ctx.horizon, done, laid.after);
  return joined(id, label, plan, course, laid);
};

/** The course, then kept to the end of month k ≥ 1 and replaced. */
export const laterCourse = (
  course: Course,
  index: number,
  month: number,
  id: string,
  label: string,
  ctx: Context,
): Plan => {
  const laid = layOut(course, ctx);
  return joined(id, label, laterPlan(index, month, laid.after), course, laid);
};
