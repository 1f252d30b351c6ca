import { type DangerWords, each } from './dangerWords.ts';
import { NO_FRAME, NO_SPRING, NO_STEERING, NO_WHEEL } from './harmless.ts';

/**
 * What else whoever works on it is to take care of; leaving it undone is not said to be unsafe. British and American
 * words of the trade. Common practice, no source.
 */
export const CARE_WORDS: readonly DangerWords[] = [
  {
    what: 'steering',
    words: ['steering'],
    with: null,
    not: NO_STEERING,
    dangers: ['steering', 'lifting'],
  },
  {
    what: 'exhaust',
    words: ['exhaust', 'muffler', 'silencer', 'catalytic'],
    with: null,
    not: each('exhaust', 'tip, trim'),
    dangers: ['exhaust', 'lifting'],
  },
  {
    what: 'fuel',
    words: [...each('fuel', 'pump, filter, inject*, rail'), 'injector'],
    with: null,
    dangers: ['fuel'],
  },
  {
    what: 'high voltage',
    words: ['high voltage', 'traction battery', 'hybrid battery', 'inverter'],
    with: null,
    dangers: ['high-voltage'],
  },
  {
    what: 'battery',
    words: ['battery', 'batteries', 'alternator', 'starter'],
    with: null,
    dangers: ['battery'],
  },
  {
    what: 'what carries the vehicle',
    words: ['frame', 'subframe', 'sub frame', 'sill', 'rocker panel', 'structur*', 'chassis'],
    with: null,
    not: NO_FRAME,
    dangers: ['structure', 'lifting'],
  },
  {
    what: 'work from below',
    words: [
      ...['gasket', 'engine', 'gearbox', 'transmission', 'clutch', 'suspension', 'shock', 'strut', 'spring'],
      ...['axle', 'cv joint', 'tyre', 'tire', 'wheel', 'oil pan', 'sump', 'timing belt', 'driveshaft'],
      ...['drive shaft', 'propshaft', 'control arm', 'wishbone', 'bush*', 'subframe'],
    ],
    with: null,
    not: [...NO_SPRING, ...NO_WHEEL, 'engine light'],
    dangers: ['lifting'],
  },
];
