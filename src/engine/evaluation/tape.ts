import type { ByReading, Contract, Sink } from '../cashflow/posting.ts';
import { monthlySink } from '../cashflow/sinks.ts';
import { refusal } from '../plans/collision/retention.ts';
import { type Context, inFuture, type Still, type Turns } from '../plans/vehicle/context.ts';
import { endsIn } from '../plans/vehicle/givenUp.ts';
import type { Way } from '../plans/vehicle/option.ts';
import { type Plan, WHOLE } from '../plans/vehicle/plan.ts';
import type { Piece } from '../plans/vehicle/recipe.ts';
import { cardFor, discountsOf, endPieces, presentCostOf } from './project.ts';
import { type PlanRecorded, planRecorded, type Reads, type Recorded, recorded } from './recording.ts';
import { LISTENING, Sums } from './sums.ts';

/** A piece that something moves: worked out once for one set of numbers, whichever plans hold it. */
interface Moved {
  readonly piece: Piece;
  readonly sums: Sums;
  at: Context | null;
  contracts: readonly Contract[];
}

/** A part of a plan that pays on one day: what nothing moves, added up once, and the rest. */
interface Part {
  readonly fixed: Sums;
  readonly moved: readonly Moved[];
}

/** A plan on the tape. */
export interface Compiled {
  readonly plan: Plan;
  /** Contracts that nothing moves. */
  readonly fixed: readonly Contract[];
  /** Null where the plan itself is another one for other numbers: then it is worked out as a whole. */
  readonly parts: {
    readonly today: Part;
    readonly change: Part;
    readonly end: Part;
    /** Where the discount rate moves: what nothing else moves, by month. */
    readonly flows: ByReading<Float64Array> | null;
  } | null;
}

/** Plans at numbers that differ from those they were compiled for in some keys only, in any future. */
export interface Tape {
  /** What is known of the base, for contexts of these numbers. */
  readonly still: Still;
  /** The plan of an option as these numbers and this future have it. */
  readonly planOf: (way: Way, ctx: Context) => Compiled;
  /**
   * Its net present cost, unrounded.
   *
   * @param besides is shown what moves of it, and the card; not what `fixed` holds
   */
  readonly costOf: (compiled: Compiled, ctx: Context, besides?: Sink | null) => ByReading<number>;
}

const RATE = 'household.moneyEarns';
const HORIZON = 'household.lookAhead';

const touches = ({ keys, luck }: Reads, moving: readonly string[]): boolean =>
  luck || moving.some((key) => keys.has(key));

const turnsOf = (ctx: Context): Turns => ({
  ends: endsIn(ctx, ctx.horizon),
  refused: ctx.inputs.claim !== null && ctx.inputs.claim.rebuild !== null && refusal(ctx) === 1,
});

const worth = (flows: Float64Array, discounts: Float64Array): number => {
  let sum = 0;
  for (let m = 0; m < flows.length; m++) sum += (flows[m] as number) * (discounts[m] as number);
  return sum;
};

/** A piece, and what it read; worked out at the base. */
interface Recording {
  readonly contracts: readonly Contract[];
  readonly reads: Reads;
  /** What it comes to at the base, by the month whose cash is asked for. */
  readonly sums: Map<number, Sums>;
}

/** Plans recorded at one set of numbers, which serve whatever moves. */
export interface Recordings {
  /** For numbers that differ from the base in these inputs only, by their dotted keys. */
  readonly moving: (keys: readonly string[]) => Tape;
}

/**
 * Records plans: what a piece reads of the inputs is noted when it is first worked out, so a piece that reads none of the
 * numbers that move, and no luck, comes to the same whatever they are, and is added up once. Nothing has to be declared;
 * whatever is not known to stand still is worked out anew.
 *
 * @param base its inputs must not be changed in place
 */
