import * as OWNED from '../inputs/ownedInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import type { Finding } from '../text/problems.ts';
import type { Raw } from './rawView.ts';

const KINDS = ['collision', 'comprehensive'] as const;

/** The premiums are part of the yearly insurance; another deductible is another one. */
export const coverFits = (raw: Raw): Finding[] => {
  const at = (kind: string, ...keys: string[]) => ['vehicle', 'cover', kind, ...keys];
  const whole = raw.num(['vehicle', 'insurance_a_year'], VEHICLE.YEARLY_BILLS.cover.aYear);
  const premiums = KINDS.map((kind) => raw.num(at(kind, 'a_year'), OWNED.COVER.aYear) ?? 0);
  const both = premiums.reduce((sum, one) => sum + one, 0);
  const findings: Finding[] = [];
  if (whole !== undefined && both > whole)
    findings.push({
      kind: 'contradiction',
      path: ['vehicle', 'cover'],
      message: `These premiums come to ${both} a year, the whole insurance to ${whole}.`,
      remedy: 'They are parts of "insurance_a_year": one of them is wrong.',
    });
  for (const kind of KINDS) {
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
