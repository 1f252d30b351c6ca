import { OWN_DAMAGE } from '../inputs/claim.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { Finding } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

/** The premiums are part of the yearly insurance; another deductible is another one. */
export const coverFits = (raw: Raw): Finding[] => {
  const at = (kind: string, ...keys: string[]) => ['vehicle', 'cover', kind, ...keys];
  const whole = raw.num(['vehicle', 'insurance_a_year'], VEHICLE.YEARLY_BILLS.cover.aYear);
  const premiums = OWN_DAMAGE.map((kind) => raw.num(at(kind, 'a_year'), OWNED.COVER.aYear) ?? 0);
  const both = premiums.reduce((sum, one) => sum + one, 0);
  const findings: Finding[] = [];
  if (whole !== undefined && both > whole)
    findings.push({
      kind: 'contradiction',
      path: ['vehicle', 'cover'],
      message: `These premiums come to ${both} a year, the whole insurance to ${whole}.`,
      remedy: 'They are parts of "insurance_a_year": one of them is wrong.',
    });
  for (const kind of OWN_DAMAGE) {
    const path = at(kind, 'other_deductible', 'deductible');
    const [now, other] = [
      raw.num(at(kind, 'deductible'), OWNED.COVER.deductible),
      raw.num(path, OWNED.COVER.deductible),
    ];
    if (now !== undefined && now === other)
      findings.push({
        kind: 'contradiction',
        path,
        value: other,
        message: 'The other deductible is the one it has.',
        remedy: 'Give another one, or take "other_deductible:" out.',
      });
  }
  return findings;
};

/** Cover that ends is cover there is: what a loss takes without it goes by what is said of it. */
export const endingCoverKnown = (raw: Raw): Finding[] =>
  vehiclesOf(raw)
    .flatMap((vehicle) => raw.each([...vehicle, 'changes']))
    .flatMap((change) => raw.each([...change, 'cover_ends']))
    .flatMap((at): Finding[] => {
      const kind = OWN_DAMAGE.find((one) => one === raw.word(at));
      if (kind === undefined || raw.has(['vehicle', 'cover', kind])) return [];
      return [
        {
          kind: 'missing',
          path: at,
          value: kind,
          message: `Nothing is said of ${kind} cover that could end.`,
          remedy: `Write "${kind}:" under the "cover:" of the vehicle you have, or take this out.`,
        },
      ];
    });

/** Insurance that becomes cheaper where cover for the vehicle itself is told apart: most likely a cover is dropped. */
export const coverGoesOn = (raw: Raw): Finding[] => {
  if (OWN_DAMAGE.every((kind) => !raw.has(['vehicle', 'cover', kind]))) return [];
  const { key } = VEHICLE.CHANGED.cover;
  const changes = raw.each(['vehicle', 'changes']);
  if (changes.some((at) => raw.has([...at, 'cover_ends']))) return [];
  const now = raw.num(['vehicle', key], VEHICLE.CHANGED.cover);
  const cheaper = changes.find(
    (at) => (raw.num([...at, key], VEHICLE.CHANGED.cover) ?? Infinity) < (now ?? 0),
  );
  return cheaper === undefined
    ? []
    : [
        {
          kind: 'caution',
          // At the change, not at its figure: no figure is wrong, and a tip of it is one.
          path: cheaper,
          message:
            'The insurance becomes cheaper, and what a loss leaves to pay stays as it is with all its cover.',
          remedy: 'If a cover is dropped, write "cover_ends: [collision]" beside it, or comprehensive.',
        },
      ];
};
