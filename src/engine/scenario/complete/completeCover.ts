import type { CoverPart } from '../inputs/claim.ts';
import type { Default } from '../inputs/declared.ts';
import type { PresentVehicle } from '../inputs/inputs.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import type { SparseVehicle } from '../schema/scenarioSchema.ts';
import { following, type Pen } from './quantityBook.ts';

type Kinds = NonNullable<SparseVehicle['cover']>;

const part = (file: Kinds['collision'], pen: Pen, chance: Default, value: number): CoverPart | null => {
  if (!file) return null;
  const take = pen.from(OWNED.COVER, file);
  const { aYear, deductible, meanLoss } = OWNED.COVER;
  const usual = following(value * meanLoss.or.value, 'our guess: two fifths of what it is worth');
  return {
    aYear: take('aYear'),
    deductible: take('deductible'),
    chanceAYear: take('chanceAYear', chance),
    meanLoss: take('meanLoss', usual),
    totalShare: take('totalShare'),
    other: file.other_deductible
      ? pen
          .at('other', 'other_deductible', 'at the other deductible')
          .all({ aYear, deductible }, file.other_deductible)
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
    collision: part(file?.collision, at('collision'), OWNED.LOSSES.collision, value),
    comprehensive: part(file?.comprehensive, at('comprehensive'), OWNED.LOSSES.comprehensive, value),
  };
};
