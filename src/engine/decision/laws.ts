import { type Range, type RangeLaw, rangeLaw } from '../quantity/range.ts';

const laws = new WeakMap<Range, RangeLaw>();

/** The law of a range, worked out once; one that is none was refused when the file was read. */
export const lawOf = (range: Range): RangeLaw => {
  const known = laws.get(range);
  if (known) return known;
  const law = rangeLaw(range);
  if ('refused' in law) throw new RangeError(`Not a range: ${law.refused}`);
  laws.set(range, law);
  return law;
};
