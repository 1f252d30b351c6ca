import type { ByReading, Contract, Sink } from './posting.ts';

/** What a bundle comes to for a solver: its present cost, and what it posts by itself, not as a series, in its month. */
export interface BundleSum {
  /** The discount factors it was added up with. */
  readonly factors: Float64Array;
  readonly present: ByReading<number>;
  readonly posted: ByReading<number>;
}

/** Contracts that several plans share: whoever wants only what they come to adds them up once. */
export interface Bundle {
  /** The month in which its contracts begin: the only one whose cash anybody asks for. */
  readonly month: number;
  readonly contracts: readonly Contract[];
  sum: BundleSum | null;
}

/** One contract in the place of many: a sink that takes bundles gets it whole, any other gets every posting. */
export const bundled = (contracts: readonly Contract[], month: number): Contract => {
  const bundle: Bundle = { month, contracts, sum: null };
  return (sink: Sink) => {
    if (sink.whole) sink.whole(bundle);
    else for (const contract of contracts) contract(sink);
  };
};
