import type { ClaimWork, ExtraWork, Rebuild } from '../inputs/claim.ts';
import { CLAIM } from '../inputs/claimSpecs.ts';
import { DEFAULTS, type Default } from '../inputs/defaults.ts';
import type { Spec } from '../inputs/specs.ts';
import type { SparseClaim } from '../schema/scenarioSchema.ts';
import { completeCost, doneBy } from './completeWork.ts';
import type { Fallback, Pen } from './quantityBook.ts';

const D = DEFAULTS.claim;

type Plans = 'own_repair' | 'safe_only' | 'rebuild';
type SparsePlan = NonNullable<SparseClaim[Plans]>;

/** Everything of a plan but the days it takes. */
const workOf = (
  file: SparsePlan,
  pen: Pen,
  visible: Default | Fallback = D.valueLost,
): Omit<ClaimWork, 'days'> => ({
  by: doneBy(file),
  ...completeCost(file, pen),
  paint: pen.take('paint', 'paint', CLAIM.paint, file.paint, D.extras),
  tools: pen.take('tools', 'tools', CLAIM.tools, file.tools, D.extras),
  toolsBring: pen.take('toolsBring', 'tools_bring', CLAIM.toolsBring, file.tools_bring, D.extras),
  qualified: pen.take('qualified', 'qualified_work', CLAIM.qualified, file.qualified_work, D.extras),
  valueLost: pen.take('valueLost', 'value_lost', CLAIM.valueLost, file.value_lost, visible),
});

/** A plan of the household's own, or null where there is none; `visible` stands in for the value that stays lost. */
export const completePlan = (
  file: SparseClaim['own_repair'] | SparseClaim['safe_only'],
  pen: Pen,
  visible?: Fallback,
): ClaimWork | null =>
  file
    ? {
        ...workOf(file, pen, visible),
        days: pen.take('days', 'days', CLAIM.planDays, file.days, D.daysInShop),
      }
    : null;

/** Keeping it after a total loss; its insurance is never a default. */
export const completeRebuild = (file: SparseClaim['rebuild'], pen: Pen): Rebuild | null =>
  file
    ? {
        ...workOf(file, pen),
        inspection: pen.take('inspection', 'inspection', CLAIM.inspection, file.inspection, D.extras),
        retitling: pen.take('retitling', 'retitling', CLAIM.retitling, file.retitling, D.extras),
        monthsOff: pen.take(
          'monthsOff',
          'months_off_road',
          CLAIM.monthsOff,
          file.months_off_road,
          D.monthsOff,
        ),
        refused: pen.take('refused', 'refused', CLAIM.refused, file.refused, D.refused),
        insuranceAYear: pen.take(
          'insuranceAYear',
          'insurance_a_year',
          CLAIM.insurance,
          file.insurance_a_year,
        ),
        titleFactor: pen.take(
          'titleFactor',
          'title_factor',
          CLAIM.titleFactor,
          file.title_factor,
          D.titleFactor,
        ),
      }
    : null;

type Needed = NonNullable<SparseClaim['also_needed']>;

/** Work that is needed whoever repairs it. `pen` stands at the claim. */
export const completeExtras = (file: SparseClaim['also_needed'], pen: Pen) => {
  const extra = (key: string, path: keyof Needed, spec: Spec): ExtraWork | null => {
    const given = file?.[path];
    if (!given) return null;
    const costs = pen.at(key, `also_needed.${path}`).take('costs', 'costs', spec, given.costs);
    return { costs, inEstimate: given.in_estimate };
  };
  return {
    alignment: extra('alignment', 'alignment', CLAIM.alignment),
    calibration: extra('calibration', 'sensor_calibration', CLAIM.calibration),
    belts: extra('belts', 'seat_belts', CLAIM.belts),
    childSeats: extra('childSeats', 'child_seats', CLAIM.childSeats),
  };
};
