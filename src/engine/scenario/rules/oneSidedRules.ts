import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { moneyText } from '../text/amounts.ts';
import { type Finding, type Path, pathText, showValue } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

/** A vehicle's name in a sentence; where it is private, what it is to us. */
const nameOf = (raw: Raw, vehicle: Path): string => {
  const hidden = raw.each(['private']).some((at) => raw.text(at) === pathText([...vehicle, 'what']));
  const name = raw.text([...vehicle, 'what']);
  if (name !== undefined && !hidden) return showValue(name);
  return vehicle[0] === 'vehicle' ? 'vehicle you have' : 'replacement';
};

/** The most that a bill of a vehicle ever is: now, or from a date on. */
const mostOf = (raw: Raw, vehicle: Path, bill: VEHICLE.Bill): number =>
  Math.max(
    ...[vehicle, ...raw.each([...vehicle, 'changes'])].map((at) => raw.num([...at, bill.key], bill) ?? 0),
  );

/** A bill given for one vehicle and not for another tilts the answer: the other's is asked for. */
export const billsOnBothSides = (raw: Raw): Finding[] => {
  const vehicles = vehiclesOf(raw).map((at) => ({ at, name: nameOf(raw, at) }));
  return VEHICLE.LEFT_OUT_BILLS.flatMap((bill): Finding[] => {
    const { key } = bill;
    const giver = vehicles.find(({ at }) => mostOf(raw, at, bill) > 0);
    if (!giver) return [];
    const given = moneyText(mostOf(raw, giver.at, bill), raw.units.currency);
    return vehicles
      .filter(({ at }) => !raw.has([...at, key]))
      .map(({ at, name }) => ({
        kind: 'caution',
        path: [...at, key],
        message: `${bill.or.bill} is given for the ${giver.name} (${given} ${VEHICLE.periodOf(bill)}), and for the ${name} it is not.`,
        remedy: `Write "${key}:" for the ${name} too; 0 if it has none.`,
      }));
  });
};
