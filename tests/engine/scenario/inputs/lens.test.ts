import { describe, expect, it } from 'vitest';
import { copyOf, withInput } from '../../../../src/engine/scenario/inputs/lens.ts';
import { inputs } from '../../../support/household.ts';

/** Taken down before anything is copied: whether a copy has touched what it was made from shows against it. */
const written = JSON.stringify(inputs);

describe('inputs', () => {
  it('copied are the same, share nothing, and leave what they came from alone', () => {
    const shared = { aYear: 1 };
    const copy = copyOf({ ...inputs, twice: [shared, shared] });
    expect(copy.twice[0]).not.toBe(copy.twice[1]);
    expect(copy).toEqual({ ...inputs, twice: [shared, shared] });
    expect(copy.vehicle).not.toBe(inputs.vehicle);
    expect(copy.workNeeded[0]).not.toBe(inputs.workNeeded[0]);
    expect(JSON.stringify(inputs)).toBe(written);
  });

  it('with one number changed, share what is not on the way to it', () => {
    const dearer = withInput(inputs, 'replacement.0.price', 12_345);
    expect(dearer.replacement[0]?.price).toBe(12_345);
    expect(dearer.vehicle).toBe(inputs.vehicle);
    expect({ ...dearer.replacement[0], price: inputs.replacement[0]?.price }).toEqual(inputs.replacement[0]);
    expect(JSON.stringify(inputs)).toBe(written);
    expect(() => withInput(inputs, 'replacement.0.prize', 1)).toThrow(RangeError);
  });
});
