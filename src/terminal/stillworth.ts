#!/usr/bin/env node
import { setFlagsFromString } from 'node:v8';
import { nodeEffects } from './node/effects.ts';
import { run } from './run.ts';

// How much of other functions the optimizing compiler copies into one, a quarter of its usual measure: most code of a
// run is new, and compiling it takes longer than it saves. Without this line the short form's report takes a third
// longer, with futures or without.
setFlagsFromString('--max-inlined-bytecode-size-cumulative=230');

// The code is set, not exited with: what has been printed must reach a slow reader first.
process.exitCode = await run(process.argv.slice(2), nodeEffects(new URL('worker.js', import.meta.url)));
