import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import type { DrawSetting, ScrambleDraws } from '../../src/engine/simulation/draws.ts';
import { type Drawing, drawFutures } from '../../src/terminal/drawing.ts';
import type { Crew } from '../../src/terminal/effects.ts';
import { withFutures } from '../../src/terminal/futures.ts';
import { startProgress } from '../../src/terminal/progress.ts';
import { NOBODY, world } from './world.ts';

/** Draws that say what they were drawn from, in place of figures. */
const said = (text: string): ScrambleDraws => ({ text }) as unknown as ScrambleDraws;
const textOf = (draws: ScrambleDraws): string => (draws as unknown as { text: string }).text;
const simulate = (setting: DrawSetting): ScrambleDraws =>
  said(`${setting.seed}/${setting.scramble}: ${setting.from}-${setting.to}`);

const drawing = (settledAt: number, others: Scenario | null = null): Drawing => {
  let looks = 0;
  return {
    scrambles: 4,
    simulate: (_, setting) => simulate(setting),
    joined: (first, further) => said(`${textOf(first)}, ${textOf(further)}`),
    drawnForOthers: () => others,
    settled: () => {
      looks += 1;
      return looks > settledAt;
    },
  };
};

/** All of a scenario that drawing looks at itself. */
const scenario = (futures: number): Scenario =>
  ({ facts: { chance: { seed: 9, futures } } }) as unknown as Scenario;

/** Takes all sets, or the first so many, draws the last first, and leaves those of `missing` undone. */
const crewThat = (missing: readonly number[], most = Number.POSITIVE_INFINITY): Crew => ({
  draw: async ({ settings, taken }, drawn) => {
    const mine = settings.slice(0, most);
    Atomics.add(taken, 0, mine.length);
    for (const [place, setting] of [...mine.entries()].reverse()) {
      await Promise.resolve();
      if (!missing.includes(place)) drawn(place, simulate(setting));
    }
  },
  end: () => {},
});

const drawn = async (crew: Crew, futures: number, settledAt: number, others: Scenario | null = null) => {
  const lines: string[] = [];
  const found = await drawFutures(scenario(futures), drawing(settledAt, others), {
    crew,
    free: Promise.resolve(),
    pause: () => Promise.resolve(),
    say: (line) => void lines.push(line),
  });
  return { scenario: found.scenario, draws: found.draws.map(textOf), lines };
};

describe('drawing futures', () => {
  it.each([
    ['by a crew that finishes in any order', crewThat([])],
    ['by a crew that leaves some undone', crewThat([0, 2])],
    ['by a crew that takes only the first', crewThat([], 1)],
    ['by nobody but this thread', NOBODY],
  ])('puts the sets in their order, %s', async (_, crew) => {
    const { draws } = await drawn(crew, 4096, 0);
    expect(draws).toEqual(['9/0: 0-1024', '9/1: 0-1024', '9/2: 0-1024', '9/3: 0-1024']);
  });

  it('leaves the sets to the crew until this thread is free, then takes what is left', async () => {
    const lines: string[] = [];
    let isFree = (): void => {};
    const found = drawFutures(scenario(4096), drawing(0), {
      crew: crewThat([], 3),
      free: new Promise<void>((done) => {
        isFree = done;
      }),
      pause: () => Promise.resolve(),
      say: (line) => void lines.push(line),
    });
    await new Promise((done) => setTimeout(done));
    expect(lines.at(-1)).toBe('Drawing futures: 3,072 of 4,096');
    isFree();
    expect((await found).draws).toHaveLength(4);
    expect(lines.at(-1)).toBe('Drawing futures: 4,096 of 4,096');
  });

  it('draws once more where other ways turn out best on average, and says for which it drew', async () => {
    const other = scenario(4096);
    const { scenario: drawnFor, lines } = await drawn(crewThat([]), 4096, 0, other);
    expect(drawnFor).toBe(other);
    expect(lines.filter((line) => line.includes(': 0 of'))).toHaveLength(2);
  });

  it('doubles until the figures are settled, drawing only further points', async () => {
    const { draws } = await drawn(crewThat([1]), 4096, 2);
    expect(draws[1]).toBe('9/1: 0-1024, 9/1: 1024-2048, 9/1: 2048-4096');
  });

  it('doubles three times at most, and never past the most', async () => {
    const { draws } = await drawn(NOBODY, 4096, 99);
    expect(draws[3]?.split(', ')).toHaveLength(4);
    const most = await drawn(NOBODY, 2 ** 19, 99);
    expect(most.draws[0]).toBe('9/0: 0-131072, 9/0: 131072-262144');
  });

  it('tells how far it is', async () => {
    const { lines } = await drawn(crewThat([3]), 4096, 1);
    expect(lines).toEqual([
      'Drawing futures: 0 of 4,096',
      'Drawing futures: 1,024 of 4,096',
      'Drawing futures: 2,048 of 4,096',
      'Drawing futures: 3,072 of 4,096',
      'Drawing futures: 4,096 of 4,096',
      'Drawing futures: 4,096 of 8,192',
      'Drawing futures: 5,120 of 8,192',
      'Drawing futures: 6,144 of 8,192',
      'Drawing futures: 7,168 of 8,192',
      'Drawing futures: 8,192 of 8,192',
    ]);
  });
});

describe('the number of futures', () => {
  const asked = scenario(4096);

  it.each([
    [1024, 1024],
    [1025, 2048],
    [5000, 8192],
    [1_048_576, 1_048_576],
    [0, 0],
  ])('%i comes to %i', (futures, drawn) => {
    const made = withFutures(asked, { futures, seed: null }, 16);
    expect(made.scenario.facts.chance).toMatchObject({ futures: drawn, seed: 9 });
    expect(made.told === null).toBe(futures === drawn);
  });

  it('is told in words where it is carried up', () => {
    expect(withFutures(asked, { futures: 5000, seed: 1 }, 16).told).toBe(
      'Drawing 8,192 futures, not 5,000: 16 sets of 512, and a set is a power of two.',
    );
  });

  it('is what the file says unless told', () => {
    expect(withFutures(asked, { futures: null, seed: null }, 16)).toEqual({ scenario: asked, told: null });
  });
});

describe('progress', () => {
  it('is told on a terminal only, after half a second, and cleared', () => {
    const { effects, progress, wait } = world({ terminal: true });
    const line = startProgress(effects);
    line.say('one');
    wait(499);
    expect(progress).toEqual([]);
    wait(1);
    line.say('two');
    line.end();
    wait(1000);
    expect(progress).toEqual(['one', 'two', '']);
  });

  it('counts what came before from the start of the program', () => {
    const { effects, progress, wait } = world({ terminal: true });
    wait(300);
    const line = startProgress(effects);
    line.say('one');
    wait(199);
    expect(progress).toEqual([]);
    wait(1);
    expect(progress).toEqual(['one']);
  });

  it('is not told where it takes less, or there is no terminal', () => {
    const quick = world({ terminal: true });
    const line = startProgress(quick.effects);
    line.say('one');
    line.end();
    quick.wait(1000);
    expect(quick.progress).toEqual([]);
    const piped = world();
    const silent = startProgress(piped.effects);
    silent.say('one');
    piped.wait(1000);
    silent.end();
    expect(piped.progress).toEqual([]);
  });
});
