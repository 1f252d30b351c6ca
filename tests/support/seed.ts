/**
 * One seed for everything that tests draw, so that a run tells the same twice. Another is tried with `SEED=7 npm run
 * unit`, or `SEED=$RANDOM` to look for trouble: a failure prints the seed it was found with.
 */
import fc from 'fast-check';

const { SEED = '20261125' } = process.env;
fc.configureGlobal({ seed: Number(SEED) });
