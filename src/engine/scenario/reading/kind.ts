import type { VehicleKind } from '../inputs/tables.ts';

const PICKUP = /\b(?:pick-?ups?|trucks?)\b/i;
const UTILITY =
  /\b(?:suvs?|cuvs?|sport utility|utility|crossovers?|(?:mini|cargo|camper)?-?vans?|people carriers?|off-?roaders?)\b/i;

/**
 * Which column of the tables a vehicle belongs to: as the file says, or by what it is called. A pickup is a truck; a
 * utility, crossover or van is a suv; all else is a car, as sedans, wagons and hatchbacks are.
 */
export const kindOf = ({
  kind,
  what,
}: {
  readonly kind?: VehicleKind | undefined;
  readonly what: string;
}): VehicleKind => kind ?? (PICKUP.test(what) ? 'truck' : UTILITY.test(what) ? 'suv' : 'car');
