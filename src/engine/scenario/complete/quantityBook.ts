import type { Range } from '../../quantity/range.ts';
import type { Default, Group, Input, Numbers } from '../inputs/declared.ts';
import type { Quantity } from '../inputs/scenario.ts';
import { KNOWN, type Spec } from '../inputs/specs.ts';
import { carried, limits, significant, stepOf, type Units } from '../inputs/units.ts';
import type { Stated } from '../reading/stated.ts';
import { rangeTimes } from '../reading/statedRange.ts';

/** What stands in for a number the file does not give, already in the household's units. */
export interface Fallback {
  readonly value: number;
  readonly range?: Range | null;
  readonly source: string;
  readonly mark: Quantity['mark'];
}

/** What stands in, in the household's units: money times the currency's price of a dollar, miles as km. */
const standIn = (
  or: Default | Fallback | undefined,
  spec: Spec,
  units: Units,
): { readonly value: number; readonly range: Range | null } => {
  if (!or) return { value: 0, range: null };
  if (!('unit' in or)) return { value: or.value, range: or.range ?? null };
  const ratio = carried(spec, units);
  return {
    value: ratio === 1 ? or.value : significant(or.value * ratio, 6),
    range: or.range ? rangeTimes({ ...or.range, min: 0, max: null }, ratio) : null,
  };
};

/** Stands in for a number by following another; `source` says which. */
export const following = (value: number, source: string, mark: Fallback['mark'] = 'guess'): Fallback => ({
  value,
  source,
  mark,
});

/** Where a number differs from its spec: in what it is called, how far it may go, where and how it is typed. */
interface Particulars {
  readonly words?: string;
  readonly within?: { readonly min: number; readonly max: number };
  readonly varies?: Quantity['varies'];
  readonly isDefault?: boolean;
  /** Its whole path in the file, where that is not below the pen's own place. */
  readonly typedAt?: string;
  readonly suffix?: string;
  readonly onlyRange?: boolean;
  /** What its place in the file says of it, before its own note. */
  readonly why?: string;
}

/** What the file says of a group: a mapping with its keys, and others. */
export type Said<G extends Group> = { readonly [N in keyof G as G[N]['key']]?: Stated | undefined };

type OrOf<I extends Input> = I['missing'] extends 'follows'
  ? [or: Default | Fallback]
  : [or?: Default | Fallback];

/** Takes a number of a group by its name; `or` goes before its default. Null where there is no such thing. */
type Taking<G extends Group> = <N extends keyof G & string>(
  name: N,
  ...more: [...OrOf<G[N]>, particulars?: Particulars]
) => Numbers<G>[N];

/** Writes the numbers of one part of the inputs down as quantities. */
export interface Pen {
  readonly units: Units;
  /**
   * Notes a number with all that is known about it, and returns it. `key` and `path` are below the pen's own place in
   * `Inputs` and in the file; `or` stands in where nothing is stated. Neither: a mistake of the schema, thrown.
   */
  readonly take: (
    key: string,
    path: string,
    spec: Spec,
    stated: Stated | undefined,
    or?: Default | Fallback,
    particulars?: Particulars,
  ) => number;
  /** The same, for a number whose range the inputs hold as well. */
  readonly takeRanged: (...what: Parameters<Pen['take']>) => {
    readonly value: number;
    readonly range: Range | null;
  };
  /** The numbers of a group one by one, as declared; `file` is the mapping they stand in. */
  readonly from: <G extends Group>(group: G, file: Said<NoInfer<G>> | undefined) => Taking<G>;
  /** All of them, in the order they are declared in; `differing` says in what one is not as declared. */
  readonly all: <G extends Group>(
    group: G,
    file: Said<NoInfer<G>> | undefined,
    differing?: (one: Input) => Particulars & { readonly or?: Default | Fallback | undefined },
  ) => Numbers<G>;
  /** The same pen further down the tree; `whose` is named in every label. */
  readonly at: (key: string, path: string, whose?: string) => Pen;
}

const below = (base: string, rest: string): string =>
  base === '' ? rest : rest === '' ? base : `${base}.${rest}`;

/** A pen that writes into `quantities`; null: only the numbers themselves are wanted. */
export const penFor = (quantities: Quantity[] | null, units: Units, key = '', path = '', whose = ''): Pen => {
  const takeRanged: Pen['takeRanged'] = (
    k,
    p,
    spec,
    stated,
    or,
    {
      words = spec.words,
      within,
      varies = 'once',
      isDefault = !stated,
      typedAt,
      suffix = '',
      onlyRange = false,
      why = '',
    } = {},
  ) => {
    if (!stated && !or) throw new Error(`No value and no default for ${below(key, k)}`);
    const { value, range } = stated ?? standIn(or, spec, units);
    quantities?.push({
      key: below(key, k),
      moves: [],
      path: typedAt ?? below(path, p),
      standsAt: [below(path, p)],
      suffix,
      onlyRange,
      label: whose === '' ? words : `${words}, ${whose}`,
      unit: spec.unit,
      value,
      range,
      varies,
      ...(within ?? limits(spec, units)),
      step: stepOf(spec, units),
      integer: spec.integer === true,
      mark: stated ? (stated.how ?? spec.mark) : (or?.mark ?? 'guess'),
      known: spec.exact === KNOWN && !isDefault,
      isDefault,
      source: stated ? stated.source || 'given in the scenario' : (or?.source ?? ''),
      note: [why, stated?.note ?? ''].filter((words) => words !== '').join('; '),
    });
    return { value, range };
  };
  const taken = (
    name: string,
    one: Input,
    file: Readonly<Record<string, Stated | undefined>> | undefined,
    or?: Default | Fallback,
    particulars?: Particulars,
  ): number | null => {
    const stated = file?.[one.key];
    if (!stated && !or && one.missing === 'none') return null;
    return takeRanged(name, one.key, one, stated, or ?? one.or, particulars).value;
  };
  return {
    units,
    // Keys and paths are words: put together only where somebody reads them.
    at: (k, p, name = whose) =>
      quantities === null
        ? penFor(null, units)
        : penFor(quantities, units, below(key, k), below(path, p), name),
    takeRanged,
    take: (...what) => takeRanged(...what).value,
    from:
      (group, file) =>
      (name, ...more) =>
        taken(name, group[name] as Input, file, ...more) as never,
    all: (group, file, differing) => {
      const numbers: Record<string, number | null> = {};
      for (const name in group) {
        const one = group[name] as Input;
        const other = differing?.(one);
        numbers[name] = taken(name, one, file, other?.or, other);
      }
      return numbers as never;
    },
  };
};
