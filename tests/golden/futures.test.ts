import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { type DrawSetting, type ScrambleDraws, simulateScramble } from '../../src/engine/simulation/draws.ts';
import { callCrew } from '../../src/terminal/node/crew.ts';
import { SHORT } from '../terminal/scenario.ts';
import { inFolder, type Setting, stillworth } from './command.ts';

const FEW = ['--futures', '1024'];

/** The decision as JSON, from the built command. */
const json = (folder: string, args: readonly string[], setting: Setting = {}): string => {
  const { code, out, err } = stillworth(folder, ['report', 'mine.yaml', '--json', ...args], setting);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  return out;
};

const withScenario = (use: (folder: string) => void | Promise<void>): Promise<void> =>
  inFolder((folder) => {
    writeFileSync(join(folder, 'mine.yaml'), SHORT);
    return use(folder);
  });

let seventh: string | null = null;
/** What seed 7 gives, from a run that nothing stands in the way of. */
const ofSeedSeven = (folder: string): string => {
  seventh ??= json(folder, [...FEW, '--seed', '7']);
  return seventh;
};

describe('drawn futures', () => {
  it('are the same for the same seed, and others for another', () =>
    withScenario((folder) => {
      const first = ofSeedSeven(folder);
      expect(json(folder, [...FEW, '--seed', '7'])).toBe(first);
      const { chances } = JSON.parse(first);
      expect(chances.seed).toBe(7);
      expect(chances.futures).toBeGreaterThanOrEqual(1024);
      const other = JSON.parse(json(folder, [...FEW, '--seed', '8'])).chances;
      expect(other.pair.mean).not.toEqual(chances.pair.mean);
    }));

  it('are the same where no thread can be started', () =>
    withScenario((folder) => {
      const alone = { node: ['--import', resolve('tests/golden/without-threads.mjs')] };
      expect(json(folder, [...FEW, '--seed', '7'], alone)).toBe(ofSeedSeven(folder));
    }));

  it('tell in words that their number was carried up, and print nothing but the decision', () =>
    withScenario((folder) => {
      const { code, out, err } = stillworth(folder, ['report', 'mine.yaml', '--json', '--futures', '1,500']);
      expect({ code, err }).toEqual({
        code: 0,
        err: 'Drawing 2,048 futures, not 1,500: 16 sets of 128, and a set is a power of two.\n',
      });
      expect(JSON.parse(out)).toHaveProperty('chances');
    }));

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ])('leave nothing behind when %s comes while they are drawn', (signal, code) =>
    withScenario((folder) => {
      const stopped = stillworth(folder, ['report', 'mine.yaml', '--futures', '1048576'], {
        node: ['--import', resolve('tests/golden/stopped-while-drawing.mjs')],
        environment: { STOP_BY: signal },
      });
      expect(stopped).toEqual({ code, out: '', err: '' });
      expect(readdirSync(folder)).toEqual(['mine.yaml']);
      expect(readFileSync(join(folder, 'mine.yaml'), 'utf8')).toBe(SHORT);
    }),
  );
});

describe('the built worker', () => {
  const parsed = parseScenario(SHORT, { file: 'mine.yaml', today: '2026-11-25' });
  if ('problems' in parsed) throw new Error('the scenario is not in order');
  const { scenario } = parsed;
  const settings: readonly DrawSetting[] = Array.from({ length: 16 }, (_, scramble) => ({
    seed: 7,
    scramble,
    from: 0,
    to: 16,
  }));

  it.each([1, 2, 3])('draws what this thread draws, with %i of them', async (size) => {
    const crew = callCrew(pathToFileURL(resolve('dist/worker.js')), size);
    const drawn: (ScrambleDraws | undefined)[] = settings.map(() => undefined);
    try {
      const taken = new Int32Array(new SharedArrayBuffer(4));
      await crew.draw({ scenario, settings, taken }, (place, draws) => {
        drawn[place] = draws;
      });
    } finally {
      crew.end();
    }
    expect(drawn).toEqual(settings.map((setting) => simulateScramble(scenario, setting)));
  });
});
