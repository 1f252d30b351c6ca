/** Loaded before the command: as soon as a worker is asked to draw, the program is told to stop. */
import { Worker } from 'node:worker_threads';

const ask = Worker.prototype.postMessage;
/** @param {Parameters<typeof ask>} asked */
Worker.prototype.postMessage = function askAndStop(...asked) {
  ask.apply(this, asked);
  process.kill(process.pid, process.env.STOP_BY);
};
