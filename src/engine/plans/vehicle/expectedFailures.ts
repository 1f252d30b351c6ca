import type { PartLife } from '../../chance/failureTimes.ts';
import { patchesAfter, patchIncrements, renewalIncrements, renewalsAfter } from '../../chance/renewal.ts';
import type { Range } from '../../quantity/range.ts';
import { remember } from '../../quantity/remember.ts';
import type { Component } from '../../scenario/inputs/inputs.ts';
import { lawOf, sameRange } from './rangeLaws.ts';

/** A component's life used up in a month, and for how many months it is asked. */
export interface Pace {
  readonly aMonth: number;
  readonly months: number;
}

/** Worked out for whole stretches of five years: a shorter span reads their beginning, so a horizon may move. */
const STRETCH = 60;

/** Chances are asked for at the same parts of months over and over, at any pace of driving. */
const remembered = (chanceBelow: (months: number) => number): ((months: number) => number) => {
  const known = new Map<number, number>();
  return (months) => {
    const before = known.get(months);
    if (before !== undefined) return before;
    const chance = chanceBelow(months);
    if (known.size < 4096) known.set(months, chance);
    return chance;
  };
};

const scaledLaw = remember(
  (range: Range, months: number): NonNullable<PartLife['another']> => {
    const law = lawOf(range);
    const times = months / law.mean;
    return {
      quantile: (u) => law.quantile(u) * times,
      chanceBelow: remembered((m) => (times > 0 ? law.chanceBelow(m / times) : 1)),
    };
  },
  (a, b) => sameRange(a[0], b[0]) && a[1] === b[1],
);

/** The remaining life of the part that is in, where it was said; its spread is that of the range, its mean the number. */
export const anotherLaw = (part: Pick<Component, 'another'>): PartLife['another'] =>
  part.another === null ? null : scaledLaw(part.another.range, part.another.months);

/** What of a component its failures hang on. */
type Lives = Pick<Component, 'repairIs' | 'scale' | 'shape' | 'run' | 'another'>;

const livesOf = ({ repairIs, scale, shape, run, another }: Component): Lives => ({
  repairIs,
  scale,
  shape,
  run,
  another: another && { months: another.months, range: { ...another.range } },
});

const sameLife = (a: Lives, b: Lives): boolean =>
  a.repairIs === b.repairIs && a.scale === b.scale && a.shape === b.shape;

const sameAnother = (a: Component['another'], b: Component['another']): boolean =>
  a === b || (a !== null && b !== null && a.months === b.months && sameRange(a.range, b.range));

/** Expected failures by month; `installed`: the part that is in, from what it has run; otherwise a new one. */
const increments = remember(
  (part: Lives, installed: boolean, aMonth: number, months: number) => {
    const life = { scale: part.scale, shape: part.shape };
    const another = installed ? anotherLaw(part) : null;
    const run = installed ? part.run : 0;
    if (part.repairIs === 'patch')
      return another
        ? patchesAfter(another.chanceBelow, life, run, aMonth, months)
        : patchIncrements(life, run, aMonth, months);
    return another
      ? renewalsAfter(another.chanceBelow, life, aMonth, months)
      : renewalIncrements(life, run, life, aMonth, months);
  },
  ([a, installedA, paceA, monthsA], [b, installedB, paceB, monthsB]) =>
    installedA === installedB &&
    paceA === paceB &&
    monthsA === monthsB &&
    sameLife(a, b) &&
    (!installedA || (a.run === b.run && sameAnother(a.another, b.another))),
);

/** Expected failures by month; from the month of each restart on, those of a new part. */
export const expectedFailures = (
  part: Component,
  { aMonth, months }: Pace,
  restarts: readonly number[],
): ArrayLike<number> => {
  const stretch = STRETCH * Math.ceil(months / STRETCH);
  const lives = livesOf(part);
  const [first, ...others] = restarts;
  const installed = increments(lives, first !== 0, aMonth, stretch);
  const later = first === undefined || first === 0 ? others : [first, ...others];
  if (later.length === 0) return installed;
  const fresh = increments(lives, false, aMonth, stretch);
  return Array.from({ length: months }, (_, m) => {
    const latest = later.findLast((month) => month <= m);
    return (latest === undefined ? installed[m] : fresh[m - latest]) ?? 0;
  });
};
