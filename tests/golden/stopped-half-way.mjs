/**
 * Loaded before the command: the first file it writes stops half-way, as a signal would find it. Node's own
 * write stays pending for ever, so only the command's clean-up can end the run well.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

/** @param {number} handle @param {string} text */
const halfWritten = (handle, text) => {
  fs.writeSync(handle, text.slice(0, text.length / 2));
  fs.writeSync(2, 'half of it is written\n');
  setTimeout(() => {}, 30_000);
  process.kill(process.pid, process.env.STOP_BY);
};
Object.assign(fs, { writeFile: halfWritten });
syncBuiltinESMExports();
