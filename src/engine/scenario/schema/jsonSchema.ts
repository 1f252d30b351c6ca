import * as z from 'zod/mini';
import { SHARED_SHAPES } from './fields.ts';
import { scenarioSchema } from './scenarioSchema.ts';

/**
 * JSON Schema (draft 7) of the scenario file, for editors: keys, descriptions, shapes. Units and ranges are those of a
 * household in US dollars and miles; what takes more than one place to see is left to the program.
 */
export const scenarioJsonSchema = (): Record<string, unknown> => ({
  ...z.toJSONSchema(scenarioSchema({ currency: 'USD', perDollar: 1, distance: 'miles' }), {
    target: 'draft-7',
    io: 'input',
  }),
  definitions: SHARED_SHAPES,
  title: 'Stillworth scenario',
});
