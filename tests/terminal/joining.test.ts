import { describe, expect, it } from 'vitest';
import { joining } from '../../src/terminal/joining.ts';
import { world } from './world.ts';

/** Sets that come after so many milliseconds each; whether this thread has joined after each of them. */
const joinedAfter = async (sets: number, ...waits: readonly number[]): Promise<boolean[]> => {
  const { effects, wait } = world();
  const { joins, came } = joining(effects, sets);
  let joined = false;
  void joins.then(() => {
    joined = true;
  });
  const seen: boolean[] = [];
  for (const milliseconds of waits) {
    wait(milliseconds);
    came();
    await Promise.resolve();
    seen.push(joined);
  }
  return seen;
};

describe('this thread joins the crew', () => {
  it('once what is missing would take it long, at the pace of the latest two sets', async () => {
    expect(await joinedAfter(16, 50, 150)).toEqual([false, true]);
    expect(await joinedAfter(16, 50, 40, 40)).toEqual([false, false, false]);
  });

  it('not for sets that came while it was busy, all at once', async () => {
    expect(await joinedAfter(16, 900, 0, 0, 40)).toEqual([false, false, false, false]);
  });

  it('not near the end, however slow they are', async () => {
    expect(await joinedAfter(4, 100, 300, 300)).toEqual([false, false, false]);
  });

  it('after four seconds whatever has come, unless it is forgotten', async () => {
    for (const forgets of [false, true]) {
      const { effects, wait } = world();
      const { joins, forget } = joining(effects, 16);
      let joined = false;
      void joins.then(() => {
        joined = true;
      });
      if (forgets) forget();
      wait(4000);
      await Promise.resolve();
      expect(joined).toBe(!forgets);
    }
  });
});
