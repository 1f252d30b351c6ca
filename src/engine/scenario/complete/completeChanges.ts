import { monthAfter, parseCivilDate, parseFrom, saidFrom } from '../../quantity/civilDate.ts';
import type { BillChange } from '../inputs/inputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import type { Pen } from './quantityBook.ts';

/** The first month that ends after a date of the file. Its dates have passed the schema: anything else is a mistake of it. */
const monthFrom = (date: string, from: string): number => {
  const [decision, day] = [parseCivilDate(date), parseFrom(from)];
  if (!decision || !day) throw new Error(`${date} or ${from} is no date`);
  return monthAfter(decision, day);
};

/**
 * The bills of a vehicle that change on a date. `pen` stands at it.
 *
 * @param date ISO day of the decision
 */
export const completeChanges = (
  file: SparseRunning['changes'],
  pen: Pen,
  date: string,
): readonly BillChange[] =>
  (file ?? []).map(({ why = '', ...change }, i) => ({
    from: monthFrom(date, change.from),
    coverEnds: change.cover_ends ?? [],
    why,
    ...pen.at(`changes.${i}`, `changes.${i}`).all(VEHICLE.CHANGED, change, ({ words }) => ({
      words: `${words} from ${saidFrom(change.from)}`,
      why,
    })),
  }));
