/** Loaded before the command: no worker thread can be started, as where a process may have none. */

import { syncBuiltinESMExports } from 'node:module';
import threads from 'node:worker_threads';

class Forbidden {
  constructor() {
    throw Object.assign(new Error('Access to this API has been restricted'), { code: 'ERR_ACCESS_DENIED' });
  }
}
Object.assign(threads, { Worker: Forbidden });
syncBuiltinESMExports();
