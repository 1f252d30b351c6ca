import { dangersOf, unsafeToLeave } from '../danger/dangers.ts';
import { isOwnInsurance } from '../inputs/claim.ts';
import { tableName } from '../inputs/partTable.ts';
import { kindOf } from '../reading/kind.ts';
import type { Tree } from '../text/document.ts';
import type { Path } from '../text/problems.ts';
import { yearOf } from '../text/year.ts';
import { isIndex } from './texts.ts';

/** What is read out of words unless it is written beside them: under which key, and how. */
interface ReadOut {
  readonly key: 'year' | 'kind' | 'like' | 'dangers' | 'may_be_driven' | 'insurance';
  /** What the file would say under that key; null: nothing. */
  readonly read: (words: string) => Tree;
  /** Other paths beside it which together say as much. */
  readonly or: readonly (readonly Path[])[];
}

const READ_OUT: Readonly<Record<string, readonly ReadOut[]>> = {
  'vehicle.what': [
    { key: 'year', read: yearOf, or: [] },
    // A car is what it is taken for where nothing is said.
    { key: 'kind', read: (what) => (kindOf({ what }) === 'car' ? null : kindOf({ what })), or: [] },
  ],
  'vehicle.components.name': [
    {
      key: 'like',
      read: tableName,
      // Its life and its price told, nothing is looked up under its name.
      or: [
        [['life', 'typical'], ['hours']],
        [['life', 'typical'], ['shop_price']],
      ],
    },
  ],
  'claim.refunds.what': [
    { key: 'insurance', read: (words) => (isOwnInsurance(words, undefined) ? 'yes' : null), or: [] },
  ],
  'work_needed.job': [
    { key: 'dangers', read: (words) => dangersOf(words, undefined), or: [] },
    {
      key: 'may_be_driven',
      read: (words) => (unsafeToLeave(words, undefined) ? 'no' : null),
      // Once the dangers are listed nothing is read out of the words; the rest says by itself how far it may be driven.
      or: [[['dangers']], [['safety']], [['immobilises']]],
    },
  ],
};

/**
 * What is read out of the words at a path, and is not told beside them; the one that decides most first.
 *
 * @param has whether something stands at a path of the file
 */
export const readOutOf = (path: Path, has: (path: Path) => boolean): readonly Omit<ReadOut, 'or'>[] => {
  const kind = path.filter((step) => !isIndex(step)).join('.');
  const told = (at: Path): boolean => has([...path.slice(0, -1), ...at]);
  return (READ_OUT[kind.replace(/^replacement\b/, 'vehicle')] ?? []).filter(
    ({ key, or }) => !told([key]) && !or.some((all) => all.every(told)),
  );
};
