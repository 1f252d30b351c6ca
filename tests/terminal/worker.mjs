/**
 * A worker that draws nothing, but says what it was asked and by which thread. The scenario tells it what to do:
 * `slow` is the place that takes long, `breaks` the place at which it breaks.
 */
import { parentPort, threadId } from 'node:worker_threads';

parentPort?.on('message', ({ scenario, settings, taken }) => {
  for (;;) {
    const place = Atomics.add(taken, 0, 1);
    if (place >= settings.length) break;
    if (place === scenario.breaks) throw new Error('broken');
    if (place === scenario.slow) Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300);
    parentPort?.postMessage({ place, draws: { threadId, setting: settings[place] } });
  }
  parentPort?.postMessage('nothing left');
});
