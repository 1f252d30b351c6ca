import type { PlaceRule } from './placeRule.ts';
import { US_PLACES } from './usPlaces.ts';

/** Stands with every use of a place's rule. */
export const PLACES_STATEMENT =
  'Rules of places as set down in 2026-11, each with its source; rows not read in the law itself say "check this". ' +
  'Local law and the policy decide. Most tests settle what is written on the papers, not what an insurer must pay: ' +
  'an insurer may call a total loss below them. Not legal or tax advice.';

/** Every place that ships with the program; any other is written out in the scenario. */
export const PLACES: readonly PlaceRule[] = US_PLACES;

const byCode = new Map(PLACES.map((place) => [place.code, place]));

/** The rule of a place by its code ("US-VA", in capitals or not); null where it is not listed: nothing is guessed. */
export const placeByCode = (code: string): PlaceRule | null => byCode.get(code.toUpperCase()) ?? null;
