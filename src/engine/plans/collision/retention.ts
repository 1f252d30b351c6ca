/** The courses that keep it: what is settled, what is done, and the keep projection that both run on into. */
import { owedAt } from '../../cashflow/contracts/loan.ts';
import { oneOff } from '../../cashflow/contracts/recurring.ts';
import type { Split } from '../../cashflow/contracts/settlement/lossPayee.ts';
import type { Contract } from '../../cashflow/posting.ts';
import { type Amounts, all } from '../vehicle/byReading.ts';
import { replacedAt, type Sold, sellingPays } from '../vehicle/changeOver.ts';
import { type Context, onceFor, timesOf } from '../vehicle/context.ts';
import { gettingAbout } from '../vehicle/gettingAbout.ts';
import { holdOurs, mayEnd } from '../vehicle/givenUp.ts';
import { allDone, keepPlan } from '../vehicle/keepPlan.ts';
import { neededWork } from '../vehicle/neededWork.ts';
import { nextAfterEnd } from '../vehicle/nextAfterEnd.ts';
import { presentUnearnedAt, presentUnusedBack } from '../vehicle/paidAhead.ts';
import { type Plan, WHOLE } from '../vehicle/plan.ts';
import { presentLoan } from '../vehicle/presentVehicle.ts';
import { type Piece, recipe } from '../vehicle/recipe.ts';
import { laterPlan } from '../vehicle/replaceLaterPlan.ts';
import { isRunning } from '../vehicle/runningCosts.ts';
import type { Awaited } from '../vehicle/selling.ts';
import { type Asked, claimOf, type Settles, settled } from './settlement.ts';
import { byClaim, byCollision, line, settlement } from './settlementFlows.ts';
import { afterwards, type Deed, daysOf, deedContracts } from './treatment.ts';

/** A course that keeps it: whether, and how, an insurer settles, and what is done to the vehicle. */
export type Course = {
  readonly id: string;
  readonly label: string;
  /** Null: no claim is made. */
  readonly how: Settles | null;
  readonly deed: Deed;
};

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

/** A course by what it does, as a recipe is told of it. */
type Acts = Pick<Course, 'how' | 'deed'>;

export const askedOf = ({ how, deed }: Acts, ctx: Context): Asked | null =>
  how === null ? null : { how, replaced: false, days: daysOf(deed, ctx), more: 0 };

const splitOf = (course: Acts, ctx: Context): Split<number> | null => {
  const asked = askedOf(course, ctx);
  return asked && settled(ctx, asked);
};

/** A total loss ends the loan on the day, kept wreck or not; a repair's payment may have lowered it. */
const isTotal = ({ how }: Acts): boolean => how === 'kept';

const settlesOn = (ctx: Context, how: Course['how'], deed: Deed): Contract[] => {
  const split = splitOf({ how, deed }, ctx);
  return split ? settlement(split, isTotal({ how, deed })) : [];
};

const claimBrings = (ctx: Context, how: Course['how'], deed: Deed): Contract[] => {
  const split = splitOf({ how, deed }, ctx);
  return split ? byClaim(split, daysOf(deed, ctx), true, ctx) : [];
};

const collisionTakes = (ctx: Context, deed: Deed): Contract[] => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  return byCollision(daysOf(deed, ctx), !(deed === 'shop' && claim.childSeats?.inEstimate), ctx);
};

const deedTakes = (ctx: Context, deed: Deed, claimed: boolean): Contract[] =>
  deedContracts(deed, claimed, ctx);

/** What the day of a course takes and brings. */
const dayOf = ({ how, deed }: Acts): Piece[] => [
  recipe(settlesOn, how, deed),
  recipe(claimBrings, how, deed),
  recipe(collisionTakes, deed),
  recipe(deedTakes, deed, how !== null),
];

/** The inputs that the day of a course leaves. */
const afterDay = (ctx: Context, { how, deed }: Acts): Context =>
  onceFor(ctx, `after ${how} ${deed}`, () => {
    const split = splitOf({ how, deed }, ctx);
    const owed = ctx.inputs.vehicle.loan?.owed ?? 0;
    return afterwards(deed, isTotal({ how, deed }) ? 0 : (split?.stillOwed ?? owed), ctx);
  });

/** Contracts of what goes on after the day of a course. */
const goingOn = (ctx: Context, how: Course['how'], deed: Deed, piece: Piece): readonly Contract[] =>
  piece.from(afterDay(ctx, { how, deed }));

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

const REFUSED = 'claim.rebuild.refused';

/** The chance that the papers of a rebuilt wreck are refused; drawn, nil or one. */
export const refusal = (ctx: Context): number => {
  const { future } = ctx;
  if (future.kind === 'drawn' && future.turns) return future.turns.refused ? 1 : 0;
  return timesOf(claimOf(ctx.inputs, ctx.facts).claim.rebuild?.refused ?? 0, REFUSED, future);
};

/** Money that is awaited with a chance. */
const awaitedBy = (chance: number, awaited: Awaited | null): Awaited | null =>
  awaited && {
    begun: awaited.begun,
    comes: awaited.comes,
    price: {
      counted: chance * awaited.price.counted,
      cash: chance * awaited.price.cash,
      shop: chance * awaited.price.shop,
    },
    payoff: chance * awaited.payoff,
  };

const ifGiven = (ctx: Context, piece: Piece): Contract[] => {
  const share = 1 - refusal(ctx);
  return piece.from(ctx).map((contract) => part(contract, share));
};

const ifRefused = (ctx: Context, piece: Piece): Contract[] => {
  const share = refusal(ctx);
  return piece.from(ctx).map((contract) => part(contract, share));
};

