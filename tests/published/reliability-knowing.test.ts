/** What finding out is worth, and which unknown matters. */
import { describe, expect } from 'vitest';
import { average, meanOf, standardDeviation } from '../../src/engine/chance/estimates.ts';
import { perfectInformation, testInformation } from '../../src/engine/chance/information.ts';
import { scrambledSobol } from '../../src/engine/chance/sobol.ts';
import { varianceShares } from '../../src/engine/chance/varianceShares.ts';
import { normalQuantile } from '../../src/engine/quantity/normal.ts';
import { SCRAMBLES } from '../support/luck.ts';
import { type Inputs, publishedCases } from './cases.ts';

const CARS = 160;
const COURSES = ['leave it', 'buy without guarantee', 'buy with guarantee'];

/** The buyer's gain on each of many cars, of which the stated share are lemons in every scramble; costs are its reverse. */
const usedCars = (given: Inputs) => {
  const repair = (lemon: boolean): number => given.num(lemon ? 'repairLemon' : 'repairPeach');
  // Half of the repairs, or all of them when they exceed 100.
  const left = (bill: number): number => (bill > 100 ? 0 : bill / 2);
  const margin = given.num('value') - given.num('price');
  const lemons = Uint8Array.from({ length: CARS }, (_, k) =>
    k % 10 < 10 * given.num('chanceOfLemon') ? 1 : 0,
  );
  const gains = [
    () => 0,
    (lemon: boolean) => margin - repair(lemon),
    (lemon: boolean) => margin - given.num('guarantee') - left(repair(lemon)),
  ];
  return { lemons, costs: gains.map((gain) => Float64Array.from(lemons, (one) => -gain(one === 1))) };
};

const gainOf = (given: Inputs, course: number): number =>
  -meanOf(usedCars(given).costs[course] as Float64Array, SCRAMBLES).value;

/** Gain less the test's fee, and the course taken, once the car is known. */
const onceKnown = (given: Inputs, lemon: number): { gain: number; best: string } => {
  const { lemons, costs } = usedCars(given);
  const means = costs.map((cost) => average(cost.filter((_, k) => lemons[k] === lemon)));
  const least = Math.min(...means);
  return { gain: -least - given.num('fee'), best: COURSES[means.indexOf(least)] as string };
};

const ishigami = (given: Inputs, at: (i: number) => number): number => {
  const [x, y, z] = [0, 1, 2].map((i) => Math.PI * (2 * at(i) - 1)) as [number, number, number];
  return Math.sin(x) + given.num('a') * Math.sin(y) ** 2 + given.num('b') * z ** 4 * Math.sin(x);
};

const POINTS = 1024;
/** f over the points, scramble-major, each number from A (dimensions 0 to 2) or from B (3 to 5). */
const ishigamiOver = (given: Inputs, fromB: (i: number) => boolean): Float64Array => {
  const values = new Float64Array(SCRAMBLES * POINTS);
  const point = new Float64Array(6);
  for (let s = 0; s < SCRAMBLES; s++) {
    const sobol = scrambledSobol(6, 5, s);
    for (let k = 0; k < POINTS; k++) {
      sobol.fill(k, point);
      values[s * POINTS + k] = ishigami(given, (i) => point[fromB(i) ? i + 3 : i] as number);
    }
  }
  return values;
};

describe('information and variance shares', () => {
  publishedCases('reliability-knowing.json', {
    buyWithout: (given) => ({ gain: gainOf(given, 1) }),
    buyWith: (given) => ({ gain: gainOf(given, 2) }),
    perfect: (given) => ({ worth: perfectInformation(usedCars(given).costs, SCRAMBLES).value }),
    withTest: (given) => {
      const { lemons, costs } = usedCars(given);
      const { worth } = testInformation(costs, lemons, 1, 1, SCRAMBLES);
      return { gain: gainOf(given, 1) + worth.value - given.num('fee') };
    },
    ifLemon: (given) => onceKnown(given, 1),
    ifPeach: (given) => onceKnown(given, 0),
    spread: (given) => {
      const { lemons } = usedCars(given);
      const gains = [0, 1].map((lemon) => onceKnown(given, lemon).gain);
      const many = Array.from({ length: 100 }, () => [...lemons]).flat();
      return { sd: standardDeviation(many.map((lemon) => gains[lemon] as number)) };
    },
    // One way costs nothing, the other a normal number with mean z: knowing it saves the unit normal loss of z.
    normalLoss: (given, expected) => {
      const points = new Float64Array(1);
      const dearer = new Float64Array(SCRAMBLES * POINTS);
      for (let s = 0; s < SCRAMBLES; s++) {
        const sobol = scrambledSobol(1, 8, s);
        for (let k = 0; k < POINTS; k++) {
          sobol.fill(k, points);
          dearer[s * POINTS + k] = given.num('z') + normalQuantile(points[0] as number);
        }
      }
      const { value, error } = perfectInformation([new Float64Array(dearer.length), dearer], SCRAMBLES);
      expect(Math.abs(value - (expected.loss as number))).toBeLessThan(4 * error + 5e-5);
      return { loss: value };
    },
    ishigamiMean: (given) => ({
      mean: meanOf(
        ishigamiOver(given, () => false),
        SCRAMBLES,
      ).value,
    }),
    ishigamiVariance: (given) => ({ variance: standardDeviation(ishigamiOver(given, () => false)) ** 2 }),
    ishigamiShares: (given, expected) => {
      const shares = varianceShares(
        ishigamiOver(given, () => false),
        ishigamiOver(given, () => true),
        ishigamiOver(given, (i) => i === given.num('number')),
        SCRAMBLES,
      );
      const name = 'first' in expected ? 'first' : 'total';
      const { value, error } = shares[name];
      expect(Math.abs(value - (expected[name] as number))).toBeLessThan(4 * error + 5e-5);
      return { [name]: value };
    },
  });
});
