import type { Danger } from './scenario.ts';

/** Words of a job that tell of a danger. */
export interface DangerWords {
  /** What they speak of, as a person would say it. */
  readonly what: string;
  /** Any of these: whole words; a plural counts too, "*" is any ending. */
  readonly words: readonly string[];
  /** Any of these must stand in it as well; null: the words alone will do. */
  readonly with: readonly string[] | null;
  /** What is taken out of the job's words first, because it means something else. */
  readonly not: readonly string[];
  /** Left undone it may be unsafe to drive. Else only whoever works on it is to take care. */
  readonly unsafe: boolean;
  /** The cautions for whoever works on it. */
  readonly dangers: readonly Danger[];
}

type Row = Omit<DangerWords, 'not' | 'unsafe'> & Partial<Pick<DangerWords, 'not'>>;
const unsafe = (row: Row): DangerWords => ({ not: [], ...row, unsafe: true });
const care = (row: Row): DangerWords => ({ not: [], ...row, unsafe: false });

/** A spelling that is one thing in two countries: "disc", "rotor". */
const each = (firsts: string, lasts: string): string[] =>
  firsts.split(', ').flatMap((first) => lasts.split(', ').map((last) => `${first} ${last}`));

const CRACKED = ['crack*', 'broke*', 'snap*', 'fractur*', 'shear*', 'split', 'collaps*'];
const NO_LIFT = [...each('tailgate, hatch, boot, bonnet, hood, trunk, gas', 'strut, spring, shock, damper')];
const NO_SPRING = ['spring clean*', 'clock spring', ...each('seat, door', 'spring'), ...NO_LIFT];
const NO_STEERING = each(
  'steering wheel',
  'cover, leather, button, control, switch*, heat*, trim, rim, lock, airbag',
).concat('heated steering wheel');
const NO_WHEEL = [...NO_STEERING, ...each('wheel', 'trim, cover, arch*, well, liner, cap'), 'spare wheel'];
const NO_FRAME = [
  ...each(
    'subframe, sub frame, frame, chassis, body mount',
    'bush*, front bush*, rear bush*, mount bush*, mounting bush*',
  ),
  ...each('bush* of the, bush* on the, bush* for the', 'subframe, sub frame, frame, chassis'),
  ...each('plate, window, door, sunroof, mirror, radiator, screen', 'frame'),
  ...each('frame for the, frame of the, frame around the', 'number plate, license plate, licence plate'),
  ...each('sill', 'trim, cover, plate, protector'),
  ...each('floor', 'mat, carpet, liner'),
  ...each('window, door', 'sill'),
];

/**
 * What is read out of the words of a job: what may be unsafe to leave undone, and what whoever works on it is to take
 * care of. British and American words of the trade. Common practice, no source.
 */
