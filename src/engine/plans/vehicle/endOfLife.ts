import type { PresentVehicle } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';

/** Where it turns out whether, and when, the present vehicle comes to its end. */
export const ENDS = 'vehicle.ends';

/**
 * The chance, having got there, that a month ends the vehicle for good: found out once a year, at its yearly inspection.
 * Several reasons are independent. By month 0..months; nil where nothing ends it.
 */
export const chanceOfEnd = (vehicle: PresentVehicle, months: number): Float64Array => {
  const chances = new Float64Array(months + 1);
  if (vehicle.ends.length === 0) return chances;
  const first = Math.max(1, vehicle.inspection.nextDue);
  for (let m = first, year = 0; m <= months; m += 12, year++) {
    const passes = vehicle.ends.reduce(
      (left, end) => left * (1 - Math.min(1, end.chanceAYear + year * end.risesAYear)),
      1,
    );
    chances[m] = 1 - passes;
  }
  return chances;
};

/** The month before `until` in which a drawn future ends the vehicle; null where it does not. */
export const endsIn = (ctx: Context, until: number): number | null => {
  const { future, inputs } = ctx;
  if (future.kind !== 'drawn' || inputs.vehicle.ends.length === 0) return null;
  if (future.turns) return future.turns.ends !== null && future.turns.ends < until ? future.turns.ends : null;
  const chances = chanceOfEnd(inputs.vehicle, until);
  const lives = future.turnsOut(ENDS);
  let alive = 1;
  for (let m = 1; m < until; m++) {
    alive *= 1 - (chances[m] as number);
    if (lives > alive) return m;
  }
  return null;
};
