import type { Bundle, Contract, Sink } from './posting.ts';

/** One contract in the place of many: a sink that takes bundles gets it whole, any other gets every posting. */
export const bundled = (contracts: readonly Contract[], month: number): Contract => {
  const bundle: Bundle = { month, contracts, sum: null };
  return (sink: Sink) => {
    if (sink.whole) sink.whole(bundle);
    else for (const contract of contracts) contract(sink);
  };
};
