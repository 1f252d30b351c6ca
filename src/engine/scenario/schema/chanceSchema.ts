import { CHANCE } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import { list, mapping, maybe, num, words } from './fields.ts';

/** How the future is drawn, and what is asked of the money put by. */
export const chanceSchema = (units: Units) =>
  mapping(
    {
      seed: maybe(num(CHANCE.seed, units)),
      futures: maybe(num(CHANCE.futures, units)),
      may_run_dry: maybe(num(CHANCE.mayRunDry, units)),
      set_aside_each_month: maybe(num(CHANCE.setAside, units)),
      months_without_income: maybe(num(CHANCE.monthsWithoutIncome, units)),
    },
    'How the future is drawn, and what is asked of the money put by.',
  );

/** Ranges that are not independent of each other. */
export const togetherSchema = (units: Units) =>
  list(
    mapping(
      {
        a: words('A place in this file that holds a range.'),
        b: words('Another such place.'),
        rank: num(CHANCE.rank, units),
      },
      'Two ranges that go together: 1 always high with high, -1 always high with low, 0 not at all.',
    ),
    50,
  );

/** Tests that tell, imperfectly, whether a part will fail soon. */
export const lookSchema = (units: Units) =>
  list(
    mapping(
      {
        what: words('The test, in a few words.'),
        costs: num(CHANCE.lookCosts, units),
        component: words('The name of a component of the vehicle.'),
        within: num(CHANCE.lookWithin, units),
        sees: num(CHANCE.lookSees, units),
        clears: num(CHANCE.lookClears, units),
      },
      'Something to look at first: a test of one part, its price, and how often it is right.',
    ),
    20,
  );
