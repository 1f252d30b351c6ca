import { describe, expect, it } from 'vitest';
import { drawnForOthers } from '../../../src/engine/analysis/futuresSummary.ts';
import { decide, decideAtAverage } from '../../../src/engine/answer/decide.ts';
import type { Scenario } from '../../../src/engine/scenario/inputs/scenario.ts';
import { SCRAMBLES, simulateScramble } from '../../../src/engine/simulation/draws.ts';
import { scenarioOf } from '../../support/file.ts';

/**
 * A lease that allows what is driven on average costs nothing over the allowance at average distance, but does in half of
 * all futures. The other one is bought, for a price at which it is a little dearer at average inputs.
 */
const leased = scenarioOf((file) => {
  const { what, insurance_a_year, odometer } = file.replacement;
  Object.assign(file, { miles_a_year: { low: 4000, likely: 9000, high: 16000 } });
  const lease = {
    starts_from: 17800,
    residual: 9000,
    money_factor: 0.002,
    months: 36,
    miles_a_year: 9600,
    over_a_mile: 0.4,
  };
  const other = { insurance_a_year, odometer, down_payment: 2000, loan: { apr: 8.9, months: 66 } };
  Object.assign(file, {
    replacement: [
      { what, insurance_a_year, odometer, lease },
      { ...other, what: '2020 estate', price_with_all_fees: 21_400 },
    ],
  });
});

const drawn = (scenario: Scenario, points = 64) =>
  Array.from({ length: SCRAMBLES }, (_, scramble) =>
    simulateScramble(scenario, { seed: 1, scramble, from: 0, to: points }),
  );

describe('the pair that is compared future by future', () => {
  it('is the best of each side by mean cost over the futures, not at average inputs', () => {
    const draws = drawn(leased);
    const others = drawnForOthers(leased, draws);
    expect(others?.facts.chance.pair).not.toBeNull();
    const [ledger, decision] = [decideAtAverage(leased, 'test'), decide(leased, 'test', draws)];
    expect(ledger.bestReplace?.replacement).toBe(0);
    expect(decision.bestReplace?.replacement).toBe(1);
    expect(decision.chances?.pair?.replace).toBe(decision.bestReplace?.id);
    const means = new Map(decision.chances?.ways.map(({ id, cost }) => [id, cost.mean.value]));
    const ofSide = (side: string) =>
      decision.options.filter((one) => one.side === side).map(({ id }) => means.get(id) as number);
    expect(means.get(decision.bestReplace?.id ?? '')).toBe(Math.min(...ofSide('replace')));
    // The ledger's own D stays that of the ways that are best at average inputs.
    expect(decision.difference).toEqual(ledger.difference);
  });

  it('stands once it was drawn for', () => {
    const others = drawnForOthers(leased, drawn(leased)) as Scenario;
    expect(drawnForOthers(others, drawn(others))).toBeNull();
  });
});
