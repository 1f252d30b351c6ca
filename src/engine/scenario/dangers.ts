import type { Danger } from './scenario.ts';

/** Words of a job that tell what is dangerous about it; generic terms of the trade. Common practice, no source. */
const TELLTALE: readonly (readonly [RegExp, readonly Danger[]])[] = [
  [/brake|caliper|rotor|disc pad/i, ['brakes', 'lifting']],
  [/steering|tie rod|rack|ball joint|track rod/i, ['steering', 'lifting']],
  [/exhaust|muffler|silencer|catalytic|manifold/i, ['exhaust', 'lifting']],
  [/airbag|air bag|srs|pretensioner|seat ?belt/i, ['airbag']],
  [/fuel (pump|tank|line|filter|leak|inject)|injector/i, ['fuel']],
  [/high.voltage|traction battery|hybrid battery|inverter/i, ['high-voltage']],
  [/\bbattery\b|alternator|starter/i, ['battery']],
  [/\bframe\b|sub-?frame|\bsills?\b|rocker panel|structur|chassis/i, ['structure', 'lifting']],
  [
    /gasket|engine|gearbox|transmission|clutch|suspension|shock|strut|spring|axle|cv joint|wheel bearing/i,
    ['lifting'],
  ],
  [/\b(tyres?|tires?)\b|wheel|oil pan|timing belt|driveshaft|control arm|bushing/i, ['lifting']],
];

const QUALIFIED: readonly Danger[] = ['airbag', 'high-voltage', 'structure'];

/** The dangers of a job: as listed, else recognised from its words. */
export const dangersOf = (name: string, listed: readonly Danger[] | undefined): readonly Danger[] => {
  if (listed) return [...new Set(listed)];
  const found = new Set(TELLTALE.filter(([words]) => words.test(name)).flatMap(([, dangers]) => dangers));
  // A high-voltage battery is not the starter's.
  if (found.has('high-voltage')) found.delete('battery');
  return [...found];
};

/** Whether own hands are out: as told, else where airbags, high voltage or what carries the vehicle are touched. */
export const needsQualified = (dangers: readonly Danger[], told: boolean | undefined): boolean =>
  told ?? dangers.some((danger) => QUALIFIED.includes(danger));
