#!/usr/bin/env node
import { nodeEffects } from './node/effects.ts';
import { run } from './run.ts';

// The code is set, not exited with: what has been printed must reach a slow reader first.
process.exitCode = await run(process.argv.slice(2), nodeEffects(new URL('worker.js', import.meta.url)));
