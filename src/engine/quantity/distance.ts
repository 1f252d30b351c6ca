/** Distances are in the household's own unit; these turn one unit into the other. */
export type DistanceUnit = 'miles' | 'km';

/** Kilometres in a mile, exactly (international yard and pound agreement, 1959). */
export const KM_PER_MILE = 1.609344;

/** How many of `to` make one of `from`: a distance times this is the same distance in the other unit. */
export const distanceRatio = (from: DistanceUnit, to: DistanceUnit): number => {
  if (from === to) return 1;
  return from === 'miles' ? KM_PER_MILE : 1 / KM_PER_MILE;
};
