/** Ways that hold ours, which a big bill or an inspection may end before their time. */
import type { ByReading, Contract, Line, Sink } from '../../cashflow/posting.ts';
import { bigLines, NO_BIG_BILLS, priced } from './bigBills.ts';
import { NOTHING } from './byReading.ts';
import { replacedAt, sellingPays } from './changeOver.ts';
import type { Context } from './context.ts';
import { chanceOfEnd, ENDS } from './endOfLife.ts';
import { gettingAbout } from './gettingAbout.ts';
import type { Treatments } from './neededWork.ts';
import { fixedForOurs, lossAt, ourLasting, ourMonth, oursDrawn } from './ours.ts';
import type { Plan } from './plan.ts';
import { holdPresent } from './presentVehicle.ts';
import { type Piece, recipe } from './recipe.ts';
import { soldWalking } from './retirement.ts';

type Shares = ByReading<number>;

const postShare = (
  sink: Sink,
  line: Line,
  month: number,
  amounts: ByReading<number>,
  share: Shares,
): void => {
  const { counted, cash, shop } = amounts;
  sink.post(line, month, counted * share.counted, cash * share.cash, shop * share.shop);
};

/**
 * Big bills met while ours is held to the end of a month, given that none ends it: those that are paid; on the last day of
 * all also what one that is not takes off its value. In a drawn future those that it says.
 */
const bigBillsMet = (ctx: Context, treatments: Treatments, until: number): Contract[] => {
  const { future, horizon } = ctx;
  const { paid, ended } = bigLines(ctx.facts.vehicleName);
  if (future.kind === 'expected')
    return [
      (sink) => {
        for (let m = 1; m <= until; m++) {
          const big = ourMonth(m, ctx);
          if (big === NO_BIG_BILLS) continue;
          sink.post(paid, m, big.paid.counted, big.paid.cash, big.paid.shop);
          if (big.hours !== 0) sink.time?.(paid, m, big.hours);
          if (m === horizon) postShare(sink, ended, m, lossAt(treatments, m, until, ctx), big.ends);
        }
      },
    ];
  const { paid: bills, over } = oursDrawn(ctx);
  return [
    (sink) => {
      for (const { month, bill } of bills) {
        // What is given up over it is not paid.
        if (month > until || month === future.givenUpIn) continue;
        const { counted, cash, shop, hours } = priced(bill, month, ctx);
        sink.post(paid, month, counted, cash, shop);
        if (hours !== 0) sink.time?.(paid, month, hours);
      }
      if (over !== horizon || until !== horizon) return;
      const { counted, cash, shop } = lossAt(treatments, horizon, until, ctx);
      sink.post(ended, horizon, counted, cash, shop);
    },
  ];
};

/**
 * Expected: what becomes of those that do not last, so that what is posted of holding ours may count as if all did. Each
 * giving up takes what walking away costs above going on, from then on; and of big bills they pay no more.
 */
const thatDoNotLast = (ctx: Context, treatments: Treatments, until: number): Contract[] => {
  const { paid, ended } = bigLines(ctx.facts.vehicleName);
  const { there, ends } = ourLasting(ctx);
  const { days } = ctx.inputs.vehicle.inAHurry;
  return [
    (sink) => {
      for (let m = 1; m <= until; m++) {
        const big = ourMonth(m, ctx);
        const gone: Shares = {
          counted: (there.counted[m - 1] as number) - 1,
          cash: (there.cash[m - 1] as number) - 1,
          shop: (there.shop[m - 1] as number) - 1,
        };
        if (gone.counted !== 0 || gone.shop !== 0) {
          postShare(sink, paid, m, big.paid, gone);
          if (big.hours !== 0) sink.time?.(paid, m, big.hours * gone.counted);
        }
        if (m === ctx.horizon) {
          const lost = lossAt(treatments, m, until, ctx);
          const { counted, cash, shop } = big.ends;
          postShare(sink, ended, m, lost, {
            counted: counted * gone.counted,
            cash: cash * gone.cash,
            shop: shop * gone.shop,
          });
          continue;
        }
        const now: Shares = {
          counted: ends.counted[m] as number,
          cash: ends.cash[m] as number,
          shop: ends.shop[m] as number,
        };
        if (now.counted === 0 && now.shop === 0) continue;
        postShare(sink, ended, m, lossAt(treatments, m, until, ctx), now);
        sink.stands?.(m, 0, now.counted * days);
      }
    },
  ];
};

