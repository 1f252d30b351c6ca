#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';
import { nodeEffects } from './node/effects.ts';
import { run } from './run.ts';

// How much of other functions the optimizing compiler copies into one, a quarter of its usual measure. A run lasts a
// second or two and most of its code is new then: compiling it took a third of the time of all processors.
setFlagsFromString('--max-inlined-bytecode-size-cumulative=230');

// The code is set, not exited with: what has been printed must reach a slow reader first.
process.exitCode = await run(process.argv.slice(2), nodeEffects(new URL('worker.js', import.meta.url)));