export const recordingsOf = (base: Context): Recordings => {
  const discounts = discountsOf(base);
  const pieces = new Map<number, Recording>();
  const results = new Map<string, Recorded<unknown>>();
  const plans = new Map<string, PlanRecorded<Plan>>();
  const ends = new WeakMap<Plan, readonly Piece[]>();

  const recordingOf = (piece: Piece, at: Context): Recording => {
    const known = pieces.get(piece.id);
    if (known) return known;
    const { result, reads } = recorded((ctx) => {
      const contracts = piece.from(ctx);
      // What a contract reads only when it posts is read now.
      for (const contract of contracts) contract(LISTENING);
      return contracts;
    }, at);
    const recording = { contracts: result, reads, sums: new Map<number, Sums>() };
    pieces.set(piece.id, recording);
    return recording;
  };

  const sumsOf = ({ contracts, sums }: Recording, day: number): Sums => {
    const known = sums.get(day);
    if (known) return known;
    const all = new Sums(day, discounts);
    for (const contract of contracts) contract(all);
    sums.set(day, all);
    return all;
  };

  const endOf = (plan: Plan): readonly Piece[] => {
    const pieces = ends.get(plan) ?? endPieces(plan);
    ends.set(plan, pieces);
    return pieces;
  };

  const planRecording = (way: Way, turns: string, taken: Turns, at: Context): PlanRecorded<Plan> => {
    const always = String(way.key);
    const key = `${turns} ${way.key}`;
    const known = plans.get(always) ?? plans.get(key) ?? planRecorded(way.build, taken, at);
    plans.set(known.asksTurns ? key : always, known);
    return known;
  };

  const moving = (keys: readonly string[]): Tape => {
    const still: Still = {
      of: <T>(name: string, compute: (ctx: Context) => T) => {
        const known = (results.get(name) as Recorded<T> | undefined) ?? recorded(compute, base);
        results.set(name, known);
        return touches(known.reads, keys) ? null : known;
      },
    };
    const rateMoves = keys.includes(RATE);
    const slots = new Map<string, Moved>();
    const compiled = new Map<string, Compiled | null>();

    const slotOf = (piece: Piece, day: number): Moved => {
      const key = `${day} ${piece.id}`;
      const known = slots.get(key);
      if (known) return known;
      const slot: Moved = { piece, sums: new Sums(day, discounts), at: null, contracts: [] };
      slots.set(key, slot);
      return slot;
    };

    const partOf = (all: readonly Piece[], day: number, at: Context, fixed: Contract[]): Part => {
      const sums = new Sums(day, discounts);
      const moved: Moved[] = [];
      for (const piece of all) {
        const recording = recordingOf(piece, at);
        if (touches(recording.reads, keys)) moved.push(slotOf(piece, day));
        else {
          sums.add(sumsOf(recording, day));
          fixed.push(...recording.contracts);
        }
      }
      return { fixed: sums, moved };
    };

    const whole = (plan: Plan): Compiled => ({ plan, fixed: [], parts: null });

    const compiledOf = (plan: Plan, at: Context): Compiled => {
      const fixed: Contract[] = [];
      const today = partOf(plan.pieces, 0, at, fixed);
      const change = partOf(plan.changeOver?.pieces ?? [], plan.changeOver?.month ?? -1, at, fixed);
      const end = partOf(endOf(plan), -1, at, fixed);
      const flows = rateMoves ? flowsOf(fixed, base.horizon) : null;
      return { plan, fixed, parts: { today, change, end, flows } };
    };

    let latest: { readonly ctx: Context; readonly turns: Turns; readonly key: string } | null = null;
    const turnsAt = (ctx: Context) => {
      if (latest?.ctx === ctx) return latest;
      const turns = turnsOf(ctx);
      latest = { ctx, turns, key: `${turns.ends} ${turns.refused}` };
      return latest;
    };

    const planOf: Tape['planOf'] = (way, ctx) => {
      const always = String(way.key);
      const surely = compiled.get(always);
      if (surely) return surely;
      if (surely === null) return whole(way.build(ctx));
      const { turns, key: taken } = turnsAt(ctx);
      const key = `${taken} ${way.key}`;
      const before = compiled.get(key);
      if (before) return before;
      if (before === null) return whole(way.build(ctx));
      const at = inFuture(ctx.future, base);
      const { result, reads, asksTurns } = planRecording(way, taken, turns, at);
      // A change that comes by a chance is worked out as a whole: in drawn futures there is none.
      const chancy = result.changeOver !== null && result.changeOver.share !== WHOLE;
      const now = touches(reads, keys) ? null : chancy ? whole(result) : compiledOf(result, at);
      compiled.set(asksTurns ? key : always, now);
      return now ?? whole(way.build(ctx));
    };

    const total = new Sums(-1, discounts);
    const days = { today: { cash: 0, shop: 0 }, change: { cash: 0, shop: 0 } };

    const addPart = (
      { fixed, moved }: Part,
      day: { cash: number; shop: number } | null,
      ctx: Context,
      v: Float64Array,
      besides: Sink | null,
    ): void => {
      if (!rateMoves) total.add(fixed);
      let [cash, shop] = [fixed.dayCash, fixed.dayShop];
      for (const slot of moved) {
        const { sums } = slot;
        if (slot.at !== ctx) {
          slot.at = ctx;
          slot.contracts = slot.piece.from(ctx);
          sums.clear(v);
          for (const contract of slot.contracts) contract(sums);
        }
        if (besides !== null) for (const contract of slot.contracts) contract(besides);
        total.add(sums);
        cash += sums.dayCash;
        shop += sums.dayShop;
      }
      if (day) {
        day.cash = cash;
        day.shop = shop;
      }
    };

    const costOf: Tape['costOf'] = ({ plan, parts }, ctx, besides = null) => {
      if (parts === null) return presentCostOf(plan, ctx, besides);
      const { today, change, end, flows } = parts;
      const v = flows ? discountsOf(ctx) : discounts;
      total.clear(v);
      if (flows) {
        total.counted = worth(flows.counted, v);
        total.cash = worth(flows.cash, v);
        total.shop = worth(flows.shop, v);
      }
      addPart(today, days.today, ctx, v, besides);
      addPart(change, days.change, ctx, v, besides);
      addPart(end, null, ctx, v, besides);
      for (const contract of cardFor(plan, days, ctx).contracts) {
        contract(total);
        if (besides !== null) contract(besides);
      }
      const { counted, cash, shop } = total;
      return { counted, cash, shop };
    };

    // Another horizon is another plan, and other levels: nothing stands still.
    return keys.includes(HORIZON)
      ? { planOf: (way, ctx) => whole(way.build(ctx)), costOf, still }
      : { planOf, costOf, still };
  };

  return { moving };
};

const flowsOf = (contracts: readonly Contract[], horizon: number): ByReading<Float64Array> => {
  const sink = monthlySink(horizon);
  for (const contract of contracts) contract(sink);
  return sink.flows;
};
