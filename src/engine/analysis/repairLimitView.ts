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
  /** What it takes to bring it home and mend it there, own hours counted; null where no hours of one's own are known. */
  readonly atHome: AtHome | null;
}

/** Each part of it so much, and so much of whatever a shop asks. */
export interface AtHome {
  readonly parts: Share;
  readonly hours: Share;
  /** The two together, hours at what they are worth, with the days without the vehicle where these cost more. */
  readonly costs: Share;
  readonly tow: number;
  readonly days: number;
}

interface Share {
  readonly fixed: number;
  readonly ofBill: number;
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
  /** With own hands instead, the tow home in it; null where nothing is known of it. */
  readonly ownHands: {
    readonly costs: number;
    readonly parts: number;
    readonly hours: number;
    readonly tow: number;
    readonly days: number;
  } | null;
  /** The cheapest of the three; even where the cheaper way of mending it and letting it go come to about the same. */
  readonly answer: 'pay' | 'own hands' | 'walk away' | 'even';
  /** By how much mending it, the cheaper way, and letting it go lie apart; never below nil. */
  readonly by: number;
  /** With twice the horizon the answer is the other one. */
  readonly otherwiseLookingTwice: boolean;
  readonly unsafe: boolean;
  /** Handing it on today costs less: the answer is for whoever keeps it all the same. */
  readonly letGoToday: boolean;
}
