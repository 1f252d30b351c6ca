import type { Group, Input } from '../inputs/declared.ts';
import type { Units } from '../inputs/units.ts';
import { maybe, num } from './fields.ts';

type Num = ReturnType<typeof num>;

/** The keys of a group, each a number that must be there or not. */
type Shape<G extends Group> = {
  [N in keyof G as G[N]['key']]: G[N]['missing'] extends 'refused' ? Num : ReturnType<typeof maybe<Num>>;
};

/** The part of a mapping that a group of numbers is. */
export const shapeOf = <G extends Group>(group: G, units: Units): Shape<G> =>
  Object.fromEntries(
    Object.values(group).map((one) => {
      const field = num(one, units);
      return [one.key, one.missing === 'refused' ? field : maybe(field)];
    }),
  ) as Shape<G>;

/** The same for a number whose key says its unit of distance: in each key's own. */
export const shapeByUnit = <G extends Readonly<Record<'miles' | 'km', Input>>>(
  { miles, km }: G,
  units: Units,
): Shape<G> =>
  ({
    ...shapeOf({ miles }, { ...units, distance: 'miles' }),
    ...shapeOf({ km }, { ...units, distance: 'km' }),
  }) as Shape<G>;
