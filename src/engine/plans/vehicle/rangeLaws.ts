import { type Range, type RangeLaw, rangeLaw } from '../../quantity/range.ts';
import { remember } from '../../quantity/remember.ts';

/** The same points and bounds: a file read again has ranges of its own that say the same. */
export const sameRange = (a: Range, b: Range): boolean =>
  a === b ||
  (a.low === b.low && a.likely === b.likely && a.high === b.high && a.min === b.min && a.max === b.max);

const lawOfPoints = remember(
  (range: Range): RangeLaw => {
    const law = rangeLaw(range);
    if ('refused' in law) throw new RangeError(`Not a range: ${law.refused}`);
    return law;
  },
  ([a], [b]) => sameRange(a, b),
  64,
);

const laws = new WeakMap<Range, RangeLaw>();

/** The law of a range, worked out once; one that is none was refused when the file was read. */
export const lawOf = (range: Range): RangeLaw => {
  const known = laws.get(range);
  if (known) return known;
  const law = lawOfPoints(range);
  laws.set(range, law);
  return law;
};
