import type { Input } from '../inputs/declared.ts';
import type { ValueLaw } from '../inputs/inputs.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import { following, type Pen } from './quantityBook.ts';

/**
 * How the value moves. A table of points that does not begin today is begun with `today`, what the vehicle is worth on
 * the day it starts: the sale price of the present one, the day after buying for another.
 */
export const completeValue = (file: SparseRunning['value_falls'], pen: Pen, today: number): ValueLaw => {
  if (Array.isArray(file)) {
    const first = file[0]?.months.value === 0 ? 0 : 1;
    const points = file.map((point, i) => {
      const after = `value after ${point.months.value} months`;
      const words = (one: Input) => (one === VEHICLE.POINT.value ? { words: after } : {});
      return pen.at(`points.${first + i}`, `${i}`).all(VEHICLE.POINT, point, words);
    });
    return { kind: 'points', points: first === 0 ? points : [{ month: 0, value: today }, ...points] };
  }
  const parts = file && 'value' in file ? { a_year: file } : file;
  const whole = file !== undefined && 'value' in file;
  const { perYear } = VEHICLE.DECLINE;
  const { downTo } = VEHICLE.RUNNING_ONE;
  // How fast it falls as the file says: then it is also as far as that leads, unless it says where it ends.
  const anyAge = parts?.a_year
    ? following(0, 'falls on as the file says')
    : following(significant(downTo.or.value * pen.units.perDollar, 6), downTo.or.source, downTo.or.mark);
  return {
    kind: 'decline',
    perYear: pen.take('perYear', whole ? '' : perYear.key, perYear, parts?.a_year, perYear.or),
    downTo: pen.take('downTo', downTo.key, downTo, parts?.down_to, anyAge),
    ...pen.all({ perDistance: VEHICLE.DECLINE_PER_DISTANCE[pen.units.distance] }, parts),
  };
};
