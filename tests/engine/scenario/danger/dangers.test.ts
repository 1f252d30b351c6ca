import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dangersOf, needsQualified, unsafeToLeave } from '../../../../src/engine/scenario/danger/dangers.ts';
import { unsafeWords } from '../../../../src/engine/scenario/danger/dangerWords.ts';

const what = (job: string): string | undefined => unsafeToLeave(job, undefined)?.what;

describe('what may be unsafe to leave', () => {
  it.each([
    [
      'brakes',
      [
        'brake line leaks',
        'Rear brake hose',
        'worn brake pads',
        'front pads and rotors',
        'warped rotors',
        'front discs',
      ],
    ],
    [
      'brakes',
      [
        'seized caliper',
        'master cylinder',
        'brake fluid leak',
        'leaky brake-line',
        'ABS light on',
        'brakes',
        'front breaks',
      ],
    ],
    [
      'fuel',
      [
        'fuel leak',
        'petrol leak',
        'leaking gas tank',
        'fuel line rusted',
        'smell of petrol',
        'gas smell at the back',
        'diesel leak',
        'rusty filler neck',
        'injector leaks',
      ],
    ],
    [
      'exhaust fumes',
      [
        'exhaust into the cabin',
        'exhaust leak',
        'exhaust blowing',
        'muffler with a hole',
        'fumes inside',
        'carbon monoxide',
        'exhaust hanging down',
        'cracked exhaust manifold',
      ],
    ],
    [
      'steering',
      [
        'steering play',
        'play in the steering',
        'steering rack',
        'tie rod end',
        'tie-rod',
        'track rod',
        'lower ball joint',
        'loose steering wheel',
        'power steering leak',
      ],
    ],
    [
      'tyres',
      [
        'tyre with cords showing',
        'bulge in a tire',
        'bald tyres',
        'rear tires worn to the limit',
        'cracked tyres',
        'tread gone, front tyre',
      ],
    ],
    ['wheels', ['cracked wheel', 'loose wheel nuts', 'missing lug nuts', 'buckled rim']],
    [
      'wheel bearings',
      ['wheel bearing play', 'front wheel bearings hum', 'hub bearing', 'rear axle bearing'],
    ],
    [
      'springs and suspension',
      [
        'cracked spring',
        'broken coil springs',
        'snapped leaf spring',
        'control arm cracked',
        'broken wishbone',
        'strut collapsed',
      ],
    ],
    [
      'seat belts and airbags',
      ['seat belt does not lock', 'airbag light', 'SRS fault', 'pretensioner', 'clock spring'],
    ],
    [
      'high voltage',
      ['high-voltage isolation fault', 'insulation fault', 'orange cable chafed', 'traction battery dented'],
    ],
    [
      'what carries the vehicle',
      [
        'frame rust',
        'rusted sill',
        'rotten rocker panels',
        'subframe cracked',
        'chassis corrosion',
        'hole in the floor pan',
        'frame rail bent',
      ],
    ],
    [
      'lights',
      [
        'headlights out',
        'brake lights not working',
        'headlamp dead',
        'no indicators, all lights fail',
        'tail light out',
      ],
    ],
    ['seeing out', ['cracked windscreen', 'windshield cracked', 'wipers not working', 'front wipers dead']],
    ['what may fly open or stick', ['bonnet catch', 'hood latch worn', 'throttle sticks']],
  ])('%s: %j', (row, jobs) =>
    expect(Object.fromEntries(jobs.map((job) => [job, what(job)]))).toEqual(
      Object.fromEntries(jobs.map((job) => [job, row])),
    ),
  );

  it.each([
    'control arm bushings',
    'subframe bushings',
    'rear subframe bushes',
    'bushings of the subframe',
    'brake light bulb',
    'third brake light lens',
    'brake dust off the wheels',
    'brake fluid change',
    'paint the calipers',
    'clutch master cylinder',
    'distributor cap and rotor',
    'fuel economy',
    'fuel gauge',
    'fuel cap',
    'diesel engine oil leak',
    'air conditioning gas leak',
    'head gasket leaks',
    'steering wheel cover',
    'steering wheel leather worn',
    'heated steering wheel',
    'spring cleaning',
    'tailgate struts broken',
    'hood strut gone',
    'seat spring broken',
    'headlamp trim',
    'headlight washer',
    'exhaust tip',
    'exhaust hanger',
    'rear axle seal',
    'frame for the number plate',
    'license plate frame cracked',
    'door sill trim cracked',
    'floor mat with a hole',
    'roof rack',
    'bike rack cracked',
    'tired rear wiper motor',
    'a set of tyres',
    'tire rotation',
    'spare tyre flat',
    'wheel alignment',
    'wheel trim cracked',
    'wheel arch liner loose',
    'drive belt',
    'timing belt',
    'sound insulation',
    'dash lights out',
    'number plate light out',
    'windscreen washer pump broken',
    'windshield trim',
    'seat belt cover',
    'tailgate dent',
    'clutch and flywheel',
    'oil leak',
    'gearbox out, another one in',
    'offspring seat',
    'interior lights not working',
    'engine light',
    'rusty door',
    'air filter',
    'tow bar',
    'breakdown kit',
    'rust on the bonnet',
  ])('nothing: %s', (job) => expect(unsafeToLeave(job, undefined)).toBeNull());

  it('is nothing where an empty list says so, and what a list says where no word tells', () => {
    expect(unsafeToLeave('brake line', [])).toBeNull();
    expect(unsafeToLeave('brake line', ['lifting'])).toEqual({ what: 'brakes', words: ['brake'] });
    expect(unsafeToLeave('that front thing', ['lifting', 'steering'])).toEqual({
      what: 'steering',
      words: [],
    });
    expect(unsafeToLeave('that front thing', ['lifting', 'battery'])).toBeNull();
  });
  it('shows the words it goes by', () =>
    expect(unsafeToLeave('Crack in the front SPRING', undefined)?.words).toEqual(['spring', 'crack']));
});

describe('cautions for the work', () => {
  it.each([
    ['head gasket', ['lifting']],
    ['front struts and mounts', ['lifting']],
    ['exhaust gasket ahead of the cabin', ['exhaust', 'lifting']],
    ['airbag module', ['airbag']],
    ['fuel pump', ['fuel']],
    ['starter', ['battery']],
    ['hybrid battery', ['high-voltage']],
    ['subframe bushings', ['lifting']],
    ['weld the sill', ['structure', 'lifting']],
    ['steering wheel cover', []],
    ['roof rack, cracked', []],
    ['spring cleaning', []],
    ['frame for the number plate', []],
  ])('%s', (job, dangers) => expect(new Set(dangersOf(job, undefined))).toEqual(new Set(dangers)));

  it('say where only qualified work will do, unless told', () => {
    expect(needsQualified(dangersOf('frame rust', undefined), undefined)).toBe(true);
    expect(needsQualified(dangersOf('subframe bushings', undefined), undefined)).toBe(false);
    expect(needsQualified(['structure'], false)).toBe(false);
  });
});

describe('the table', () => {
  const readme = readFileSync(new URL('../../../../README.md', import.meta.url), 'utf8');
  const rows = unsafeWords().map(
    ({ what, words, with: beside }) =>
      `| ${what} | \`${words.join(', ')}\` | ${beside ? `\`${beside.join(', ')}\`` : ''} |`,
  );
  it('is shown in the README', () =>
    expect(readme.split('\n').filter((line) => / \| `/.test(line))).toEqual(rows));
  it('says that it has no source', () =>
    expect(readme).toMatch(/table of words \(common practice, no source/));
});
