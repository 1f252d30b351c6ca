import { readFileSync } from 'node:fs';
import { describe } from 'vitest';
import { average, standardDeviation } from '../../src/engine/chance/estimates.ts';
import { ksLimit } from '../support/goodness.ts';
import { type Inputs, publishedCases } from './cases.ts';

const data = JSON.parse(
  readFileSync(new URL('./data/reliability-datasets.json', import.meta.url), 'utf8'),
) as { readonly [name: string]: readonly number[] };

/** Sets that are a rule: one middle value, then 500 times a tenth below and a tenth above. */
const BY_RULE: { readonly [name: string]: readonly [number, number, number] } = {
  numacc2: [1.2, 1.1, 1.3],
  numacc3: [1000000.2, 1000000.1, 1000000.3],
  numacc4: [10000000.2, 10000000.1, 10000000.3],
};

const dataset = (given: Inputs): readonly number[] => {
  const name = given.get<string>('dataset');
  const rule = BY_RULE[name];
  const values = rule
    ? Array.from({ length: 1001 }, (_, k) => rule[k === 0 ? 0 : k % 2 === 1 ? 1 : 2] as number)
    : data[name];
  if (!values) throw new Error(`no data set named "${name}"`);
  return values;
};

describe('means, spreads and limits of fit', () => {
  publishedCases('reliability-statistics.json', {
    mean: (given) => ({ mean: average(dataset(given)) }),
    sd: (given) => ({ sd: standardDeviation(dataset(given)) }),
    // The limit that the tests of every sampler use.
    ksLimit: (given) => ({ distance: ksLimit(given.num('n'), given.get<'5 %' | '1 %'>('level')) }),
  });
});