export const DANGER_WORDS: readonly DangerWords[] = [
  unsafe({
    what: 'brakes',
    words: [
      ...['brake*', 'braking', 'caliper', 'calliper', 'rotor', 'abs', 'handbrake'],
      ...['master cylinder', 'wheel cylinder', 'disc pad'],
      ...each('front, rear', 'pad, disc, break'),
      ...['pads and discs', 'discs and pads', 'break pad', 'break line'],
    ],
    with: null,
    not: [
      ...each('brake', 'light*, lamp*, dust, controller, pedal rubber, wear sensor, pad wear sensor'),
      ...each('brake fluid', 'change, flush, renewal, service'),
      ...each('change, flush, renew', 'brake fluid'),
      ...['caliper paint', 'caliper cover', ...each('paint*', 'caliper, the caliper, brake caliper')],
      ...['clutch master cylinder', 'engine brake', 'exhaust brake', 'rotor arm', 'cap and rotor'],
      ...['distributor rotor', 'ignition rotor'],
    ],
    dangers: ['brakes', 'lifting'],
  }),
  unsafe({
    what: 'fuel',
    words: ['fuel', 'petrol', 'gasoline', 'gas', 'diesel', 'lpg', 'filler neck', 'injector'],
    with: [
      ...['leak*', 'smell*', 'drip*', 'weep*', 'seep*', 'line', 'hose', 'pipe', 'pipework', 'tank', 'neck'],
      ...['rust*', 'split', 'perish*'],
    ],
    not: [
      ...each('fuel, petrol, gas, diesel', 'economy, gauge, cap, flap, door, engine, van, car, particulate'),
      ...each('fuel tank, petrol tank, gas tank', 'cap, flap, door, sender, gauge'),
      ...each('a c, ac, air con, conditioning, refrigerant, exhaust', 'gas'),
      ...NO_LIFT,
    ],
    dangers: ['fuel'],
  }),
  unsafe({
    what: 'exhaust fumes',
    words: ['exhaust', 'muffler', 'silencer', 'catalytic', 'downpipe', 'tailpipe'],
    with: [
      ...['leak*', 'blow*', 'hole*', 'crack*', 'broke*', 'fume*', 'cabin', 'smell*', 'loose', 'gasket'],
      ...['rusted through', 'inside'],
    ],
    not: each('exhaust', 'tip, trim, brake'),
    dangers: ['exhaust', 'lifting'],
  }),
  unsafe({ what: 'exhaust fumes', words: ['fume*', 'carbon monoxide'], with: null, dangers: ['exhaust'] }),
  unsafe({
    what: 'steering',
    words: [
      ...[
        'tie rod',
        'tierod',
        'track rod',
        'ball joint',
        'drag link',
        'rack and pinion',
        'kingpin',
        'king pin',
      ],
      ...each('steering', 'rack, box, gear, arm, knuckle, coupl*, joint, shaft'),
      ...['pitman arm', 'idler arm', 'inner tie'],
    ],
    with: null,
    not: ['tow ball joint'],
    dangers: ['steering', 'lifting'],
  }),
  unsafe({
    what: 'steering',
    words: ['steering'],
    with: [
      ...[
        'play',
        'loose',
        'slack',
        'leak*',
        'stiff',
        'heavy',
        'knock*',
        'clunk*',
        'wander*',
        'pull*',
        'bind*',
      ],
      ...['worn', 'crack*', 'broke*', 'column'],
    ],
    not: [...NO_STEERING, ...each('steering column', 'trim, cover, shroud, switch*, stalk')],
    dangers: ['steering', 'lifting'],
  }),
  unsafe({
    what: 'tyres',
    words: ['tyre', 'tire'],
    with: [
      ...['cord', 'bulg*', 'blister*', 'bald', 'worn', 'limit', 'tread', 'slick', 'flat', 'split', 'cut'],
      ...['crack*', 'perish*', 'rot', 'rotten', 'leak*', 'puncture*', 'separat*', 'steel showing'],
    ],
    not: [...each('spare', 'tyre, tire'), ...each('tyre pressure, tire pressure', 'sensor, monitor*')],
    dangers: ['lifting'],
  }),
  unsafe({
    what: 'wheels',
    words: ['wheel', 'rim', 'wheel stud', 'wheel nut', 'wheel bolt', 'lug nut', 'lug stud'],
    with: [...CRACKED, 'loose', 'bent', 'buckled', 'wobbl*', 'missing', 'play'],
    not: [...NO_WHEEL, 'wheel bearing'],
    dangers: ['lifting'],
  }),
  unsafe({
    what: 'wheel bearings',
    words: each('wheel, hub, axle', 'bearing'),
    with: null,
    dangers: ['lifting'],
  }),
  unsafe({
    what: 'springs and suspension',
    words: [
      ...['spring', 'suspension', 'strut', 'shock', 'shock absorber', 'damper', 'wishbone', 'torsion bar'],
      ...each('control, lower, trailing, swing, suspension', 'arm'),
      ...['sway bar', 'anti roll bar', 'top mount', 'strut mount', 'leaf'],
    ],
    with: [...CRACKED, 'loose', 'rusted through', 'gone', 'detached'],
    not: [...NO_SPRING, ...each('harmonic, crank, blend door', 'damper')],
    dangers: ['lifting'],
  }),
  unsafe({
    what: 'seat belts and airbags',
    words: [
      'airbag',
      'air bag',
      'srs',
      'seat belt',
      'seatbelt',
      'pretensioner',
      'clock spring',
      'clockspring',
    ],
    with: null,
    not: each('seat belt, seatbelt', 'cover, pad, chime, buzzer, reminder, extender'),
    dangers: ['airbag'],
  }),
  unsafe({
    what: 'high voltage',
    words: [
      ...each('isolation, insulation', 'fault, warning, resistance'),
      ...each('high voltage, hv', 'isolation, insulation, leak*'),
      ...['loss of isolation', 'low isolation', 'orange cable'],
    ],
    with: null,
    dangers: ['high-voltage'],
  }),
  unsafe({
    what: 'high voltage',
    words: ['high voltage', 'hv battery', 'hv cable', 'traction battery', 'hybrid battery', 'inverter'],
    with: [
      ...['fault', 'warning', 'leak*', 'damage*', 'crack*', 'chafed', 'dent*', 'smok*', 'exposed', 'bare'],
      ...['corro*', 'loose'],
    ],
    dangers: ['high-voltage'],
  }),
  unsafe({
    what: 'what carries the vehicle',
    words: [
      ...[
        'frame',
        'subframe',
        'sub frame',
        'chassis',
        'sill',
        'rocker panel',
        'floor',
        'floor pan',
        'unibody',
      ],
      ...['structur*', 'crossmember', 'cross member', 'longeron', 'strut tower', 'shock tower', 'body mount'],
      ...['spring perch*', 'spring seat', 'jacking point', 'frame rail'],
    ],
    with: ['rust*', 'rot', 'rotten', 'rotted', 'corro*', 'hole*', 'perforat*', 'bent', ...CRACKED],
    not: NO_FRAME,
    dangers: ['structure', 'lifting'],
  }),
  unsafe({
    what: 'lights',
    words: [
      ...['headlight', 'headlamp', 'head light', 'head lamp', 'stop lamp', 'stop light', 'turn signal'],
      ...each('brake, tail, rear, all', 'light, lamp'),
      ...['taillight', 'indicator', 'lights'],
    ],
    with: [
      'out',
      'dead',
      'fail*',
      'not working',
      'do not work',
      "don't work",
      "doesn't work",
      'intermittent',
    ],
    not: each(
      'dash, dashboard, interior, courtesy, dome, map, glovebox, boot, trunk, cabin, vanity, plate, fog, door, warning, reading, footwell, engine, rear fog',
      'light*, lamp*, indicator',
    ).concat(each('headlight, headlamp', 'trim, washer')),
    dangers: [],
  }),
  unsafe({
    what: 'seeing out',
    words: ['windscreen', 'windshield', 'wiper'],
    with: [...CRACKED, 'shatter*', 'in view', 'line of sight', 'dead', 'not working', 'fail*'],
    not: [
      'rear wiper',
      'rear window wiper',
      ...each('windscreen, windshield', 'trim, washer*, mold*, mould*, shade'),
    ],
    dangers: [],
  }),
  unsafe({
    what: 'what may fly open or stick',
    words: [
      ...each('bonnet, hood', 'latch*, catch*'),
      'sticking throttle',
      'throttle stick*',
      'accelerator stick*',
    ],
    with: null,
    dangers: [],
  }),
  care({
    what: 'steering',
    words: ['steering'],
    with: null,
    not: NO_STEERING,
    dangers: ['steering', 'lifting'],
  }),
  care({
    what: 'exhaust',
    words: ['exhaust', 'muffler', 'silencer', 'catalytic'],
    with: null,
    not: each('exhaust', 'tip, trim'),
    dangers: ['exhaust', 'lifting'],
  }),
  care({
    what: 'fuel',
    words: [...each('fuel', 'pump, filter, inject*, rail'), 'injector'],
    with: null,
    dangers: ['fuel'],
  }),
  care({
    what: 'high voltage',
    words: ['high voltage', 'traction battery', 'hybrid battery', 'inverter'],
    with: null,
    dangers: ['high-voltage'],
  }),
  care({
    what: 'battery',
    words: ['battery', 'batteries', 'alternator', 'starter'],
    with: null,
    dangers: ['battery'],
  }),
  care({
    what: 'what carries the vehicle',
    words: ['frame', 'subframe', 'sub frame', 'sill', 'rocker panel', 'structur*', 'chassis'],
    with: null,
    not: NO_FRAME,
    dangers: ['structure', 'lifting'],
  }),
  care({
    what: 'work from below',
    words: [
      ...['gasket', 'engine', 'gearbox', 'transmission', 'clutch', 'suspension', 'shock', 'strut', 'spring'],
      ...['axle', 'cv joint', 'tyre', 'tire', 'wheel', 'oil pan', 'sump', 'timing belt', 'driveshaft'],
      ...['drive shaft', 'propshaft', 'control arm', 'wishbone', 'bush*', 'subframe'],
    ],
    with: null,
    not: [...NO_SPRING, ...NO_WHEEL, 'engine light'],
    dangers: ['lifting'],
  }),
];
