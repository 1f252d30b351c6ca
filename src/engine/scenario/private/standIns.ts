import type { Path } from '../text/problems.ts';
import { isIndex } from './texts.ts';

/** What stands where words stood that nobody needs in order to follow the rest. */
export const REDACTED = '(private)';

/**
 * What stands in for private words, by their path without positions; `#` is the position of the entry, from 1. None is
 * a word that anything is read out of.
 */
const STAND_INS: Readonly<Record<string, string>> = {
  title: 'Mend it, or hand it on?',
  'household.mechanic': 'the mechanic',
  'household.partner': 'the partner',
  'vehicle.what': 'present vehicle',
  'replacement.what': 'other vehicle #',
  'work_needed.job': 'job #',
  'vehicle.upkeep.job': 'upkeep job #',
  'replacement.upkeep.job': 'upkeep job #',
  'vehicle.components.name': 'part #',
  'replacement.components.name': 'part #',
  'vehicle.ends.what': 'end #',
  'vehicle.changes.why': 'change #',
  'replacement.changes.why': 'change #',
  'already_spent.what': 'item #',
  'replacement.fees.what': 'fee #',
  'replacement.add_ons.what': 'add-on #',
  'replacement.one_offs.what': 'one-off #',
  'look_first.what': 'look #',
  'claim.what': 'a collision',
  'claim.insurer': 'the insurer',
  'claim.lender.name': 'the lender',
  'claim.place.name': 'the place',
  'claim.comparables.what': 'vehicle #',
  'claim.estimate.lines.what': 'line #',
  'claim.refunds.what': 'item #',
  'claim.answer_by.what': 'answer #',
};

/** What stands in for the words at a path: "the partner", "part 2"; "(private)" where nothing need. */
export const standInFor = (path: Path): string => {
  const kind = path.filter((step) => !isIndex(step)).join('.');
  const position = Number(path.findLast((step) => isIndex(step)) ?? 0) + 1;
  // A single other vehicle, or the first of them, needs no number.
  const counted = kind === 'replacement.what' && position === 1 ? '' : String(position);
  return (STAND_INS[kind] ?? REDACTED).replace('#', counted).trim();
};

/** Little words that stand in a name without being one. */
const NO_NAME = new Set(['my', 'our', 'your', 'his', 'her', 'their', 'the', 'and', 'or', 'of', 'from']);

/**
 * Words by which what stands at a path may be known elsewhere: all of it, and where it is a person's name each of
 * its parts, for a note may call somebody by one of them.
 */
export const knownBy = (path: Path, text: string): readonly string[] => {
  const person = path[0] === 'household' && (path[1] === 'mechanic' || path[1] === 'partner');
  const parts = person ? (text.match(/[\p{L}\p{M}'’-]+/gu) ?? []) : [];
  return [text, ...parts.filter((part) => /^\p{Lu}/u.test(part) && !NO_NAME.has(part.toLowerCase()))];
};
