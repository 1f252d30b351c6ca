/** How likely ours is still on the road, collision and theft aside: by what this household pays to keep it, and by the table. */
import { bigBillsAMonth } from '../plans/vehicle/bigBills.ts';
import type { Context } from '../plans/vehicle/context.ts';
import { ourLasting } from '../plans/vehicle/ours.ts';
import { yearOf } from '../quantity/month.ts';
import { bigBillsAYear, type VehicleKind } from '../scenario/inputs/tables.ts';

export interface Survival {
  /** Which column of the table it belongs to. */
  readonly kind: VehicleKind;
  readonly age: number;
  /** At the end of each year looked at, the last one whole: chances that it has not been given up by then. */
  readonly years: readonly {
    readonly year: number;
    /** By what this household pays; with a shop doing all of the work; and of all of its kind and age. */
    readonly ours: number;
    readonly atShop: number;
    readonly ofItsKind: number;
  }[];
  /** The same of ours at the end of each month 0..H. */
  readonly byMonth: readonly number[];
  /** Big bills expected within the first year. */
  readonly bigBillsAYear: number;
}

/** At average inputs. Null where the file leaves big bills out, or asks for less than a year. */
export const survivalOf = (ctx: Context): Survival | null => {
  const { vehicle, household } = ctx.inputs;
  if (household.bigBills === 0 || ctx.horizon < 12) return null;
  const { there } = ourLasting(ctx);
  const { bodyStyle: kind, age } = vehicle;
  let met = 0;
  const years = Array.from({ length: Math.floor(ctx.horizon / 12) }, (_, y) => {
    met += bigBillsAYear(kind, age + y);
    const month = 12 * (y + 1);
    return {
      year: y + 1,
      ours: there.counted[month] as number,
      atShop: there.shop[month] as number,
      ofItsKind: Math.exp(-met),
    };
  });
  let first = 0;
  for (let m = 1; m <= 12; m++) first += bigBillsAMonth(vehicle, yearOf(m), ctx);
  return { kind, age, years, byMonth: Array.from(there.counted), bigBillsAYear: first };
};
