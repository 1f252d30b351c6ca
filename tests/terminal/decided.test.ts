import { expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { DrawSetting } from '../../src/engine/simulation/draws.ts';
import { decided } from '../../src/terminal/decided.ts';
import type { Crew } from '../../src/terminal/effects.ts';
import { withFutures } from '../../src/terminal/futures.ts';
import { SHORT } from './scenario.ts';
import { world } from './world.ts';

const scenario = (futures: number) => {
  const parsed = parseScenario(SHORT, { file: 'mine.yaml', today: '2026-11-25' });
  if ('problems' in parsed) throw new Error('the scenario is not in order');
  return withFutures(parsed.scenario, { futures, seed: null }, 16).scenario;
};

it('calls in nobody where there is nothing to draw', async () => {
  const crew = (): never => {
    throw new Error('called');
  };
  expect(await decided(scenario(0), { ...world().effects, crew })).toMatchObject({ chances: null });
});

it('sends the crew home and clears the line when told to stop while they draw', async () => {
  let asked: readonly DrawSetting[] = [];
  let ended = 0;
  const crew: Crew = {
    draw: ({ settings }) => {
      asked = settings;
      return new Promise(() => {});
    },
    end: () => {
      ended += 1;
    },
  };
  const made = world({ terminal: true, crew });
  void decided(scenario(1024), made.effects);
  expect(asked).toHaveLength(16);
  made.wait(500);
  expect(made.progress).toEqual(['Drawing futures: 0 of 1,024']);
  expect(ended).toBe(0);
  made.stop();
  expect(ended).toBe(1);
  expect(made.progress.at(-1)).toBe('');
});

it('sends the crew home when something goes wrong', async () => {
  let ended = 0;
  const crew: Crew = {
    draw: () => Promise.reject(new Error('broken')),
    end: () => {
      ended += 1;
    },
  };
  await expect(decided(scenario(1024), world({ crew }).effects)).rejects.toThrow('broken');
  expect(ended).toBeGreaterThan(0);
});
