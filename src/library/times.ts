/** How long anything in a scenario can last, so that no count of months runs a caller out of memory. */
import * as CLAIM from '../engine/scenario/inputs/claimInputs.ts';
import * as HOME from '../engine/scenario/inputs/householdInputs.ts';
import * as LIKE from '../engine/scenario/inputs/likeInputs.ts';
import * as OWNED from '../engine/scenario/inputs/ownedInputs.ts';
import * as PURCHASE from '../engine/scenario/inputs/purchaseInputs.ts';
import type { Spec, Unit } from '../engine/scenario/inputs/specs.ts';
import * as VEHICLE from '../engine/scenario/inputs/vehicleInputs.ts';
import * as WORK from '../engine/scenario/inputs/workInputs.ts';

const TIMES: readonly Unit[] = ['days', 'weeks', 'months', 'years'];

const isSpec = (value: object): value is Spec => 'unit' in value && 'max' in value && 'min' in value;

/** Every declaration below `value` with the name it stands under. */
const declarations = (value: unknown, name: string): [string, Spec][] => {
  if (typeof value !== 'object' || value === null) return [];
  if (isSpec(value)) return [[name, value]];
  return Object.entries(value).flatMap(([inner, one]) => declarations(one, inner));
};

const declared = [CLAIM, HOME, LIKE, OWNED, PURCHASE, VEHICLE, WORK].flatMap((file) =>
  declarations(file, ''),
);
const limitsOf = (name: string): { readonly from: number; readonly to: number } => {
  const specs = declared.filter(([other]) => other === name).map(([, spec]) => spec);
  return { from: Math.min(...specs.map(({ min }) => min)), to: Math.max(...specs.map(({ max }) => max)) };
};

/** By its name in `Inputs`, for whatever is always a time: the widest limits that any declaration gives it. */
export const TIME_LIMITS: ReadonlyMap<string, { readonly from: number; readonly to: number }> = new Map(
  declared
    .map(([name]) => name)
    .filter((name) => declared.every(([other, { unit }]) => other !== name || TIMES.includes(unit)))
    .map((name) => [name, limitsOf(name)]),
);
