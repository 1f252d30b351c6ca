import { Worker } from 'node:worker_threads';
import type { Scenario } from '../../engine/scenario/inputs/scenario.ts';
import type { DrawSetting, ScrambleDraws } from '../../engine/simulation/draws.ts';
import type { Crew, Drawn, Here } from '../effects.ts';

/** What a worker is asked: the settings, and the shared count of those that somebody has taken already. */
export interface Asked {
  readonly scenario: Scenario;
  readonly settings: readonly DrawSetting[];
  readonly taken: Int32Array;
}

/** What a worker says: one setting's draws, and when they were there since 1970; or that none is left to take. */
export type Told =
  | { readonly place: number; readonly draws: ScrambleDraws; readonly at: number }
  | 'nothing left';

/**
 * Worker threads that draw futures. Each takes the next scramble from a count they share, so that a slow one holds
 * nobody up and none waits while this thread is busy. One that cannot start, or breaks, takes no more.
 *
 * @param program the worker's own program, beside this one
 * @param size how many to call in at most
 */
export const callCrew = (program: URL, size: number): Crew => {
  const workers = new Set<Worker>();
  for (let i = 0; i < size; i += 1) {
    const worker = startWorker(program);
    if (worker === null) break;
    workers.add(worker);
    // What broke it shows when its share is drawn here; unheard, the error would end the program.
    worker.on('error', () => workers.delete(worker));
    worker.once('exit', () => workers.delete(worker));
  }
  return {
    draw: async (scenario, settings, here, drawn) => {
      const asked: Asked = { scenario, settings, taken: new Int32Array(new SharedArrayBuffer(4)) };
      const others = Promise.all([...workers].map((worker) => askOne(worker, asked, drawn)));
      if (here !== null) {
        // Resolves at once where there are no others, and takes nothing where they leave nothing.
        await Promise.race([here.joins, others]);
        await takeShare(asked, here, drawn);
      }
      await others;
    },
    end: () => {
      for (const worker of workers) void worker.terminate();
      workers.clear();
    },
  };
};

/** This thread takes its share of the same count, one after the other, whenever it has nothing else to do. */
const takeShare = async ({ settings, taken }: Asked, here: Here, drawn: Drawn): Promise<void> => {
  for (;;) {
    await new Promise<void>((done) => setImmediate(done));
    const place = Atomics.add(taken, 0, 1);
    const setting = settings[place];
    if (setting === undefined) return;
    const draws = await here.draw(setting);
    drawn(place, draws, performance.now());
  }
};

/** Null where this process may have no threads. Node's own options are not for them. */
const startWorker = (program: URL): Worker | null => {
  try {
    return new Worker(program, { execArgv: [] });
  } catch {
    return null;
  }
};

/** Resolves when the worker has nothing left to take, or is gone: what it had drawn by then comes before its end. */
const askOne = (worker: Worker, asked: Asked, drawn: Drawn): Promise<void> =>
  new Promise((done) => {
    const hear = (told: Told): void => {
      if (told === 'nothing left') finish();
      else drawn(told.place, told.draws, told.at - performance.timeOrigin);
    };
    const finish = (): void => {
      worker.off('message', hear);
      worker.off('exit', finish);
      done();
    };
    worker.on('message', hear);
    worker.once('exit', finish);
    worker.postMessage(asked);
  });
