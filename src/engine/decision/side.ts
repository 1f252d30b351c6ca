/** Keep side, replace side, or neither: replacing later and doing without have results of their own. */
export type Side = 'keep' | 'replace' | 'later' | 'without';

/** A way that is not open, and why. */
export interface ClosedWay {
  readonly id: string;
  readonly label: string;
  readonly why: string;
}
