/** A Weibull life: S(u) = exp(-(u/scale)^shape), u in the life's own unit (distance or months). */
export interface WeibullLife {
  /** Characteristic life, above 0: 63 % have failed by then. */
  readonly scale: number;
  /** Above 0; 1 forgets its age, above 1 wears out. */
  readonly shape: number;
}

/** Cumulative hazard H(u) = (u/scale)^shape; 0 before the start. */
export const cumulativeHazard = (life: WeibullLife, u: number): number =>
  u <= 0 ? 0 : (u / life.scale) ** life.shape;

/** Survival S(u): the chance of lasting at least u. */
export const survival = (life: WeibullLife, u: number): number => Math.exp(-cumulativeHazard(life, u));

/**
 * Chance of failing within the next x, having run `run`: G(x) = 1 - S(run + x)/S(run). This is the remaining life of
 * the part that is in; the next one follows its own law.
 */
export const failsWithin = (life: WeibullLife, run: number, x: number): number =>
  -Math.expm1(cumulativeHazard(life, run) - cumulativeHazard(life, run + x));
