import type { PresentVehicle } from '../../scenario/inputs/inputs.ts';

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
