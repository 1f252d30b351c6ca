import { afterEach, describe, expect, it } from 'vitest';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import type { DrawSetting } from '../../src/engine/simulation/draws.ts';
import type { Crew } from '../../src/terminal/effects.ts';
import { callCrew } from '../../src/terminal/node/crew.ts';

const WORKER = new URL('worker.mjs', import.meta.url);
const SETTINGS: readonly DrawSetting[] = Array.from({ length: 16 }, (_, scramble) => ({
  seed: 1,
  scramble,
  from: 0,
  to: 64,
}));

interface Said {
  readonly threadId: number;
  readonly setting: DrawSetting;
}

let crew: Crew | null = null;
afterEach(() => crew?.end());

const drawn = async (size: number, does: object, program = WORKER): Promise<Map<number, Said>> => {
  crew = callCrew(program, size);
  return drawnBy(crew, does);
};
const drawnBy = async (by: Crew, does: object = {}): Promise<Map<number, Said>> => {
  const found = new Map<number, Said>();
  const taken = new Int32Array(new SharedArrayBuffer(4));
  await by.draw({ scenario: does as Scenario, settings: SETTINGS, taken }, (place, draws) => {
    expect(found.has(place)).toBe(false);
    found.set(place, draws as unknown as Said);
  });
  return found;
};
const settingsOf = (found: Map<number, Said>): (DrawSetting | undefined)[] =>
  SETTINGS.map((_, place) => found.get(place)?.setting);

describe('worker threads', () => {
  it.each([1, 2, 4])('%i of them draw every set once', async (size) => {
    expect(settingsOf(await drawn(size, {}))).toEqual(SETTINGS);
  });

  it('draw again when asked again', async () => {
    await drawn(2, {});
    expect(settingsOf(await drawnBy(crew as Crew))).toEqual(SETTINGS);
  });

  it('go on while one is slow', async () => {
    const found = await drawn(2, { slow: 0 });
    expect(settingsOf(found)).toEqual(SETTINGS);
    const slow = found.get(0)?.threadId;
    expect([...found.values()].filter(({ threadId }) => threadId === slow).length).toBeLessThan(8);
  });

  it('leave undone only what broke one of them', async () => {
    const found = await drawn(2, { breaks: 3 });
    expect([...SETTINGS.keys()].filter((place) => !found.has(place))).toEqual([3]);
    expect(settingsOf(await drawnBy(crew as Crew))).toHaveLength(16);
  });

  it('draw nothing where none can start', async () => {
    const nowhere = new URL('no-such-worker.mjs', import.meta.url);
    expect((await drawn(2, {}, nowhere)).size).toBe(0);
    expect((await drawn(2, {}, new URL('https://stillworth.invalid/worker.js'))).size).toBe(0);
    expect((await drawn(0, {})).size).toBe(0);
  });

  it('stop at whatever they are when sent home', async () => {
    crew = callCrew(WORKER, 1);
    const found = drawnBy(crew, { slow: 0 });
    crew.end();
    expect((await found).size).toBeLessThan(16);
    expect((await drawnBy(crew)).size).toBe(0);
  });
});
