import * as HOME from '../inputs/householdInputs.ts';
import type { Units } from '../inputs/units.ts';
import { list, mapping, num, words } from './fields.ts';
import { shapeOf } from './groupShape.ts';

/** How the future is drawn, and what is asked of the money put by. */
export const chanceSchema = (units: Units) =>
  mapping(shapeOf(HOME.CHANCE, units), 'How the future is drawn, and what is asked of the money put by.');

/** Ranges that are not independent of each other. */
export const togetherSchema = (units: Units) =>
  list(
    mapping(
      {
        a: words('A place in this file that holds a range.'),
        b: words('Another such place.'),
        rank: num(HOME.RANK, units),
      },
      'Two ranges that go together: 1 always high with high, -1 always high with low, 0 not at all.',
    ),
    50,
  );

/** Tests that tell, imperfectly, whether a part will fail soon. */
export const lookSchema = (units: Units) => {
  const { costs, ...rest } = shapeOf(HOME.LOOK, units);
  return list(
    mapping(
      {
        what: words('The test, in a few words.'),
        costs,
        component: words('The name of a component of the vehicle.'),
        ...rest,
      },
      'Something to look at first: a test of one part, its price, and how often it is right.',
    ),
    20,
  );
};
