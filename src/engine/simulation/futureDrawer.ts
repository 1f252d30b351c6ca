import { streamOf, uniformAt } from '../chance/counter.ts';
import { MOST_DIMENSIONS } from '../chance/directions.ts';
import type { Luck } from '../chance/failureTimes.ts';
import { type Points, scrambledSobol } from '../chance/sobol.ts';
import { contextOf, type DrawnFuture, EXPECTED } from '../plans/vehicle/context.ts';
import type { Memory } from '../plans/vehicle/memory.ts';
import { copulaOf } from '../quantity/rankCorrelation.ts';
import type { Scenario } from '../scenario/inputs/scenario.ts';
import { luckNamesOf } from './luckNames.ts';
import type { PartLuck, Unknowns } from './unknowns.ts';

/** A group of unknowns that count as one: a number, numbers that go together, or all the luck of a part. */
export interface Group {
  readonly what: string;
  readonly kind: 'number' | 'luck';
  readonly ranged: readonly number[];
  readonly turns: readonly number[];
  readonly parts: readonly number[];
}

/** One future: the ranged numbers' places in their ranges, and what every contract reads. */
export interface Drawer {
  /** Begins anew with a scramble, of this seed or another. */
  readonly restart: (seed: number, scramble: number) => void;
  /**
   * The future of a draw; with a group, that group is taken from the other draw of the same number. Good until the next
   * move, for what it draws from is moved.
   */
  readonly moveTo: (draw: number, other: Group | 'all' | null) => DrawnFuture;
  /** In (0, 1), correlated where the file says so: the place of each ranged number in its range. */
  readonly ranged: Float64Array;
  /** The future moved to, the present vehicle given up at the end of a month. */
  readonly givenUp: (month: number) => DrawnFuture;
}

/** Which coordinate of the point each unknown reads; -1: none, it is counted off. */
interface Layout {
  readonly dimensions: number;
  readonly turn: readonly number[];
  /** Of each part, by event: the exponential's coordinate and the bill's. */
  readonly part: readonly { readonly exponential: readonly number[]; readonly bill: readonly number[] }[];
}

/** Ranged numbers first, then chances, then each part's first failure, second, and so on, heaviest part first. */
const layoutOf = ({ ranged, turns, parts }: Unknowns, most: number): Layout => {
  let next = Math.min(ranged.length, most);
  const take = (): number => (next < most ? next++ : -1);
  const turn = turns.map(take);
  const part = parts.map(() => ({ exponential: [] as number[], bill: [] as number[] }));
  // As many failures as are likely to come; beyond, coordinates would be spent on what hardly happens.
  const likely = ({ expected }: PartLuck): number => Math.ceil(expected + 2 * Math.sqrt(expected)) + 1;
  const rounds = Math.max(0, ...parts.map(likely));
  for (let event = 0; event < rounds && next < most; event++)
    parts.forEach((one, p) => {
      if (event >= likely(one)) return;
      part[p]?.exponential.push(take());
      part[p]?.bill.push(one.billed ? take() : -1);
    });
  return { dimensions: Math.max(1, next), turn, part };
};

/** The numbers that go together, as positions among the ranged ones. */
export const togetherIn = ({ facts }: Scenario, { ranged }: Unknowns) =>
  facts.chance.correlations
    .map(({ a, b, rank }) => ({
      a: ranged.findIndex(({ key }) => key === a),
      b: ranged.findIndex(({ key }) => key === b),
      rank,
    }))
    .filter(({ a, b }) => a >= 0 && b >= 0);

/** Scrambles of the other draws that variance shares mix in: far from those of the draws themselves. */
const OTHER = 1_000_000;

/** Draws of different scrambles never share a count. */
const COUNT = 2 ** 22;

interface Sampling {
  /**
   * Coordinates taken from the points, heaviest unknowns first; with none every number is counted off, which is plain
   * pseudo-random sampling.
   */
  readonly most?: number;
}

