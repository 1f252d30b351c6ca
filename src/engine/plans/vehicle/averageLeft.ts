import type { Context } from './context.ts';
import { presentSpan } from './held.ts';
import type { Treatments } from './neededWork.ts';
import { boughtSpan } from './span.ts';
import { averageOverAll, leftOf } from './unnamedRepairs.ts';

/** What the parts named for a vehicle leave of its average repairs for whatever nobody named. */
export interface AverageLeft {
  readonly vehicle: string;
  /** Of the average over all months looked at, at a shop; a fraction. */
  readonly share: number;
}

/**
 * Of each vehicle that has parts named and an average they are taken out of: the present one, kept as the best way of
 * keeping it meets the needed work, and each replacement bought today.
 *
 * @param treatments null where keeping is not open
 */
export const averagesLeft = (treatments: Treatments | null, ctx: Context): AverageLeft[] => {
  const { inputs, facts, horizon } = ctx;
  const kept =
    treatments === null
      ? []
      : [
          {
            vehicle: inputs.vehicle,
            name: facts.vehicleName,
            span: presentSpan(treatments, horizon, ctx),
          },
        ];
  const bought = inputs.replacement.map((vehicle, i) => ({
    vehicle,
    name: facts.replacementNames[i] ?? vehicle.name,
    span: boughtSpan('', vehicle.name, 0, horizon),
  }));
  return [...kept, ...bought].flatMap(({ vehicle, name, span }): AverageLeft[] => {
    if (vehicle.components.length === 0) return [];
    const all = averageOverAll(vehicle, null, ctx);
    const left = averageOverAll(vehicle, leftOf(vehicle, span, ctx), ctx);
    return all > 0 ? [{ vehicle: name, share: left / all }] : [];
  });
};
