import { describe, expect, it } from 'vitest';
import { patchIncrements, renewalIncrements } from '../../../src/engine/chance/renewal.ts';
import { chancesByMonth, chancesOfRemaining } from '../../../src/engine/policy/clock.ts';
import { outlookOf } from '../../../src/engine/policy/outlook.ts';
import { costAhead, NEVER, type Part, stateOf } from '../../../src/engine/policy/part.ts';

const MONTHS = 72;
const sum = (list: ArrayLike<number>): number => Array.from(list).reduce((a, b) => a + b, 0);

describe('the outlook of a part', () => {
  it('agrees with the delayed renewal equation to 2 % for every age: in whole months none fails twice', () => {
    for (const life of [
      { scale: 100, shape: 3 },
      { scale: 40, shape: 1 },
      { scale: 70, shape: 6 },
    ]) {
      const { installed, fresh } = outlookOf(
        {
          repairIs: 'renewal',
          installed: chancesByMonth(life, 120, 1, MONTHS),
          fresh: chancesByMonth(life, 0, 1, MONTHS),
          patched: null,
        },
        MONTHS,
      );
      for (const age of [0, 5, 30]) {
        const aged = sum(renewalIncrements(life, 120 + age, life, 1, MONTHS - age));
        expect(Math.abs(sum(installed[age] as Float64Array) / aged - 1)).toBeLessThan(0.02);
        const renewed = sum(renewalIncrements(life, age, life, 1, MONTHS - age));
        expect(Math.abs(sum(fresh[age] as Float64Array) / renewed - 1)).toBeLessThan(0.02);
      }
    }
  });

  it('gives the published expectation of an aged part: 1.076 over the next 60 at 120 run', () => {
    const life = { scale: 100, shape: 3 };
    const law = {
      repairIs: 'renewal',
      installed: chancesByMonth(life, 120, 1, 60),
      fresh: chancesByMonth(life, 0, 1, 60),
      patched: null,
    } as const;
    expect(Math.abs(sum(outlookOf(law, 60).installed[0] as Float64Array) - 1.076)).toBeLessThan(0.005);
  });

  it('leaves the clock running for a patch, whatever has been patched', () => {
    const life = { scale: 50, shape: 2 };
    const hazard = patchIncrements(life, 30, 1, MONTHS);
    const { installed, patched } = outlookOf(
      { repairIs: 'patch', installed: hazard, fresh: patchIncrements(life, 0, 1, MONTHS), patched: null },
      MONTHS,
    );
    expect(patched).toBe(installed);
    expect(Array.from(installed[7] as Float64Array)).toEqual(Array.from(hazard.subarray(7)));
  });

  it('lets the part that is in fail once by its own law, and go on by its clock once patched', () => {
    const certain = chancesOfRemaining((month) => (month >= 2 ? 1 : 0), 4);
    expect(Array.from(certain)).toEqual([0, 1, 1, 1]);
    const { installed } = outlookOf(
      { repairIs: 'patch', installed: certain, fresh: [0, 0, 0, 0], patched: [0.1, 0.2, 0.3, 0.4] },
      4,
    );
    expect(Array.from(installed[0] as Float64Array)).toEqual([0, 1, 0.3, 0.4]);
  });
});

describe('what a part costs ahead', () => {
  const months = 12;
  const part = (restarts: readonly number[]): Part => ({
    repairIs: 'renewal',
    // In: fails in the first month for certain; a new one never does.
    outlook: outlookOf(
      {
        repairIs: 'renewal',
        installed: new Array(months).fill(1),
        fresh: new Array(months).fill(0),
        patched: null,
      },
      months,
    ),
    restarts,
    costs: new Array(months + 1).fill(100),
  });
  const flat = new Float64Array(months + 1).fill(1);
  const weights = { falling: flat, standing: flat };

  it('is nothing once scheduled work has renewed it, and one bill where the work comes too late', () => {
    const ahead = (restarts: readonly number[], month: number): number => {
      const one = part(restarts);
      return costAhead(one, month, stateOf(one, month, NEVER), weights, months).at(-1) as number;
    };
    expect(ahead([], 0)).toBe(100);
    expect(ahead([0], 0)).toBe(0);
    expect(ahead([1], 0)).toBe(100);
    expect(ahead([3], 3)).toBe(0);
    expect(ahead([3], 2)).toBe(100);
  });

  it('goes by the later of a repair and scheduled work', () => {
    const one = part([4]);
    expect(stateOf(one, 3, NEVER)).toBe(NEVER);
    expect(stateOf(one, 5, NEVER)).toBe(4);
    expect(stateOf(one, 5, 2)).toBe(4);
    expect(stateOf(one, 9, 7)).toBe(7);
  });
});
