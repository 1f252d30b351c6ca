import { expect, it } from 'vitest';
import { parseScenario } from '../../../src/engine/scenario/file/parse.ts';
import { simulateScramble } from '../../../src/engine/simulation/draws.ts';
import { joinDraws } from '../../../src/engine/simulation/join.ts';
import { SHORT } from '../../terminal/scenario.ts';

const parsed = parseScenario(SHORT, { file: 'mine.yaml', today: '2026-11-25' });
if ('problems' in parsed) throw new Error('the scenario is not in order');
const run = (from: number, to: number) =>
  simulateScramble(parsed.scenario, { seed: 3, scramble: 2, from, to });

it('draws apart and at once give the same', () => {
  const joined = joinDraws(joinDraws(run(0, 64), run(64, 128)), run(128, 256));
  expect(joined).toEqual(run(0, 256));
  expect(joined.costs[0]).toHaveLength(256);
});

it('draws that do not follow each other are refused', () => {
  expect(() => joinDraws(run(0, 64), run(128, 192))).toThrow('do not follow');
});
