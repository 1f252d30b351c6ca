import type { DistanceUnit } from '../../quantity/distance.ts';
import type { Tree } from '../text/document.ts';

/** The units a household writes in, read from the file before anything else. */
export interface Units {
  /** ISO 4217. */
  readonly currency: string;
  /** Currency units per US dollar: carries the public tables, the defaults and the ranges. */
  readonly perDollar: number;
  readonly distance: DistanceUnit;
}

/** A file as it was read: plain data. */
export interface Written {
  readonly tree: Tree;
  readonly units: Units;
  /** ISO day of the decision. */
  readonly date: string;
}
