import type { Contract, Sink } from '../../cashflow/posting.ts';
import type { Replacement } from '../../scenario/inputs/inputs.ts';
import { type Amounts, NOTHING } from './byReading.ts';
import { replacedAt, sellingPays } from './changeOver.ts';
import { type Content, contentOf, inOrder } from './contents.ts';
import { type Context, onceFor } from './context.ts';
import { chanceOfEnd, endsIn } from './endOfLife.ts';
import { gettingAbout } from './gettingAbout.ts';
import { LIKE_OURS } from './likeOurs.ts';
import type { Treatments } from './neededWork.ts';
import type { Plan, Standing } from './plan.ts';
import { holdPresent } from './presentVehicle.ts';
import { type Piece, recipe } from './recipe.ts';
import { soldWalking } from './retirement.ts';
import type { Awaited } from './selling.ts';

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

const said = (offer: Replacement): Content =>
  contentOf(
    offer,
    '',
    () => null,
    () => null,
  );

/**
 * What is bought once it has come to its end: of the replacements the file names the cheapest to buy, of equals by what is
 * said of them and not by their names; another one like ours where it names none; null where there is neither. One that is
 * cheap to buy and dear to run is no answer to an end, so it is not asked for its price.
 */
export const nextAfterEnd = ({ inputs }: Context): number | null => {
  const { replacement, anotherLikeOurs } = inputs;
  if (replacement.length === 0) return anotherLikeOurs === null ? null : LIKE_OURS;
  // Of one there is no choice, whatever it costs.
  if (replacement.length === 1) return 0;
  const [cheapest] = replacement
    .map((offer, index) => ({ index, offer }))
    .sort((a, b) => a.offer.price - b.offer.price || inOrder(said(a.offer), said(b.offer)));
  return cheapest?.index ?? null;
};

/** What follows once it has come to its end: the cheapest replacement, or doing without. */
const followedBy = (month: number, treatments: Treatments, ctx: Context): Standing & Pick<Plan, 'pieces'> => {
  const sold = soldWalking(month, 'broken', treatments);
  const cheapest = nextAfterEnd(ctx);
  if (cheapest !== null) {
    const next = replacedAt(cheapest, month, treatments, [], sold, ctx);
    const { valueAt, toCome, owedAt } = next;
    return { pieces: next.changeOver?.pieces ?? [], valueAt, toCome, owedAt };
  }
  const off = sellingPays(month, sold);
  return {
    pieces: [...sold.pieces, ...off.pieces, recipe(gettingAbout, month + 1)],
    valueAt: () => NOTHING,
    toCome: off.toCome,
    owedAt: off.owedAt,
  };
};

/** Expected: the months whose inspection may end a vehicle that is held to `until`, and the chance of each. */
interface Ends {
  readonly before: number;
  readonly chances: Float64Array;
  /** The chance that it is still there after the ends of the months before this one. */
  readonly there: Float64Array;
}

const endsOf = (until: number, ctx: Context): Ends =>
  onceFor(ctx, `ends by ${until}`, () => endsAnew(until, ctx));

const endsAnew = (until: number, ctx: Context): Ends => {
  const before = until < ctx.horizon ? until + 1 : until;
  const chances = chanceOfEnd(ctx.inputs.vehicle, until);
  const there = new Float64Array(ctx.horizon + 2).fill(1);
  for (let m = 1; m < there.length; m++)
    there[m] = (there[m - 1] as number) * (m - 1 < before ? 1 - (chances[m - 1] ?? 0) : 1);
  return { before, chances, there };
};

const monthsOf = ({ before, chances }: Ends): number[] => {
  const months: number[] = [];
  for (let m = 1; m < before; m++) if ((chances[m] as number) > 0) months.push(m);
  return months;
};

const chanceIn = ({ there, chances }: Ends, month: number): number =>
  (there[month] as number) * (chances[month] ?? 0);

/** Contracts for as long as the vehicle is still there. */
const whileThere = (ctx: Context, piece: Piece, until: number): Contract[] => {
  const ends = endsOf(until, ctx);
  const months = monthsOf(ends);
  return piece.from(ctx).map((contract) => shared(contract, (m) => ends.there[m] as number, months));
};

/** Contracts of a change that is planned at the end of month `until`, if the vehicle is there by then. */
const ifThereThen = (ctx: Context, piece: Piece, until: number): Contract[] => {
  const { there, before } = endsOf(until, ctx);
  return piece.from(ctx).map((contract) => shared(contract, () => there[before] as number, []));
};

/** Contracts of what follows an end in a month. */
const ifEndedIn = (ctx: Context, piece: Piece, month: number, until: number): Contract[] => {
  const chance = chanceIn(endsOf(until, ctx), month);
  return piece.from(ctx).map((contract) => shared(contract, () => chance, []));
};

/** In a drawn future it ends in month `end`. */
const endedIn = (end: number, plan: Plan, treatments: Treatments, ctx: Context): Plan => {
  const next = followedBy(end, treatments, ctx);
  return {
    ...plan,
    pieces: [...holdPresent(treatments, end, ctx), ...next.pieces],
    changeOver: null,
    valueAt: (at, m) => (m < end ? plan : next).valueAt(at, m),
    toCome: (at, m) => (m < end ? plan : next).toCome(at, m),
    owedAt: (at, m) => (m < end ? plan : next).owedAt(at, m),
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
  if (ctx.future.kind === 'drawn') {
    const end = endsIn(ctx, until < ctx.horizon ? until + 1 : until);
    return end === null ? plan : endedIn(end, plan, treatments, ctx);
  }
  const ends = monthsOf(endsOf(until, ctx)).map((month) => ({
    month,
    ...followedBy(month, treatments, ctx),
  }));
  /** By how much each counts at the end of a month: the plan itself, and what followed each end so far. */
  const sharesAt = (at: Context, m: number) => {
    const now = endsOf(until, at);
    return [
      { share: now.there[m + 1] as number, standing: plan as Standing },
      ...ends
        .filter(({ month }) => month <= m)
        .map((end) => ({ share: chanceIn(now, end.month), standing: end as Standing })),
    ];
  };
  const mixed = (at: Context, m: number, of: (standing: Standing) => Amounts): Amounts => {
    const parts = sharesAt(at, m).map(({ share, standing }) => ({ share, amounts: of(standing) }));
    return (reading) => parts.reduce((total, { share, amounts }) => total + share * amounts(reading), 0);
  };
  const { changeOver } = plan;
  return {
    ...plan,
    pieces: [
      ...plan.pieces.map((piece) => recipe(whileThere, piece, until)),
      ...ends.flatMap(({ month, pieces }) => pieces.map((piece) => recipe(ifEndedIn, piece, month, until))),
    ],
    changeOver: changeOver && {
      month: changeOver.month,
      pieces: changeOver.pieces.map((piece) => recipe(ifThereThen, piece, until)),
      awaited: (at) => {
        const { there, before } = endsOf(until, at);
        return awaitedBy(there[before] as number, changeOver.awaited(at));
      },
    },
    valueAt: (at, m) => mixed(at, m, (standing) => standing.valueAt(at, m)),
    toCome: (at, m) => mixed(at, m, (standing) => standing.toCome(at, m)),
    owedAt: (at, m) =>
      sharesAt(at, m).reduce((total, { share, standing }) => total + share * standing.owedAt(at, m), 0),
  };
};
