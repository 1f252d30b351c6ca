/** Cases in which a tool would be confidently wrong about chance, and what ours draws or says instead. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { SCRAMBLES, simulateScramble } from '../../src/engine/simulation/draws.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { renderReport } from '../../src/report/render.ts';
import { newDocument } from '../../src/terminal/document.ts';
import { type File, scenarioOf, type Tree } from '../support/file.ts';

const drawn = (scenario: Scenario, points = 32): Decision =>
  decide(
    scenario,
    'test',
    Array.from({ length: SCRAMBLES }, (_, scramble) =>
      simulateScramble(scenario, { seed: 1, scramble, from: 0, to: points }),
    ),
  );

const demo = (name: string): Scenario => {
  const text = readFileSync(new URL(`../../scenarios/${name}.yaml`, import.meta.url), 'utf8');
  const read = parseScenario(text, { file: name, today: '2026-11-25' });
  if ('problems' in read) throw new Error('the demo is refused');
  return read.scenario;
};

/** The words of the page, tags taken out. */
const page = (decision: Decision): string =>
  renderReport(decision, { document: newDocument(), scenarioText: '' })
    .replace(/<style>.*?<\/style>/s, '')
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replaceAll(/\s+/g, ' ');

const gearbox: Tree = {
  name: 'gearbox',
  life: { typical: 200000, shape: 4 },
  shop_price: 2600,
  tow: 140,
  days_without: 6,
};
const withGearbox = (more: (file: File) => void = () => undefined): Scenario =>
  scenarioOf((file) => {
    Object.assign(file.vehicle, { components: [gearbox] });
    more(file);
  });

const usual = drawn(withGearbox());
const lumpy = (decision: Decision, side: 'keep' | 'replace') =>
  decision.chances?.lumpy.find(
    ({ id }) => decision.options.find((option) => option.id === id)?.side === side,
  );

describe('income stops', () => {
  it('months without it are reckoned for each way: what must be paid, and whether the fund lasts', () => {
    const [keep, replace] = [lumpy(usual, 'keep'), lumpy(usual, 'replace')];
    expect(keep?.withoutIncome.months).toBe(3);
    // A payment cannot be put off.
    expect(replace?.withoutIncome.mustPay).toBeGreaterThan((keep?.withoutIncome.mustPay ?? 0) + 900);
    expect(replace?.withoutIncome.dry?.value).toBeGreaterThan(keep?.withoutIncome.dry?.value ?? 1);
    expect(page(usual)).toMatch(/Three months without income would still take/);
  });
  it('as many months as the file says', () => {
    const six = drawn(
      withGearbox((file) => {
        file.chance = { months_without_income: 6 };
      }),
      4,
    );
    expect(lumpy(six, 'keep')?.withoutIncome.months).toBe(6);
  });
  it('and the page says month by month what getting out of the loan would take', () => {
    expect(page(usual)).toMatch(/Getting out of the loan/);
  });
});

describe('a frame nobody has looked at', () => {
  const rusty = withGearbox((file) => {
    Object.assign(file.vehicle, {
      structural_rust: 'unknown',
      ends: [{ what: 'frame rot', chance_a_year: 12, rises_a_year: 6 }],
    });
  });
  it('is to be looked at first, with what knowing is worth; it may end the vehicle in the futures', () => {
    const decision = drawn(rusty, 64);
    expect(decision.notices.map(({ kind }) => kind)).toContain('frame-rust-unknown');
    expect(decision.chances?.worthKnowing.map(({ what }) => what)).toContain(
      'whether the 2009 wagon comes to its end',
    );
    const keep = decision.chances?.ways.find(({ id }) => id === 'keep');
    const sound = usual.chances?.ways.find(({ id }) => id === 'keep');
    expect((keep?.cost.bad.value ?? 0) - (sound?.cost.bad.value ?? 0)).toBeGreaterThan(2000);
  });
});

describe('no repairs at all, or the same repairs twice', () => {
  it('what nobody named comes in lumps at random too, less the share of what was named', () => {
    const failures = (decision: Decision, component: RegExp): number =>
      decision.chances?.failures.find((one) => component.test(one.component) && one.vehicle === '2009 wagon')
        ?.drawn.value ?? 0;
    const short = drawn(scenarioOf(), 16);
    expect(failures(short, /nobody/)).toBeGreaterThan(5);
    expect(failures(usual, /nobody/) / failures(short, /nobody/)).toBeCloseTo(0.9, 1);
    expect(failures(usual, /gearbox/)).toBeGreaterThan(0.2);
  });
  it('a vehicle without any named part is not certain for that', () => {
    const { chances } = drawn(scenarioOf(), 16);
    const spread = chances?.ways[0]?.cost;
    expect((spread?.bad.value ?? 0) - (spread?.good.value ?? 0)).toBeGreaterThan(1000);
  });
});

describe('a young driver, a long commute at night', () => {
  it('being stranded stands beside the money, and no tow in the dark is netted against it', () => {
    expect(lumpy(usual, 'keep')?.stopWithinAYear.value).toBeGreaterThan(
      lumpy(usual, 'replace')?.stopWithinAYear.value ?? 1,
    );
    const words = page(usual);
    expect(words).toMatch(/roadside stop/);
    expect(words).toMatch(/stands beside the money and isn't netted against it/);
  });
});

describe('a wrong diagnosis', () => {
  it('happens in as many futures as its chance says, or not at all', () => {
    const doubtful = withGearbox((file) => {
      Object.assign(file.work_needed[0] as Tree, {
        not_cured: { chance: 25, parts: 900, hours: 10, shop_price: 3000 },
      });
    });
    const decision = drawn(doubtful, 64);
    expect(decision.chances?.worthKnowing.map(({ what }) => what)).toContain('whether head gasket cures it');
    const mean = (d: Decision): number =>
      d.chances?.ways.find(({ id }) => id === 'keep')?.cost.mean.value ?? 0;
    // Another thing to draw moves every other one: not the last tenth of it is looked at.
    expect(mean(decision) - mean(usual)).toBeGreaterThan(0.15 * 900);
  });
});

describe('a tie', () => {
  it('says so, and names what is cheapest or most worth finding out', () => {
    const decision = drawn(demo('knife-edge'));
    expect(decision.verdict.kind).toBe('close');
    expect(answerLines(decision).join(' ')).toMatch(/Too close to call.*Worth finding out first:/);
  });
});

describe('safety and the limit', () => {
  it('an unsafe failure is not driven on, whatever the bill', () => {
    const bearings = withGearbox((file) => {
      Object.assign(file.vehicle, {
        components: [{ ...gearbox, name: 'wheel bearings', unsafe: 'yes' }],
      });
    });
    expect(page(drawn(bearings, 4))).toMatch(/unsafe|not (to be )?driven/i);
  });
});
