import type { CoverPart } from '../inputs/claim.ts';
import { COVER } from '../inputs/claimSpecs.ts';
import { DEFAULTS, type Default } from '../inputs/defaults.ts';
import type { PresentVehicle } from '../inputs/inputs.ts';
import type { SparseVehicle } from '../schema/scenarioSchema.ts';
import { following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.cover;

type Kinds = NonNullable<SparseVehicle['cover']>;

const part = (file: Kinds['collision'], pen: Pen, chance: Default, value: number): CoverPart | null => {
  if (!file) return null;
  const { aYear, deductible, chanceAYear, meanLoss, totalShare } = COVER;
  const other = pen.at('other', 'other_deductible', 'at the other deductible');
  const usual = following(value * D.meanLossOfValue.value, 'our guess: two fifths of what it is worth');
  return {
    aYear: pen.take('aYear', 'a_year', aYear, file.a_year),
    deductible: pen.take('deductible', 'deductible', deductible, file.deductible),
    chanceAYear: pen.take('chanceAYear', 'chance_a_year', chanceAYear, file.chance_a_year, chance),
    meanLoss: pen.take('meanLoss', 'mean_loss', meanLoss, file.mean_loss, usual),
    totalShare: pen.take('totalShare', 'total_share', totalShare, file.total_share, D.totalShare),
    other: file.other_deductible
      ? {
          aYear: other.take('aYear', 'a_year', aYear, file.other_deductible.a_year),
          deductible: other.take('deductible', 'deductible', deductible, file.other_deductible.deductible),
        }
      : null,
  };
};

/** Cover for damage to the vehicle itself. `pen` stands at the vehicle, `value` is what it brings running. */
export const completeCover = (
  file: SparseVehicle['cover'],
  pen: Pen,
  value: number,
): PresentVehicle['ownDamage'] => {
  const at = (kind: 'collision' | 'comprehensive'): Pen =>
    pen.at(`ownDamage.${kind}`, `cover.${kind}`, `${kind} cover`);
  return {
    collision: part(file?.collision, at('collision'), D.collision, value),
    comprehensive: part(file?.comprehensive, at('comprehensive'), D.comprehensive, value),
  };
};
