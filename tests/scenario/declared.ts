import * as claim from '../../src/engine/scenario/inputs/claimInputs.ts';
import type { Default, Input } from '../../src/engine/scenario/inputs/declared.ts';
import * as household from '../../src/engine/scenario/inputs/householdInputs.ts';
import * as like from '../../src/engine/scenario/inputs/likeInputs.ts';
import * as owned from '../../src/engine/scenario/inputs/ownedInputs.ts';
import * as purchase from '../../src/engine/scenario/inputs/purchaseInputs.ts';
import type { Spec } from '../../src/engine/scenario/inputs/specs.ts';
import * as vehicle from '../../src/engine/scenario/inputs/vehicleInputs.ts';
import * as work from '../../src/engine/scenario/inputs/workInputs.ts';

type Named<T> = readonly (readonly [name: string, one: T])[];

/** Whatever among the declarations is of one kind, however deep, by its name. */
const found = <T>(node: unknown, is: (node: object) => boolean, name = ''): Named<T> => {
  if (typeof node !== 'object' || node === null) return [];
  const below = Object.entries(node).flatMap(([step, one]) =>
    found<T>(one, is, name === '' ? step : `${name}.${step}`),
  );
  return is(node) ? [[name, node as T], ...below] : below;
};

const ALL = { household, like, vehicle, owned, work, purchase, claim };

/** Every number that a file may give under a key of its own, every range there is, and every default. */
export const INPUTS = found<Input>(ALL, (node) => 'missing' in node);
export const SPECS = found<Spec>(ALL, (node) => 'words' in node && 'unit' in node);
export const DEFAULTS = found<Default>(ALL, (node) => 'mark' in node && 'source' in node);