const scrapped = (ctx: Context, month: number): Contract[] => [
  oneOff(
    line('selling the old one', 'sold: scrap', REFUSED, 'it may not be driven again'),
    month,
    -ctx.inputs.vehicle.sellsFor.scrap,
  ),
  presentUnusedBack(month, ctx),
];

const scrapValue = (ctx: Context): number => ctx.inputs.vehicle.sellsFor.scrap;
const atOnce = (): null => null;

/** The papers are refused once it is rebuilt: it goes as scrap, and the cheapest replacement takes its place. */
const refusedPlan = (plan: Plan, month: number, ctx: Context): Plan => {
  const held = holdOurs(allDone(ctx), month, ctx);
  const sold: Sold = {
    proceeds: recipe(scrapValue),
    pieces: [recipe(scrapped, month)],
    awaited: recipe(atOnce),
  };
  const cheapest = nextAfterEnd(ctx);
  if (cheapest !== null) {
    const next = replacedAt(cheapest, month, allDone(ctx), held, sold, ctx);
    return {
      ...plan,
      pieces: [...next.pieces, ...(next.changeOver?.pieces ?? [])],
      changeOver: null,
      valueAt: (at, m) => (m < month ? all(scrapValue(at)) : next.valueAt(at, m)),
      toCome: next.toCome,
      owedAt: next.owedAt,
    };
  }
  return {
    ...plan,
    pieces: [...held, ...sold.pieces, ...sellingPays(month, sold).pieces, recipe(gettingAbout, month + 1)],
    changeOver: null,
    valueAt: (at, m) => all(m < month ? scrapValue(at) : 0),
    toCome: (at, m) => all(m < month ? presentUnearnedAt(m, at) : 0),
    owedAt: (at, m) => {
      const loan = presentLoan(at);
      return m < month && loan ? owedAt(loan, m) : 0;
    },
  };
};

/** Rebuilt, its papers are or are not given; expected, the two count by their chances. */
const mayBeRefused = (plan: Plan, course: Course, ctx: Context): Plan => {
  const { claim } = claimOf(ctx.inputs, ctx.facts);
  if (course.deed !== 'rebuild' || !claim.rebuild) return plan;
  const times = refusal(ctx);
  if (times === 0) return plan;
  const month = Math.min(ctx.horizon - 1, Math.max(1, Math.ceil(claim.rebuild.monthsOff)));
  const refused = refusedPlan(plan, month, ctx);
  if (times === 1) return refused;
  const mixed = (at: Context, given: Amounts, not: Amounts): Amounts => {
    const share = refusal(at);
    return (reading) => (1 - share) * given(reading) + share * not(reading);
  };
  const { changeOver } = plan;
  return {
    ...plan,
    pieces: [
      ...plan.pieces.map((piece) => recipe(ifGiven, piece)),
      ...refused.pieces.map((piece) => recipe(ifRefused, piece)),
    ],
    changeOver: changeOver && {
      month: changeOver.month,
      pieces: changeOver.pieces.map((piece) => recipe(ifGiven, piece)),
      awaited: (at) => awaitedBy(1 - refusal(at), changeOver.awaited(at)),
      share: changeOver.share,
    },
    valueAt: (at, m) => mixed(at, plan.valueAt(at, m), refused.valueAt(at, m)),
    toCome: (at, m) => mixed(at, plan.toCome(at, m), refused.toCome(at, m)),
    owedAt: (at, m) => {
      const share = refusal(at);
      return (1 - share) * plan.owedAt(at, m) + share * refused.owedAt(at, m);
    },
  };
};

/** The day of a course, and what goes on after it. */
const joined = (id: string, label: string, plan: Plan, course: Course, structure: Context): Plan => {
  const { how, deed } = course;
  const run = mayBeRefused(plan, course, structure);
  const work = deed === 'left' ? 'left' : deed === 'safe' ? 'patched' : 'mended';
  // Only a wreck that is rebuilt stands still for a while and is insured anew: every other course leaves it to run alike.
  const then = (piece: Piece): Piece =>
    deed !== 'rebuild' && (isRunning(piece) || piece.by === neededWork)
      ? piece
      : recipe(goingOn, how, deed, piece);
  const at = (ctx: Context): Context => afterDay(ctx, course);
  return {
    ...run,
    id,
    label,
    work,
    pieces: [...dayOf(course), ...run.pieces.map(then)],
    changeOver: run.changeOver && {
      month: run.changeOver.month,
      pieces: run.changeOver.pieces.map(then),
      awaited: (ctx) => run.changeOver?.awaited(at(ctx)) ?? null,
      share: run.changeOver.share === WHOLE ? WHOLE : (ctx) => run.changeOver?.share(at(ctx)) ?? WHOLE(),
    },
    awaited: (ctx) => run.awaited(at(ctx)),
    valueAt: (ctx, m) => run.valueAt(at(ctx), m),
    toCome: (ctx, m, lookEnds) => run.toCome(at(ctx), m, lookEnds),
    owedAt: (ctx, m) => run.owedAt(at(ctx), m),
  };
};

/**
 * The course, then kept to the horizon.
 *
 * @param ctx for what there is, not for how much: that a course changes a vehicle changes none of it
 */
export const keepCourse = (course: Course, id: string, label: string, ctx: Context): Plan => {
  const done = allDone(ctx);
  const plan = mayEnd(keepPlan(id, label, 'mended', done, ctx), ctx.horizon, done, ctx);
  return joined(id, label, plan, course, ctx);
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
  return joined(id, label, laterPlan(index, month, ctx), course, ctx);
};