/** Holding ours to the end of month `until`, with the big bills it meets. */
export const holdOurs = (treatments: Treatments, until: number, ctx: Context): Piece[] => [
  ...holdPresent(treatments, until, ctx),
  recipe(bigBillsMet, treatments, until),
];

/** The month before `until` in which a drawn future ends ours, by a bill or at an inspection; null where it does not. */
export const endsIn = (ctx: Context, until: number): number | null => {
  const { future, inputs } = ctx;
  if (future.kind !== 'drawn') return null;
  if (future.turns) return future.turns.ends !== null && future.turns.ends < until ? future.turns.ends : null;
  const { over } = oursDrawn(ctx);
  const byBill = over !== null && over < until ? over : null;
  if (inputs.vehicle.ends.length === 0) return byBill;
  const chances = chanceOfEnd(inputs.vehicle, until);
  const lives = future.turnsOut(ENDS);
  let alive = 1;
  for (let m = 1; m < (byBill ?? until); m++) {
    alive *= 1 - (chances[m] as number);
    if (lives > alive) return m;
  }
  return byBill;
};

/** In a drawn future it ends in month `end`, and what was cheapest beforehand follows. */
const endedIn = (end: number, plan: Plan, treatments: Treatments, ctx: Context): Plan => {
  const pieces = holdOurs(treatments, end, ctx);
  const sold = soldWalking(end, 'broken', treatments);
  const next = fixedForOurs(ctx).next[end] ?? null;
  if (next !== null) {
    const after = replacedAt(next, end, treatments, [], sold, ctx);
    const { changeOver, valueAt, toCome, owedAt } = after;
    return { ...plan, pieces, changeOver, valueAt, toCome, owedAt };
  }
  const off = sellingPays(end, sold);
  return {
    ...plan,
    pieces: [...pieces, ...sold.pieces, ...off.pieces, recipe(gettingAbout, end + 1)],
    changeOver: null,
    valueAt: (at, m) => (m < end ? plan.valueAt(at, m) : NOTHING),
    toCome: (at, m) => (m < end ? plan : off).toCome(at, m),
    owedAt: (at, m) => (m < end ? plan : off).owedAt(at, m),
  };
};

/**
 * A plan that holds ours to the end of month `until`, when it may come to its end by then. In a drawn future it does or
 * does not. Expected, the plan counts as if it lasted, with what those that do not last take above that; a change that is
 * planned at the end of the month comes only to those that are there by then, for what the month itself finds out comes
 * before it. On the last day of all no inspection is asked any more.
 */
export const mayEnd = (plan: Plan, until: number, treatments: Treatments, ctx: Context): Plan => {
  if (until === 0 || (ctx.inputs.vehicle.ends.length === 0 && ctx.inputs.household.bigBills === 0))
    return plan;
  if (ctx.future.kind === 'drawn') {
    const end = endsIn(ctx, until < ctx.horizon ? until + 1 : until);
    return end === null ? plan : endedIn(end, plan, treatments, ctx);
  }
  const pieces = [...plan.pieces, recipe(thatDoNotLast, treatments, until)];
  const { changeOver } = plan;
  if (changeOver === null) return { ...plan, pieces };
  const share = (at: Context): ByReading<number> => {
    const { counted, cash, shop } = ourLasting(at).there;
    return { counted: counted[until] as number, cash: cash[until] as number, shop: shop[until] as number };
  };
  return {
    ...plan,
    pieces,
    changeOver: { ...changeOver, share },
    valueAt: (at, m) => {
      const of = plan.valueAt(at, m);
      return m < until ? of : (reading) => of(reading) * share(at)[reading];
    },
    toCome: (at, m, lookEnds) => {
      const of = plan.toCome(at, m, lookEnds);
      return m < until ? of : (reading) => of(reading) * share(at)[reading];
    },
    owedAt: (at, m) => plan.owedAt(at, m) * (m < until ? 1 : share(at).counted),
  };
};
