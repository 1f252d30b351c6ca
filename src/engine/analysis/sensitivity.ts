/** What each number does to the answer: where it tips, and how far it swings. Each side's best way is chosen anew. */
import type { ByReading } from '../cashflow/posting.ts';
import { contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import { bothTyped, type Typing, typedIn, typingOf } from '../scenario/file/rewrite.ts';
import type { Quantity, Scenario } from '../scenario/inputs/scenario.ts';
import type { Rivals } from '../valuation/leastCrossings.ts';
import { breakEvenOf, byNearness, type DifferenceAt, type RivalsAt, statusOf } from './breakEven.ts';
import { breakEvenLine } from './breakEvenLine.ts';
import {
  type CompareAt,
  cheaperCost,
  comparisonFrom,
  differenceBetween,
  leastCosts,
  type Sides,
} from './leastCosts.ts';
import type { BreakEven, BreakEvenLine, Swing } from './sensitivityView.ts';
import { swingOf, widestFirst } from './swings.ts';

export interface Sensitivity {
  /** The number that tips nearest to today's value first. */
  readonly breakEvens: readonly BreakEven[];
  /** The widest first. */
  readonly swings: readonly Swing[];
  readonly line: BreakEvenLine | null;
}

type Costs = Sides<ByReading<number>>;

/** Differences below this share of the cheaper cost are none. */
const GRAIN = 1 / 40_000;

/** What is no difference, in currency units; above nil. */
export const grainOf = (sides: Costs): number => Math.max(Number.MIN_VALUE, GRAIN * cheaperCost(sides));

/** A sign that turns is a root where D is less than this share of the cheaper cost; a jump otherwise. */
const ROOT = 1e-4;

const DISTANCE = 'household.distanceAYear';

/** The two numbers of the break-even line: those asked for, or the distance driven and what weighs most besides. */
const lineBetween = ({ facts, quantities }: Scenario, widest: readonly Swing[]): (Quantity | undefined)[] => {
  const named = (key: string) => quantities.find((quantity) => quantity.key === key);
  if (facts.twoWay) return facts.twoWay.map(named);
  return [
    named(DISTANCE),
    widest.find(({ quantity }) => quantity.key !== DISTANCE && !quantity.integer)?.quantity,
  ];
};

/** A number moved by itself. */
interface Moved {
  readonly typing: Typing;
  readonly swing: Swing;
  readonly tip: BreakEven;
}

/** What is no difference, and what is one, in currency units. */
interface Fineness {
  readonly grain: number;
  readonly unit: number;
}

/** Where nothing can be typed the answer stays what it is. */
const nothingTyped = (today: number): Rivals => ({ open: '', first: [], second: [], lead: today });

/** Both sides' least cost once a figure stands in the file; null where the file is refused. */
const costsTyped = ({ written }: Scenario, quantity: Quantity, value: number): Costs | null => {
  const typed = written && typedIn(written, { quantity, value });
  return typed && leastCosts(contextOf(typed.inputs, typed.facts, EXPECTED, 'unrounded'));
};

/** Beside a place where the sign turns: the whole numbers next to it, or as near as the digits of its scale go. */
const beside = ({ integer, min, max, value }: Quantity, at: number): readonly [number, number] => {
  // A whole number is named on the far side from today's value; the sign turns towards today.
  if (integer) return value >= at ? [at, at + 1] : [at - 1, at];
  const aside = Math.max(Math.abs(at), (max - min) * 1e-6) * 1e-9;
  return [Math.max(min, at - aside), Math.min(max, at + aside)];
};

/** The very end of a range, where the one value beyond a jump is a limit and no answer: an hour that costs nothing. */
const atAnEnd = ({ integer, min, max }: Quantity, at: number): boolean =>
  !integer && Math.min(at - min, max - at) < 1e-9 * (max - min);

/**
 * What survives being typed into the file: at a root the two sides then cost the same, beside a jump or a whole number the
 * sign turns. What the file would refuse is no tip.
 */
const typedBack = (scenario: Scenario, tip: BreakEven): BreakEven => {
  const { quantity } = tip;
  const turns = (at: number): boolean => {
    const [low, high] = beside(quantity, at).map((value) => costsTyped(scenario, quantity, value));
    return (
      !!low &&
      !!high &&
      Math.sign(differenceBetween(low, 'counted')) !== Math.sign(differenceBetween(high, 'counted'))
    );
  };
  const roots = tip.roots.flatMap((root): BreakEven['roots'][number][] => {
    if (!quantity.integer && root.kind !== 'jump') {
      const costs = costsTyped(scenario, quantity, root.at);
      if (!costs) return [];
      if (Math.abs(differenceBetween(costs, 'counted')) < ROOT * cheaperCost(costs)) return [root];
    }
    return !atAnEnd(quantity, root.at) && turns(root.at) ? [{ ...root, kind: 'jump' }] : [];
  });
  return {
    ...tip,
    roots,
    status: roots.length < tip.roots.length ? statusOf(roots.length) : tip.status,
  };
};

/** None where a number cannot be typed, or where typing what stands there changes the answer. */
const movedBy = (
  scenario: Scenario,
  quantity: Quantity,
  compare: CompareAt,
  today: number,
  { grain, unit }: Fineness,
): Moved[] => {
  const typing = typingOf(scenario, quantity);
  if (typing === null) return [];
  const place = typing.place === null ? undefined : [typing.place];
  const known = new Map<number, Rivals>();
  const rivals: RivalsAt = (value) => {
    const before = known.get(value);
    if (before) return before;
    const ground = typing.at(value);
    const now = ground ? compare(ground, place) : nothingTyped(today);
    known.set(value, now);
    return now;
  };
  const f: DifferenceAt = (value) => rivals(value).lead;
  if (Math.abs(f(quantity.value) - today) > grain) return [];
  const swing = swingOf(typing.quantity, f);
  return [{ typing, swing, tip: typedBack(scenario, breakEvenOf(typing.quantity, rivals, unit)) }];
};

/**
 * Every number of the file moved by itself. What is a fact and was looked up is left alone, and so is what has no place of
 * its own in this file.
 */
export const sensitivityOf = (scenario: Scenario, sides: Costs): Sensitivity => {
  const grain = grainOf(sides);
  const unit = ROOT * cheaperCost(sides);
  const today = differenceBetween(sides, 'counted');
  const compare = comparisonFrom(scenario);
  const { written } = scenario;
  const moved = scenario.quantities.flatMap((quantity) =>
    quantity.known ? [] : movedBy(scenario, quantity, compare, today, { grain, unit }),
  );
  const swings = widestFirst(
    moved.map(({ swing }) => swing),
    grain,
  );
  const [x, y] = lineBetween(scenario, swings);
  const [across, upwards] = [x, y].map((one) => moved.find(({ typing }) => typing.quantity === one)?.typing);
  const bothAt = (a: Typing, b: Typing) => (aValue: number, bValue: number) => {
    const ground = bothTyped(scenario, a, aValue, b, bValue);
    return ground ? compare(ground) : nothingTyped(today);
  };
  const between = (a: Typing, b: Typing): BreakEvenLine =>
    breakEvenLine(a.quantity, b.quantity, bothAt(a, b), {
      unit,
      allowed: (aValue, bValue) =>
        written !== null &&
        typedIn(written, { quantity: a.quantity, value: aValue }, { quantity: b.quantity, value: bValue }) !==
          null,
    });
  return {
    breakEvens: moved.map(({ tip }) => tip).sort(byNearness),
    swings,
    line: across && upwards ? between(across, upwards) : null,
  };
};
