import { expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { DrawSetting } from '../../src/engine/simulation/draws.ts';
import { decided } from '../../src/terminal/decided.ts';
import type { Drawing } from '../../src/terminal/drawing.ts';
import type { Crew } from '../../src/terminal/effects.ts';
import { withFutures } from '../../src/terminal/futures.ts';
import { SHORT } from './scenario.ts';
import { world } from './world.ts';

const never: Drawing = {
  scrambles: 16,
  load: async () => ({
    simulate: () => {
      throw new Error('nothing is drawn here');
    },
    joined: (first) => first,
    settled: () => true,
    drawnForOthers: () => null,
  }),
};

const scenario = (futures: number) => {
  const parsed = parseScenario(SHORT, { file: 'mine.yaml', today: '2026-11-25' });
  if ('problems' in parsed) throw new Error('the scenario is not in order');
  return withFutures(parsed.scenario, { futures, seed: null }, 16).scenario;
};

it('calls in nobody where there is nothing to draw', async () => {
  const { effects } = world();
  const crew: Crew = {
    draw: () => {
      throw new Error('called');
    },
    end: () => {},
  };
  expect(await decided(scenario(0), never, crew, effects)).toMatchObject({ chances: null });
  expect(await decided(scenario(1024), never, null, effects)).toMatchObject({ chances: null });
});

it('sends the crew home and clears the line when told to stop while they draw', async () => {
  let asked: readonly DrawSetting[] = [];
  let ended = 0;
  const crew: Crew = {
    draw: (_, settings) => {
      asked = settings;
      return new Promise(() => {});
    },
    end: () => {
      ended += 1;
    },
  };
  const made = world({ terminal: true });
  void decided(scenario(1024), never, crew, made.effects);
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
  await expect(decided(scenario(1024), never, crew, world().effects)).rejects.toThrow('broken');
  expect(ended).toBeGreaterThan(0);
});
