import type { Default } from '../defaults.ts';
import type { Stated } from '../reading/stated.ts';
import type { Quantity } from '../scenario.ts';
import type { Spec } from '../specs.ts';
import { carried, limits, significant, type Units } from '../units.ts';

/** What stands in for a number the file does not give, already in the household's units. */
export interface Fallback {
  readonly value: number;
  readonly source: string;
  readonly mark: Quantity['mark'];
}

/** A default in the household's units: money times the currency's price of a dollar, miles as km. */
const inUnits = (one: Default, spec: Spec, units: Units): number => {
  const ratio = carried(spec, units);
  return ratio === 1 ? one.value : significant(one.value * ratio, 6);
};

/** Stands in for a number by following another; `source` says which. */
export const following = (value: number, source: string, mark: Fallback['mark'] = 'guess'): Fallback => ({
  value,
  source,
  mark,
});

/** Where a number differs from its spec: in what it is called, or how far it may go. */
interface Particulars {
  readonly words?: string;
  readonly range?: { readonly min: number; readonly max: number };
  readonly isDefault?: boolean;
}

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
  /** The same pen further down the tree; `whose` is named in every label. */
  readonly at: (key: string, path: string, whose?: string) => Pen;
}

const below = (base: string, rest: string): string =>
  base === '' ? rest : rest === '' ? base : `${base}.${rest}`;

/** A pen that writes into `quantities`. */
export const penFor = (quantities: Quantity[], units: Units, key = '', path = '', whose = ''): Pen => ({
  units,
  at: (k, p, name = whose) => penFor(quantities, units, below(key, k), below(path, p), name),
  take: (k, p, spec, stated, or, { words = spec.words, range, isDefault = !stated } = {}) => {
    if (!stated && !or) throw new Error(`No value and no default for ${below(key, k)}`);
    const value = stated?.value ?? (or && 'unit' in or ? inUnits(or, spec, units) : or?.value) ?? 0;
    quantities.push({
      key: below(key, k),
      also: [],
      path: below(path, p),
      label: whose === '' ? words : `${words}, ${whose}`,
      unit: spec.unit,
      value,
      range: null,
      varies: 'once',
      ...(range ?? limits(spec, units)),
      integer: spec.integer === true,
      mark: stated ? (stated.how ?? spec.mark) : (or?.mark ?? 'guess'),
      isDefault,
      source: stated ? stated.source || 'given in the scenario' : (or?.source ?? ''),
      note: stated?.note ?? '',
    });
    return value;
  },
});
