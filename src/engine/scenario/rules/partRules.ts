import * as HOME from '../inputs/householdInputs.ts';
import { TABLE_PARTS, tablePart } from '../inputs/partTable.ts';
import type { Powertrain } from '../inputs/tables.ts';
import { nearest } from '../text/nearest.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

const POWERTRAINS: readonly Powertrain[] = ['combustion', 'hybrid', 'plug_in', 'battery'];

const powertrainOf = (raw: Raw, vehicle: Path): Powertrain =>
  POWERTRAINS.find((one) => one === raw.word([...vehicle, 'powertrain'])) ?? 'combustion';

/** Whether the public table knows a component, by its name or by what it is said to be like. */
export const inTable = (raw: Raw, vehicle: Path, part: Path): boolean => {
  const name = raw.text([...part, 'like']) ?? raw.text([...part, 'name']);
  return name !== undefined && tablePart(name, powertrainOf(raw, vehicle)) !== null;
};

const KNOWN = TABLE_PARTS.map(({ names }) => names[0]).join(', ');

/** A part lasts as long as the file says, or as the table has it. */
export const lifeKnown = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle) =>
    raw.each([...vehicle, 'components']).flatMap((part): Finding[] => {
      const like = raw.text([...part, 'like']);
      const known = inTable(raw, vehicle, part);
      if (like !== undefined && !known) {
        const near = nearest(
          like,
          TABLE_PARTS.flatMap(({ names }) => names),
        );
        return [
          {
            kind: 'not one of',
            path: [...part, 'like'],
            value: like,
            message: `"${showValue(like)}" is not in the table for a ${powertrainOf(raw, vehicle)} vehicle.`,
            remedy: near ? `Did you mean "${near}"?` : `The table has: ${KNOWN}.`,
          },
        ];
      }
      if (known || raw.has([...part, 'life', 'typical'])) return [];
      return [
        {
          kind: 'missing',
          path: [...part, 'life', ...(raw.has([...part, 'life']) ? ['typical'] : [])],
          message: 'How long it lasts is missing.',
          remedy: `Write "life: { typical: ... }", or "like:" one of the table: ${KNOWN}.`,
        },
      ];
    }),
  );

/** A test is of a part that is there, and tells something. */
export const looksTell = (raw: Raw): Finding[] => {
  const names = raw.each(['vehicle', 'components']).flatMap((part) => raw.text([...part, 'name']) ?? []);
  return raw.each(['look_first']).flatMap((at): Finding[] => {
    const component = raw.text([...at, 'component']);
    if (component !== undefined && !names.includes(component)) {
      const near = nearest(component, names);
      return [
        {
          kind: 'not one of',
          path: [...at, 'component'],
          value: component,
          message: `"${showValue(component)}" is no component of the vehicle.`,
          remedy: near
            ? `Did you mean "${near}"?`
            : names.length > 0
              ? `Components: ${names.map(showValue).join(', ')}.`
              : 'Name it under its "components:" first.',
        },
      ];
    }
    const sees = raw.num([...at, 'sees'], HOME.LOOK.sees);
    const clears = raw.num([...at, 'clears'], HOME.LOOK.clears);
    if (sees === undefined || clears === undefined || sees + clears > 1) return [];
    return [
      {
        kind: 'contradiction',
        path: [...at, 'clears'],
        value: raw.at([...at, 'clears']),
        message: 'Such a test tells nothing: it says "fails" as often of what will hold.',
        remedy: '"sees" and "clears" together must be above 100 %; a coin has 50 and 50.',
      },
    ];
  });
};
