import {
  type CivilDate,
  daysBetween,
  monthAfter,
  parseCivilDate,
  parseFrom,
} from '../../quantity/civilDate.ts';
import * as HOME from '../inputs/householdInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import { isMapping, type Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

/** A change of a vehicle's bills that has a date, and the last one before it in the list that has one. */
interface Dated {
  readonly at: Path;
  readonly from: string;
  readonly date: CivilDate;
  readonly before: Dated | null;
}

const changesOf = (raw: Raw, vehicle: Path): readonly Dated[] => {
  const all: Dated[] = [];
  for (const at of raw.each([...vehicle, 'changes'])) {
    const from = raw.text([...at, 'from']);
    const date = from === undefined ? null : parseFrom(from);
    if (from !== undefined && date) all.push({ at, from, date, before: all.at(-1) ?? null });
  }
  return all;
};

const everyChange = (raw: Raw): readonly Dated[] => vehiclesOf(raw).flatMap((at) => changesOf(raw, at));

const wrong = ({ at, from }: Dated, message: string, remedy: string): Finding => ({
  kind: 'contradiction',
  path: [...at, 'from'],
  value: from,
  message,
  remedy,
});

/** Changes are still to come, one after the other. */
export const changesFollow = (raw: Raw): Finding[] => {
  const today = parseCivilDate(raw.date);
  return everyChange(raw).flatMap((change): Finding[] => {
    const { from, date, before } = change;
    if (today && daysBetween(today, date) < 0)
      return [
        wrong(
          change,
          `${from} is before the day of the decision, ${raw.date}.`,
          'What has changed by then stands as the figure itself; for later in that month give the day.',
        ),
      ];
    const since = before ? daysBetween(before.date, date) : 1;
    if (since > 0) return [];
    return [
      since === 0
        ? wrong(
            change,
            `There is a change from ${from} already.`,
            'Put all that changes on one day into one entry.',
          )
        : wrong(
            change,
            'The dates of these changes do not rise.',
            'List them from the nearest to the farthest.',
          ),
    ];
  });
};

const CHANGED = Object.values(VEHICLE.CHANGED);

/** A change says what is another figure. */
export const changesSay = (raw: Raw): Finding[] =>
  vehiclesOf(raw)
    .flatMap((vehicle) => raw.each([...vehicle, 'changes']))
    .filter((at) => {
      const entry = raw.at(at);
      return isMapping(entry) && Object.keys(entry).every((key) => key === 'from' || key === 'why');
    })
    .map((at) => ({
      kind: 'empty',
      path: at,
      message: 'Nothing changes here.',
      remedy: `Write what is another figure from then on: ${CHANGED.map(({ key }) => key).join(', ')}.`,
    }));

/** What changes is something before: a bill that is not given is left out, and would begin from nothing unasked. */
export const changesApart = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle) => {
    const changes = raw.each([...vehicle, 'changes']);
    return CHANGED.flatMap(({ key }): Finding[] => {
      const change = changes.find((at) => raw.has([...at, key]));
      if (!change || raw.has([...vehicle, key])) return [];
      const from = raw.text([...change, 'from']);
      return [
        {
          kind: 'missing',
          path: [...vehicle, key],
          message: `What it is before it changes${from === undefined ? '' : ` (${showValue(from)})`} is missing.`,
          remedy: `Write "${key}:" for this vehicle too; 0 if there is none till then.`,
        },
      ];
    });
  });

/** A date past all that is looked at changes nothing: most likely its year is wrong. */
export const changesFar = (raw: Raw): Finding[] => {
  const today = parseCivilDate(raw.date);
  const ahead =
    raw.num(['household', 'look_ahead'], HOME.HOUSEHOLD.lookAhead) ?? HOME.HOUSEHOLD.lookAhead.or.value;
  return everyChange(raw).flatMap(({ at, from, date }): Finding[] =>
    !today || monthAfter(today, date) <= ahead
      ? []
      : [
          {
            kind: 'caution',
            path: [...at, 'from'],
            value: from,
            message: `${from} is past the ${ahead} months looked at: nothing changes within them.`,
            remedy: 'Look at the year again, or look farther ahead: "look_ahead:" of the household.',
          },
        ],
  );
};
