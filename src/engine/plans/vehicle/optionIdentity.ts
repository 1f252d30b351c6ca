/**
 * Keep side, replace side, or neither: another one like ours, doing without, and replacing later, which has a result of its
 * own.
 */
export type Side = 'keep' | 'replace' | 'like' | 'without' | 'later';

/** A way that is not open, and why. */
export interface ClosedWay {
  readonly id: string;
  readonly label: string;
  readonly why: string;
}

/** What an option is: its name, whose side it is on, and what becomes of the work and the vehicle in it. */
export interface OptionIdentity {
  /** Stable: "keep", "keep/patched", "replace/2021-hatchback/as-it-stands/trade-in". */
  readonly id: string;
  readonly side: Side;
  /** In a few words: "Mend it and keep it". */
  readonly label: string;
  /** Index into the scenario's replacements; null where none is bought. */
  readonly replacement: number | null;
  /** How the needed work is met. */
  readonly work: 'mended' | 'patched' | 'left' | 'skipped';
  /** How the present vehicle goes; null where it is kept. */
  readonly letGo: 'private' | 'trade-in' | 'as it stands' | 'scrap' | 'to the insurer' | null;
  readonly replaceMonth: number | null;
}
