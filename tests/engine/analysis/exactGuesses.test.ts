import { describe, expect, it } from 'vitest';
import { exactGuesses } from '../../../src/engine/analysis/exactGuesses.ts';
import type { Swing } from '../../../src/engine/answer/decision.ts';
import type { Quantity } from '../../../src/engine/scenario/inputs/scenario.ts';
import { decision } from '../../report/fixture.ts';

const [some] = decision.quantities;

const swing = (width: number, of: Partial<Quantity>): Swing => ({
  quantity: { ...(some as Quantity), mark: 'guess', range: null, ...of },
  low: { value: 1, difference: 500 - width },
  high: { value: 2, difference: 500 },
});

describe('guesses taken as exact', () => {
  it('counts those that move the answer a tenth as far as whatever moves it most', () => {
    const swings = [
      swing(1000, { mark: 'quoted' }),
      swing(100, {}),
      swing(-400, { mark: 'table' }),
      swing(99, {}),
      swing(400, { mark: 'measured' }),
      swing(400, { range: { low: 1, likely: 2, high: 3, min: null, max: null } }),
    ];
    expect(exactGuesses(swings)).toBe(2);
  });

  it('counts none where nothing moves the answer', () => {
    expect(exactGuesses([swing(0, {}), swing(0, {})])).toBe(0);
    expect(exactGuesses([])).toBe(0);
  });
});
