import type { Contract, Sink } from '../../cashflow/posting.ts';
import type { Inputs } from '../../scenario/inputs/inputs.ts';
import { replacedAt } from './changeOver.ts';
import { type Content, contentOf, inOrder } from './contents.ts';
import type { Context } from './context.ts';
import { chanceOfEnd, endsIn } from './endOfLife.ts';
import { gettingAbout } from './gettingAbout.ts';
import type { Treatments } from './neededWork.ts';
import type { Plan } from './plan.ts';
import { holdPresent, owedUntilPaid, payOff, presentLoan } from './presentVehicle.ts';
import { soldWalking } from './retirement.ts';
import { type Awaited, stillToPay } from './selling.ts';

/** A contract whose postings count for a part: in month m for `share(m)`, which changes only after the months given. */
const shared =
  (contract: Contract, share: (month: number) => number, changes: readonly number[]): Contract =>
  (sink) => {
    const part: Sink = {
      post(line, month, counted, cash, shop) {
        const s = share(month);
        if (s !== 0) sink.post(line, month, counted * s, cash * s, shop * s);
      },
      series(line, from, to, levels, counted, cash, shop) {
        for (let first = from; first <= to; ) {
          const last = first === to ? to : Math.min(to, ...changes.filter((month) => month >= first));
          const s = share(first);
          if (s !== 0) sink.series(line, first, last, levels, counted * s, cash * s, shop * s);
          first = last + 1;
        }
      },
      time: sink.time && ((line, month, hours) => sink.time?.(line, month, hours * share(month))),
      stands:
        sink.stands &&
        ((month, stops, days) => sink.stands?.(month, stops * share(month), days * share(month))),
    };
    contract(part);
  };

/** Money that is awaited with a chance. */
export const awaitedBy = (chance: number, awaited: Awaited | null): Awaited | null =>
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

const said = (offer: Inputs['replacement'][number]): Content =>
  contentOf(
    offer,
    '',
    () => null,
    () => null,
  );

/**
 * Which replacement follows once it has come to its end: the cheapest there is to buy, of equals by what is said of them
 * and not by their names; null where there is none.
 */
export const nextAfterEnd = ({ replacement }: Inputs): number | null =>
  replacement
    .map((offer, index) => ({ offer, index }))
    .sort((a, b) => a.offer.price - b.offer.price || inOrder(said(a.offer), said(b.offer)))[0]?.index ?? null;

/** What follows once it has come to its end: the cheapest replacement, or doing without. */
const followedBy = (month: number, treatments: Treatments, ctx: Context) => {
  const { doingWithout } = ctx.inputs;
  const sold = soldWalking(month, 'broken', treatments, ctx);
  const cheapest = nextAfterEnd(ctx.inputs);
  if (cheapest !== null) {
    const next = replacedAt(cheapest, month, treatments, [], sold, ctx);
    const { valueAt, toCome, owedAt } = next;
    return { contracts: next.changeOver?.contracts ?? [], valueAt, toCome, owedAt };
  }
  const about = doingWithout ? [gettingAbout(doingWithout, month + 1, ctx)] : [];
  const loan = presentLoan(ctx);
  const off = payOff(loan, month, sold.awaited, ctx);
  const toCome: Plan['toCome'] = (at, reading) => stillToPay(sold.awaited, at, reading, ctx);
  return {
    contracts: [...sold.contracts, ...off.contracts, ...about],
    valueAt: () => 0,
    toCome,
    owedAt: (at: number) => owedUntilPaid(loan, off.comes, at),
  };
};

/**
 * A plan that holds the present vehicle to the end of month `until`, when the vehicle may come to its end by then: in a
 * drawn future it does or does not; expected, the plan counts for the chance that it is still there, and what follows
 * each possible end for the chance of that end. What month `until` finds out comes before the change that is planned at its
 * end; on the last day of all nobody asks any more. A forced change is paid from what there is: no card is counted for it.
 */
export const mayEnd = (plan: Plan, until: number, treatments: Treatments, ctx: Context): Plan => {
  if (ctx.inputs.vehicle.ends.length === 0 || until === 0) return plan;
  const before = until < ctx.horizon ? until + 1 : until;
  if (ctx.future.kind === 'drawn') {
    const end = endsIn(ctx, before);
    if (end === null) return plan;
    const next = followedBy(end, treatments, ctx);
    return {
      ...plan,
      contracts: [...holdPresent(treatments, end, presentLoan(ctx), ctx), ...next.contracts],
      changeOver: null,
      valueAt: (at, reading) => (at < end ? plan.valueAt(at, reading) : next.valueAt(at, reading)),
      toCome: (at, reading) => (at < end ? plan.toCome(at, reading) : next.toCome(at, reading)),
      owedAt: (at) => (at < end ? plan.owedAt(at) : next.owedAt(at)),
    };
  }
  const chances = chanceOfEnd(ctx.inputs.vehicle, until);
  const months: number[] = [];
  for (let m = 1; m < before; m++) if ((chances[m] as number) > 0) months.push(m);
  /** The chance that it is still there after the ends of the months before this one. */
  const stillThere = new Float64Array(ctx.horizon + 2).fill(1);
  for (let m = 1; m < stillThere.length; m++)
    stillThere[m] = (stillThere[m - 1] as number) * (m - 1 < before ? 1 - (chances[m - 1] ?? 0) : 1);
  const there = (month: number): number => stillThere[month] as number;
  const ends = months.map((month) => ({
    month,
    chance: there(month) * (chances[month] as number),
    ...followedBy(month, treatments, ctx),
  }));
  const mixed = (at: number, own: number, then: (end: (typeof ends)[number]) => number): number =>
    ends.reduce((sum, end) => (end.month <= at ? sum + end.chance * then(end) : sum), there(at + 1) * own);
  return {
    ...plan,
    contracts: [
      ...plan.contracts.map((contract) => shared(contract, there, months)),
      ...ends.flatMap((end) => end.contracts.map((contract) => shared(contract, () => end.chance, []))),
    ],
    changeOver: plan.changeOver && {
      month: plan.changeOver.month,
      contracts: plan.changeOver.contracts.map((contract) => shared(contract, () => there(before), [])),
      awaited: awaitedBy(there(before), plan.changeOver.awaited),
    },
    valueAt: (at, reading) => mixed(at, plan.valueAt(at, reading), (end) => end.valueAt(at, reading)),
    toCome: (at, reading) => mixed(at, plan.toCome(at, reading), (end) => end.toCome(at, reading)),
    owedAt: (at) => mixed(at, plan.owedAt(at), (end) => end.owedAt(at)),
  };
};
