import { copulaOf } from '../../quantity/rankCorrelation.ts';
import * as HOME from '../inputs/householdInputs.ts';
import { type Chance, type Correlation, type Quantity, SCRAMBLES } from '../inputs/scenario.ts';
import type { Units } from '../inputs/units.ts';
import type { Sparse } from '../schema/scenarioSchema.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import { penFor } from './quantityBook.ts';

/** With fewer no chance would be worth saying. */
const FEWEST = 256;

/** So many futures or a few more: a whole power of two for each scramble; none where none are wanted. */
const wholeFutures = (least: number): number =>
  least === 0 ? 0 : SCRAMBLES * 2 ** Math.ceil(Math.log2(Math.max(FEWEST, least) / SCRAMBLES));

/** What the file says about the drawing of futures; none of it is a number of the model. */
export const completeChance = (
  file: Sparse,
  units: Units,
  spareEachMonth: number,
  components: readonly string[],
  correlations: readonly Correlation[],
): Chance => {
  // None of it is a quantity: it is only read.
  const pen = penFor(null, units);
  const { futures, setAside, ...asked } = pen.all(HOME.CHANCE, file.chance);
  return {
    ...asked,
    futures: wholeFutures(futures),
    correlations,
    looks: (file.look_first ?? []).map((look) => ({
      what: look.what,
      component: components.indexOf(look.component),
      ...pen.all(HOME.LOOK, look),
    })),
    pair: null,
    setAside: setAside ?? (file.spare_each_month === undefined ? null : spareEachMonth),
  };
};

/** One entry of the list with the key of each of its two numbers, undefined where there is no such range. */
interface Entry {
  readonly path: Path;
  readonly rank: number;
  readonly a: string | undefined;
  readonly b: string | undefined;
  readonly written: { readonly a: string; readonly b: string };
}

/**
 * The key under which the range at a path is drawn; undefined where there is none, or where it is another number each time
 * it comes. A price that all vehicles give alike is the household's: each of its places names it.
 */
const keyOfRange = (path: string, quantities: readonly Quantity[]): string | undefined =>
  quantities.find((one) => isAt(one, path) && one.range !== null && one.varies === 'once')?.key;

/** Whether a place of the file is a number's. */
export const isAt = ({ path, standsAt }: Quantity, place: string): boolean =>
  path === place || standsAt.includes(place);

const notARange = (path: Path, written: string): Finding => ({
  kind: 'not one of',
  path,
  value: written,
  message: `"${showValue(written)}" is no range of this file that is unknown once.`,
  remedy: 'Write the keys that lead to a {low, likely, high}; the bill of a part is another each time.',
});

/** What is wrong with single entries: places without a range, a range with itself, a pair told twice. */
const entryFindings = (entries: readonly Entry[]): Finding[] =>
  entries.flatMap(({ path, a, b, written }, i): Finding[] => {
    const missing = (['a', 'b'] as const).flatMap((end) =>
      (end === 'a' ? a : b) === undefined ? [notARange([...path, end], written[end])] : [],
    );
    if (missing.length > 0) return missing;
    if (a === b)
      return [
        {
          kind: 'contradiction',
          path: [...path, 'b'],
          value: written.b,
          message: 'These two are one and the same number.',
          remedy: 'Name two ranges, or take the entry out.',
        },
      ];
    const before = entries.slice(0, i).some((one) => [one.a, one.b].sort().join() === [a, b].sort().join());
    if (!before) return [];
    return [
      {
        kind: 'either or',
        path,
        message: 'How these two go together is told twice.',
        remedy: 'Keep one of the two.',
      },
    ];
  });

/** Entries that cannot all hold: no numbers correlate like this. */
const impossible = (entries: readonly Entry[]): Finding[] => {
  const keys = [...new Set(entries.flatMap(({ a, b }) => [a ?? '', b ?? '']))].sort();
  const at = (key: string | undefined): number => keys.indexOf(key ?? '');
  const pairs = entries.map(({ a, b, rank }) => ({ a: at(a), b: at(b), rank }));
  const copula = copulaOf(keys.length, pairs);
  if (!('refused' in copula)) return [];
  const named = entries.filter((_, i) =>
    copula.refused.some((one) => one.a === pairs[i]?.a && one.b === pairs[i]?.b),
  );
  const first = named[0] ?? entries[0];
  if (!first) return [];
  const list = named.map(
    ({ written, rank }) => `${showValue(written.a)} and ${showValue(written.b)} at ${rank}`,
  );
  return [
    {
      kind: 'contradiction',
      path: [...first.path, 'rank'],
      value: first.rank,
      message:
        named.length > 1
          ? `These cannot all be true at once: ${list.join('; ')}.`
          : 'Nothing goes together like this beside the other entries.',
      remedy: 'Bring a rank nearer to 0, or leave an entry out.',
    },
  ];
};

/**
 * Which ranges go together. Findings where an entry names no range, or where the entries contradict each other.
 */
export const correlationsOf = (
  file: Sparse['go_together'],
  quantities: readonly Quantity[],
): { readonly correlations: readonly Correlation[]; readonly findings: readonly Finding[] } => {
  const entries = (file ?? []).map(
    ({ a, b, rank }, i): Entry => ({
      path: ['go_together', i],
      rank: rank.value,
      a: keyOfRange(a, quantities),
      b: keyOfRange(b, quantities),
      written: { a, b },
    }),
  );
  const single = entryFindings(entries);
  if (single.length > 0 || entries.length === 0) return { correlations: [], findings: single };
  const findings = impossible(entries);
  if (findings.length > 0) return { correlations: [], findings };
  const correlations = entries.flatMap(({ a, b, rank }) => (a && b && rank !== 0 ? [{ a, b, rank }] : []));
  return { correlations, findings };
};
