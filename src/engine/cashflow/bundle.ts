import type { Bundle, Contract, Sink } from './posting.ts';

/** One contract in the place of many: a sink that takes bundles gets it whole, any other gets every posting. */
export const bundled = (contracts: readonly Contract[], month: number, lasts: boolean): Contract => {
  const bundle: Bundle = { month, contracts, lasts, sum: null };
  return (sink: Sink) => {
    if (!sink.whole?.(bundle)) for (const contract of contracts) contract(sink);
  };
};