/** A source of futures from one scramble of the points. */
export const drawerOf = (
  scenario: Scenario,
  unknowns: Unknowns,
  firstSeed: number,
  scramble: number,
  { most = MOST_DIMENSIONS }: Sampling = {},
): Drawer => {
  const { ranged, turns, parts } = unknowns;
  let seed = firstSeed;
  const layout = layoutOf(unknowns, most);
  const copula = copulaOf(ranged.length, togetherIn(scenario, unknowns));
  if ('refused' in copula) throw new RangeError('These ranges cannot go together as the file says');
  const source = () => {
    let points: Points | null = null;
    let number = 0;
    const point = new Float64Array(layout.dimensions);
    let draw = 0;
    let at = -1;
    return {
      point,
      restart: (scramble: number): void => {
        number = scramble;
        points = scrambledSobol(layout.dimensions, seed, number);
        at = -1;
      },
      moveTo: (to: number): void => {
        if (to !== at) points?.fill(to, point);
        at = to;
        draw = number * COUNT + to;
      },
      draw: () => draw,
    };
  };
  const own = source();
  const other = source();
  const restart = (newSeed: number, scramble: number): void => {
    seed = newSeed;
    own.restart(scramble);
    other.restart(OTHER + scramble);
  };
  restart(seed, scramble);
  const places = new Float64Array(ranged.length);
  const otherPlaces = new Float64Array(ranged.length);
  const fromOther = { ranged: new Uint8Array(ranged.length), turns: new Uint8Array(turns.length) };
  const partFromOther = new Uint8Array(parts.length);

  /** A uniform number for one event of a part: a coordinate of the point, or counted off by what its luck goes by. */
  const luckWith = (stream: number, p: number, apart: boolean): Luck => {
    const { exponential, bill } = layout.part[p] ?? { exponential: [], bill: [] };
    const uniform = (dimension: number | undefined, count: number): number => {
      const from = partFromOther[p] ? other : own;
      return dimension !== undefined && dimension >= 0 && !apart
        ? (from.point[dimension] as number)
        : uniformAt(seed, from.draw(), stream, count);
    };
    return {
      exponential: (i) => -Math.log1p(-uniform(exponential[i], 2 * i)),
      quantile: (i) => uniform(bill[i], 2 * i + 1),
    };
  };
  /** By vehicle, then by component; the first two places are for big bills and for repairs nobody named. */
  const lucks = new Map<string, Luck[]>();
  const putLuck = (vehicle: string, component: number, luck: Luck): Luck => {
    const known = lucks.get(vehicle) ?? [];
    known[component + 2] = luck;
    lucks.set(vehicle, known);
    return luck;
  };
  parts.forEach((one, p) => {
    putLuck(one.vehicle, one.component, luckWith(streamOf(one.name), p, false));
  });
  // A further vehicle of the same kind (a second lease) has luck of its own, which no point has a coordinate for.
  const luckOf = (vehicle: string, component: number): Luck => {
    const known = lucks.get(vehicle)?.[component + 2];
    if (known) return known;
    const [first = vehicle, nth = ''] = vehicle.split('#');
    const p = parts.findIndex((one) => one.vehicle === first && one.component === component);
    const name = parts[p]?.name ?? `${vehicle} ${component}`;
    return putLuck(vehicle, component, luckWith(streamOf(`${name} #${nth}`), Math.max(0, p), true));
  };
  const turnAt = new Map(turns.map(({ key }, t) => [key, t]));
  const turnStreams = turns.map(({ name }) => streamOf(name));
  const names = luckNamesOf(scenario);
  const rangedStreams = ranged.map(({ key }) => streamOf(names(key)));
  const placeIn = (from: typeof own, r: number): number =>
    r < most ? (from.point[r] as number) : uniformAt(seed, from.draw(), rangedStreams[r] as number, 0);
  const turnsOut = (what: string): number => {
    const t = turnAt.get(what);
    if (t === undefined) return 0.5;
    const from = fromOther.turns[t] ? other : own;
    const dimension = layout.turn[t] as number;
    return dimension >= 0
      ? (from.point[dimension] as number)
      : uniformAt(seed, from.draw(), turnStreams[t] as number, 0);
  };
  const atMean = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
  // Made at one place, so that all are of one kind to the optimizing compiler.
  const futureWith = (recall: Memory, givenUpIn: number | null): DrawnFuture => ({
    kind: 'drawn',
    luckOf,
    recall,
    turnsOut,
    givenUpIn,
    turns: null,
    atMean,
  });
  let future = futureWith(new Map(), null);
  return {
    restart,
    ranged: places,
    givenUp: (month) => futureWith(future.recall, month),
    moveTo: (draw, group) => {
      // A new map, not the old one cleared: a cleared map's old tables lead to its new one, and once one of them has
      // grown old it holds all that follow until the next full collection.
      future = futureWith(new Map(), null);
      own.moveTo(draw);
      for (let r = 0; r < ranged.length; r++) places[r] = placeIn(own, r);
      copula.apply(places);
      fromOther.turns.fill(group === 'all' ? 1 : 0);
      partFromOther.fill(group === 'all' ? 1 : 0);
      if (group === null) return future;
      other.moveTo(draw);
      for (let r = 0; r < ranged.length; r++) otherPlaces[r] = placeIn(other, r);
      copula.apply(otherPlaces);
      if (group === 'all') places.set(otherPlaces);
      else {
        for (const r of group.ranged) places[r] = otherPlaces[r] as number;
        for (const t of group.turns) fromOther.turns[t] = 1;
        for (const p of group.parts) partFromOther[p] = 1;
      }
      return future;
    },
  };
};
