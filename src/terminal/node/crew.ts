import { Worker } from 'node:worker_threads';
import type { ScrambleDraws } from '../../engine/simulation/draws.ts';
import type { Asked, Crew } from '../effects.ts';

/** What a worker says: one setting's draws, or that none is left to take. */
export type Told = { readonly place: number; readonly draws: ScrambleDraws } | 'nothing left';

/**
 * Worker threads that draw futures. Each takes the next set from the shared count, so that a slow one holds nobody
 * up and none waits while this thread is busy. One that cannot start, or breaks, takes no more.
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
    draw: async (asked, drawn) => {
      await Promise.all([...workers].map((worker) => askOne(worker, asked, drawn)));
    },
    end: () => {
      for (const worker of workers) void worker.terminate();
      workers.clear();
    },
  };
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
const askOne = (worker: Worker, asked: Asked, drawn: Parameters<Crew['draw']>[1]): Promise<void> =>
  new Promise((done) => {
    const hear = (told: Told): void => {
      if (told === 'nothing left') finish();
      else drawn(told.place, told.draws);
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
