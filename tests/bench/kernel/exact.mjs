/**
 * The kernel by exact inversion, with the product's own `failureTimes` and `normalQuantile`: lives end at an instant,
 * and the next begins there; what they cost is paid, and discounted, at the end of the month. Not the model of whole
 * months of model.mjs, so its means differ a little.
 */
import { next } from './generator.mjs';
import { discount, MONTHS, PARTS, SPREADS, TO_A_VEHICLE } from './model.mjs';

/**
 * @param {{ failureTimes: typeof import('../../../src/engine/chance/failureTimes.ts').failureTimes,
 *   normalQuantile: typeof import('../../../src/engine/quantity/normal.ts').normalQuantile }} product
 * @returns {(n: number, state: Int32Array, cost: Float64Array, from: number) => number} how many numbers were drawn
 */
export const exactly = ({ failureTimes, normalQuantile }) => {
  const parts = PARTS.map(({ shape, scale, age, bill, spread }) => ({
    life: { life: { shape, scale }, run: age, pace: 1, patch: false, another: null },
    bill,
    sigma: Number(SPREADS[spread]),
  }));
  return (n, state, cost, from) => {
    let draws = 0;
    const uniform = () => {
      draws += 1;
      return (next(state) + 0.5) * 2 ** -32;
    };
    const luck = { exponential: () => -Math.log1p(-uniform()), quantile: uniform };
    for (let i = 0; i < n; i += 1) {
      let sum = 0;
      parts.forEach(({ life, bill, sigma }, j) => {
        if (j === TO_A_VEHICLE) {
          cost[from + 2 * i] = sum;
          sum = 0;
        }
        for (const time of failureTimes(life, [], MONTHS, luck)) {
          const worth = /** @type {number} */ (discount[Math.max(1, Math.ceil(time))]);
          sum += bill * Math.exp(sigma * normalQuantile(luck.quantile()) - (sigma * sigma) / 2) * worth;
        }
      });
      cost[from + 2 * i + 1] = sum;
    }
    return draws;
  };
};
