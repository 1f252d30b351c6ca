import { describe, expect, it } from 'vitest';
import { joining } from '../../src/terminal/joining.ts';
import { world } from './world.ts';

/** Sets that are there so many milliseconds after each other; whether this thread has joined after each of them. */
const joinedAfter = async (
  sets: number,
  waits: readonly number[],
  free: Promise<unknown> = Promise.resolve(),
): Promise<boolean[]> => {
  const { joins, came } = joining(world().effects, sets, free);
  await Promise.resolve();
  let joined = false;
  void joins.then(() => {
    joined = true;
  });
  let at = 0;
  const seen: boolean[] = [];
  for (const milliseconds of waits) {
    at += milliseconds;
    came(at);
    await Promise.resolve();
    seen.push(joined);
  }
  return seen;
};

describe('this thread joins the crew', () => {
  it('once what is missing would take it long, at the pace of the latest two sets', async () => {
    expect(await joinedAfter(16, [50, 150])).toEqual([false, true]);
    expect(await joinedAfter(16, [50, 40, 40])).toEqual([false, false, false]);
  });

  it('not near the end, however slow they are', async () => {
    expect(await joinedAfter(4, [100, 300, 300])).toEqual([false, false, false]);
  });

  it('not before it is free, and then at the pace of that time', async () => {
    const never = new Promise(() => {});
    expect(await joinedAfter(16, [50, 150, 150, 40], never)).toEqual([false, false, false, false]);
    for (const [last, joins] of [
      [40, false],
      [150, true],
    ] as const) {
      let isFree = (): void => {};
      const free = new Promise<void>((done) => {
        isFree = done;
      });
      const made = joining(world().effects, 16, free);
      let joined = false;
      void made.joins.then(() => {
        joined = true;
      });
      for (const at of [50, 200, 350, 350 + last]) made.came(at);
      isFree();
      await new Promise((done) => setTimeout(done));
      expect(joined).toBe(joins);
    }
  });

  it('free too where what it was busy with has failed', async () => {
    expect(await joinedAfter(16, [50, 150], Promise.reject(new Error('elsewhere')))).toEqual([false, true]);
  });

  it('after four seconds whatever has come, unless it is forgotten', async () => {
    for (const forgets of [false, true]) {
      const { effects, wait } = world();
      const { joins, forget } = joining(effects, 16, Promise.resolve());
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
