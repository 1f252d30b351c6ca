import * as z from 'zod/mini';

/** Only a list is counted: zod's own checks take a mapping with a key named "length" for one, and trip over it. */
const when = ({ value }: z.core.ParsePayload): boolean => Array.isArray(value);

/** A list has at least so many entries. */
export const atLeast = (minimum: number) =>
  new z.core.$ZodCheckMinLength({ check: 'min_length', minimum, when });

/** A list has at most so many entries. */
export const atMost = (maximum: number) =>
  new z.core.$ZodCheckMaxLength({ check: 'max_length', maximum, when });
