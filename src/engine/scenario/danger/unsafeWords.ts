import { type DangerWords, each } from './dangerWords.ts';
import { NO_FRAME, NO_LIFT, NO_SPRING, NO_STEERING, NO_WHEEL } from './harmless.ts';

const CRACKED = ['crack*', 'broke*', 'snap*', 'fractur*', 'shear*', 'split', 'collaps*'];

/**
 * What is read out of the words of a job as perhaps unsafe to leave undone, and what whoever works on it is to take care
 * of then. British and American words of the trade. Common practice, no source.
 */
export const UNSAFE_WORDS: readonly DangerWords[] = [
  {
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
  },
  {
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
  },
  {
    what: 'exhaust fumes',
    words: ['exhaust', 'muffler', 'silencer', 'catalytic', 'downpipe', 'tailpipe'],
    with: [
      ...['leak*', 'blow*', 'hole*', 'crack*', 'broke*', 'fume*', 'cabin', 'smell*', 'loose', 'gasket'],
      ...['rusted through', 'inside', 'hanging'],
    ],
    not: each('exhaust', 'tip, trim, brake'),
    dangers: ['exhaust', 'lifting'],
  },
  { what: 'exhaust fumes', words: ['fume*', 'carbon monoxide'], with: null, dangers: ['exhaust'] },
  {
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
  },
  {
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
  },
  {
    what: 'tyres',
    words: ['tyre', 'tire'],
    with: [
      ...['cord', 'bulg*', 'blister*', 'bald', 'worn', 'limit', 'tread', 'slick', 'flat', 'split', 'cut'],
      ...['crack*', 'perish*', 'rot', 'rotten', 'leak*', 'puncture*', 'separat*', 'below'],
    ],
    not: [...each('spare', 'tyre, tire'), ...each('tyre pressure, tire pressure', 'sensor, monitor*')],
    dangers: ['lifting'],
  },
  {
    what: 'wheels',
    words: ['wheel', 'rim', 'wheel stud', 'wheel nut', 'wheel bolt', 'lug nut', 'lug stud'],
    with: [...CRACKED, 'loose', 'bent', 'buckled', 'wobbl*', 'missing', 'play'],
    not: [...NO_WHEEL, 'wheel bearing'],
    dangers: ['lifting'],
  },
  {
    what: 'wheel bearings',
    words: each('wheel, hub, axle', 'bearing'),
    with: null,
    dangers: ['lifting'],
  },
  {
    what: 'springs and suspension',
    words: [
      ...['spring', 'suspension', 'strut', 'shock', 'shock absorber', 'damper', 'wishbone', 'torsion bar'],
      ...each('control, lower, trailing, swing, suspension', 'arm'),
      ...['sway bar', 'anti roll bar', 'top mount', 'strut mount', 'leaf', 'rear axle', 'axle beam'],
    ],
    with: [...CRACKED, 'loose', 'rusted through', 'gone', 'detached', 'play'],
    not: [...NO_SPRING, 'rear axle seal', 'rear axle boot', ...each('harmonic, crank, blend door', 'damper')],
    dangers: ['lifting'],
  },
  {
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
  },
  {
    what: 'high voltage',
    words: [
      ...each('isolation, insulation', 'fault, warning, resistance'),
      ...each('high voltage, hv', 'isolation, insulation, leak*'),
      ...['loss of isolation', 'low isolation', 'orange cable'],
    ],
    with: null,
    dangers: ['high-voltage'],
  },
  {
    what: 'high voltage',
    words: ['high voltage', 'hv battery', 'hv cable', 'traction battery', 'hybrid battery', 'inverter'],
    with: [
      ...['fault', 'warning', 'leak*', 'damage*', 'crack*', 'chafed', 'dent*', 'smok*', 'exposed', 'bare'],
      ...['corro*', 'loose'],
    ],
    dangers: ['high-voltage'],
  },
  {
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
  },
  {
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
  },
  {
    what: 'seeing out',
    words: ['windscreen', 'windshield', 'wiper'],
    with: [...CRACKED, 'shatter*', 'in view', 'line of sight', 'dead', 'not working', 'fail*'],
    not: [
      'rear wiper',
      'rear window wiper',
      ...each('windscreen, windshield', 'trim, washer*, mold*, mould*, shade'),
    ],
    dangers: [],
  },
  {
    what: 'what may fly open or stick',
    words: [
      ...each('bonnet, hood', 'latch*, catch*'),
      'sticking throttle',
      'throttle stick*',
      'accelerator stick*',
    ],
    with: null,
    dangers: [],
  },
];
