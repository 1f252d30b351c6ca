import type { WorkPrices } from '../../cashflow/contracts/work.ts';
import type { Levels } from '../../cashflow/levels.ts';
import type { Inputs, PricesRise } from '../../scenario/inputs/inputs.ts';

/** Price levels of each family of costs, each worked out when it is asked for. */
export class FamilyLevels implements Record<keyof PricesRise, Levels> {
  private readonly household: Inputs['household'];
  private readonly levelsOf: (growth: number, horizon: number) => Levels;
  private generalKnown: Levels | null = null;
  private energyKnown: Levels | null = null;
  private coverKnown: Levels | null = null;
  private repairsKnown: Levels | null = null;
  private ownTimeKnown: Levels | null = null;
  private vehiclesKnown: Levels | null = null;
  private feesKnown: Levels | null = null;

  constructor(household: Inputs['household'], levels: (growth: number, horizon: number) => Levels) {
    this.household = household;
    this.levelsOf = levels;
  }

  private of(growth: number): Levels {
    return this.levelsOf(growth, this.household.lookAhead);
  }

  get general(): Levels {
    this.generalKnown ??= this.of(this.household.pricesRise.general);
    return this.generalKnown;
  }
  get energy(): Levels {
    this.energyKnown ??= this.of(this.household.pricesRise.energy);
    return this.energyKnown;
  }
  get cover(): Levels {
    this.coverKnown ??= this.of(this.household.pricesRise.cover);
    return this.coverKnown;
  }
  get repairs(): Levels {
    this.repairsKnown ??= this.of(this.household.pricesRise.repairs);
    return this.repairsKnown;
  }
  get ownTime(): Levels {
    this.ownTimeKnown ??= this.of(this.household.pricesRise.ownTime);
    return this.ownTimeKnown;
  }
  get vehicles(): Levels {
    this.vehiclesKnown ??= this.of(this.household.pricesRise.vehicles);
    return this.vehiclesKnown;
  }
  get fees(): Levels {
    this.feesKnown ??= this.of(this.household.pricesRise.fees);
    return this.feesKnown;
  }
}

/** The household's prices of work, at these levels. */
export class PricesOfWork implements WorkPrices {
  private readonly household: Inputs['household'];
  private readonly levels: FamilyLevels;

  constructor(household: Inputs['household'], levels: FamilyLevels) {
    this.household = household;
    this.levels = levels;
  }

  get ownHour(): number {
    return this.household.priceOfOwnHour;
  }
  get shopHour(): number {
    return this.household.atHome.shopHour;
  }
  get dayWithout(): number {
    return this.household.dayWithout;
  }
  get parts(): Levels {
    return this.levels.repairs;
  }
  get ownTime(): Levels {
    return this.levels.ownTime;
  }
  get general(): Levels {
    return this.levels.general;
  }
}
