import { DEFAULTS } from '../inputs/defaults.ts';
import type { ValueLaw } from '../inputs/inputs.ts';
import { RUNNING } from '../inputs/specs.ts';
import type { SparseRunning } from '../schema/scenarioSchema.ts';
import type { Pen } from './quantityBook.ts';

const D = DEFAULTS.running;

/**
 * How the value moves. A table of points that does not begin today is begun with `today`, what the vehicle is worth on
 * the day it starts: the sale price of the present one, the day after buying for another.
 */
export const completeValue = (file: SparseRunning['value_falls'], pen: Pen, today: number): ValueLaw => {
  if (Array.isArray(file)) {
    const first = file[0]?.months.value === 0 ? 0 : 1;
    const points = file.map((point, i) => {
      const own = pen.at(`points.${first + i}`, `${i}`);
      const after = `value after ${point.months.value} months`;
      return {
        month: own.take('month', 'months', RUNNING.pointMonth, point.months),
        value: own.take('value', 'value', RUNNING.pointValue, point.value, undefined, { words: after }),
      };
    });
    return { kind: 'points', points: first === 0 ? points : [{ month: 0, value: today }, ...points] };
  }
  const parts = file && 'value' in file ? { a_year: file } : file;
  const whole = file !== undefined && 'value' in file;
  const perDistance = pen.units.distance === 'km' ? 'a_km' : 'a_mile';
  const stated =
    parts && perDistance in parts ? (parts as Record<string, typeof parts.a_year>)[perDistance] : undefined;
  return {
    kind: 'decline',
    perYear: pen.take('perYear', whole ? '' : 'a_year', RUNNING.declineAYear, parts?.a_year, D.decline),
    perDistance: pen.take(
      'perDistance',
      perDistance,
      RUNNING.declinePerDistance,
      stated,
      D.declinePerDistance,
    ),
  };
};
