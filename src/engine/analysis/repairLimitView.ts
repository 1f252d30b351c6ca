/**
 * The repair limit as the report, the terminal and the JSON read it: the largest bill worth paying. Currency units at
 * the prices of the month they fall in; fixed before any future is drawn, from mean inputs.
 */
export interface LimitPoint {
  readonly month: number;
  /** Looking one horizon ahead from that month. */
  readonly limit: number;
  /** Looking twice as far; null where that is further than anything is looked at. */
  readonly lookingTwice: number | null;
}

export interface ComponentLimit {
  readonly component: string;
  /** Position among the present vehicle's components; null: any repair nobody named. */
  readonly position: number | null;
  /** Months 0 (today, once the needed work is done) to 24, its clock running and nothing having failed till then. */
  readonly byMonth: readonly LimitPoint[];
  /** Somewhere the two horizons differ by more than a fifth. */
  readonly hangsOnHorizon: boolean;
  /** What such a bill comes to on average today; and where one in ten is dearer, with a range given. */
  readonly usualBill: number;
  readonly badBill: number | null;
  /** What the days without the vehicle add today to a shop's bill for it; they count against the limit. */
  readonly daysCost: number;
  /** It is unsafe to drive once this has failed. */
  readonly unsafe: boolean;
}

export interface WalkAway {
  /** What it would be replaced with if it broke down today, and the month in which replacing is cheapest if nothing fails (H: never). */
  readonly replacement: string;
  readonly components: readonly ComponentLimit[];
  /** Where another one like ours is what would be got once ours has broken down today; null where it is not. */
  readonly likeOurs: {
    readonly name: string;
    /** All that getting one takes within its first year, besides running it; and what ours brings as it then stands. */
    readonly costs: number;
    readonly brings: number;
  } | null;
  readonly bestMonth: number;
  /**
   * At average inputs handing it on today costs less than keeping it, or no more than any later month: a limit is then for
   * whoever keeps it all the same.
   */
  readonly letGoToday: boolean;
  readonly horizon: number;
}

/** The answer to a shop's phone call. */
export interface BillAnswer {
  readonly component: string;
  readonly amount: number;
  readonly limit: number;
  /** The amount and what paying adds besides it: days without the vehicle. Compared with the limit. */
  readonly paying: number;
  readonly answer: 'pay' | 'walk away' | 'even';
  /** By how much the cheaper of the two is cheaper; never below nil. */
  readonly by: number;
  /** With twice the horizon the answer is the other one. */
  readonly otherwiseLookingTwice: boolean;
  readonly unsafe: boolean;
  /** Handing it on today costs less: the answer is for whoever keeps it all the same. */
  readonly letGoToday: boolean;
}
