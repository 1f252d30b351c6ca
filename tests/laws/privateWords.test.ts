/** Law 19: what is private stays out of everything, and changes no figure. */
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/answer/decide.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { SCRAMBLES, type Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { simulateScramble } from '../../src/engine/simulation/draws.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { costsCsv } from '../../src/report/exports/costs.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { renderReport } from '../../src/report/render.ts';
import { newDocument } from '../report/page.ts';
import { COMMON_WORDS } from '../support/commonWords.ts';
import { drawn } from '../support/drawn.ts';
import { shortForm } from '../support/file.ts';
import {
  at,
  bare,
  type File,
  needPaths,
  put,
  read,
  textOf,
  textPaths,
  withoutTexts,
  wordyFile,
} from '../support/privateFile.ts';

/** Where words stand in a scenario that has been read. */
const TEXTS: ReadonlySet<string> = new Set([
  ...['name', 'what', 'label', 'source', 'note', 'title', 'mechanic', 'partner', 'vehicleName', 'insurer'],
  ...['words', 'code', 'someoneElsePays', 'why'],
]);

/** All that is counted with, and every choice: no words. */
const figures = ({ inputs, facts, quantities }: Scenario) => {
  const { private: _, notMoney, replacementNames, needs, offers, ...rest } = facts;
  return withoutTexts({ inputs, quantities, rest, notMoney: notMoney.length, needs: needs.length }, TEXTS);
};

const marked = (file: File, ...paths: readonly string[]): File => ({ ...file, private: paths });

/** Forms in which a name is written. */
const forms = (word: string): string =>
  `${word}, ${word}'s, ${word.toUpperCase()}, (${word.toLowerCase()}), ${word.normalize('NFD')}'s ${word.normalize('NFC')}.`;

/** A file that speaks of somebody wherever words may stand. */
const speakingOf = (word: string): File => {
  const file = wordyFile();
  textPaths(file).forEach((path, i) => {
    put(file, path, `qx${i} ${forms(word)}`);
  });
  put(file, ['household', 'partner'], word);
  put(file, ['work_needed', 0, 'renews'], [at(file, ['vehicle', 'components', 0, 'name'])]);
  put(file, ['vehicle', 'upkeep', 1, 'renews'], [at(file, ['vehicle', 'components', 1, 'name'])]);
  put(file, ['look_first', 0, 'component'], at(file, ['vehicle', 'components', 0, 'name']));
  return file;
};

const decided = (scenario: Scenario) =>
  decide(
    scenario,
    'test',
    Array.from({ length: SCRAMBLES }, (_, scramble) =>
      simulateScramble(scenario, { seed: 7, scramble, from: 0, to: 2 }),
    ),
  );

/** Everything that is written of a file. */
const everything = (file: File): string => {
  const { scenario, passed } = read(file);
  const d = decided(scenario);
  return [
    renderReport(d, { document: newDocument(), scenarioText: passed }),
    costsCsv(d),
    JSON.stringify(decisionJson(d)),
    ...answerLines(d),
  ].join('\n');
};

/** The same, told quickly where it is. */
const same = (a: unknown, b: unknown, word: string): void => {
  if (JSON.stringify(a) !== JSON.stringify(b)) expect(a, word).toEqual(b);
};

/** So many at a time, none of which takes long. */
const EACH = 30;
const words = Array.from({ length: Math.ceil(COMMON_WORDS.length / EACH) }, (_, i) =>
  COMMON_WORDS.slice(i * EACH, (i + 1) * EACH),
);

describe('law 19: a private name', () => {
  it('is one of 200 and more', () => expect(new Set(COMMON_WORDS).size).toBeGreaterThanOrEqual(200));

  it.each(words)('%s, %s, %s, ...: which makes no difference, and moves no figure', (...some) => {
    const other = read(marked(speakingOf('Quillon'), 'household.partner'));
    for (const word of some) {
      const file = speakingOf(word);
      const { scenario, passed } = read(marked(file, 'household.partner'));
      same(scenario, other.scenario, word);
      same(passed, other.passed, word);
      same(figures(scenario), figures(read(file).scenario), word);
    }
  });
});

/** Two things are the same but for texts in which the word stood. */
const alike = (open: unknown, hidden: unknown, word: string, path: string): void => {
  if (typeof open === 'string' && typeof hidden === 'string') {
    if (open !== hidden) expect(` ${bare(open)} `, path).toContain(` ${bare(word).trim()} `);
    return;
  }
  if (typeof open !== 'object' || open === null || typeof hidden !== 'object' || hidden === null) {
    expect(hidden, path).toBe(open);
    return;
  }
  expect(Object.keys(hidden), path).toEqual(Object.keys(open));
  for (const [key, held] of Object.entries(open))
    alike(held, (hidden as Record<string, unknown>)[key], word, `${path}.${key}`);
};

/** A short file with a part whose luck is drawn, a chance and a range. */
const shortFile = (): File => {
  const file: File = shortForm();
  put(file, ['chance'], { futures: 256 });
  put(file, ['miles_a_year'], { low: 7000, likely: 9000, high: 12000 });
  put(
    file,
    ['vehicle', 'components'],
    [
      {
        name: 'gearbox',
        life: { typical: 160000, shape: 3 },
        shop_price: { low: 900, likely: 1800, high: 3000 },
      },
      { name: 'rack', life: { typical: 140000, shape: 2 }, shop_price: 700 },
      { name: 'alternator', life: { typical: 150000, shape: 2 }, shop_price: 500 },
    ],
  );
  put(file, ['work_needed', 0, 'not_cured'], { chance: 20 });
  put(file, ['work_needed', 1, 'more_found'], { chance: 20, parts: 300 });
  put(
    file,
    ['look_first'],
    [{ what: 'an oil test', costs: 40, component: 'gearbox', within: 12, sees: 90, clears: 90 }],
  );
  return file;
};

describe('a partner whose name is one of our own words', () => {
  it.each(['Keep', 'Mo', 'Al', 'Art', 'Ed'])('%s: moves no figure', (word) => {
    const file = shortFile();
    put(file, ['household'], { partner: word });
    put(file, ['note'], `${word} wants it kept`);
    put(file, ['vehicle', 'what'], `${word}'s 2009 wagon`);
    put(file, ['replacement', 'what'], `2021 hatchback (${word.toUpperCase()})`);
    put(file, ['vehicle', 'components', 0, 'name'], `${word}'s gearbox`);
    put(file, ['look_first', 0, 'component'], `${word}'s gearbox`);
    put(file, ['work_needed', 0, 'renews'], [`${word}'s gearbox`]);
    put(file, ['work_needed', 0, 'job'], `${word}'s head gasket`);
    const [open, hidden] = [file, marked(file, 'household.partner')].map((one) =>
      decisionJson(decided(read(one).scenario)),
    );
    expect(hidden?.chances).not.toBeNull();
    alike(open, hidden, word, '');
  });

  it('nor do parts, jobs and vehicles without their names, run again or not', () => {
    const file = shortFile();
    file.vehicle = { ...(file.vehicle as File), year: 2009 };
    file.replacement = { ...(file.replacement as File), year: 2021 };
    (file.work_needed as File[]).forEach((job) => {
      job.dangers = ['lifting'];
    });
    const paths = textPaths(file).map((path) => path.join('.'));
    const drawnOf = (scenario: Scenario): unknown[] => {
      const { subject, draws } = drawn(scenario, 4);
      return [draws, subject.unknowns.parts.map(({ name, expected }) => [name, expected])];
    };
    const { scenario, passed } = read(marked(file, ...paths));
    const again = parseScenario(passed, { file: 'again.yaml', today: DAY_AFTER });
    if ('problems' in again) throw new Error(JSON.stringify(again.problems));
    expect(JSON.stringify(scenario)).not.toMatch(/gearbox|rack|alternator|wagon|hatchback|gasket/);
    expect(drawnOf(scenario)).toEqual(drawnOf(read(file).scenario));
    expect(drawnOf(again.scenario)).toEqual(drawnOf(scenario));
  });
});

const DAY_AFTER = '2026-10-02';
const SECRET = 'Zebulon Quarrel';

describe('every path that may be private', () => {
  const plain = wordyFile();
  const before = figures(read(plain).scenario);

  it.each(textPaths(plain).map((path) => path.join('.')))('%s', (path) => {
    const file = wordyFile();
    put(file, path.split('.'), SECRET);
    const part = /^vehicle\.components\.(\d)\.name$/.exec(path)?.[1];
    if (part === '0') {
      put(file, ['work_needed', 0, 'renews'], [SECRET]);
      put(file, ['look_first', 0, 'component'], SECRET);
    }
    if (part === '1') put(file, ['vehicle', 'upkeep', 1, 'renews'], [SECRET]);
    const own = path === 'note' ? 'title' : 'note';
    put(file, [own], `what ${SECRET.toUpperCase()}'s like`);
    const { scenario, passed } = read(marked(file, path));
    expect(bare(JSON.stringify(scenario) + passed)).not.toMatch(/zebulon|quarrel/);
    const { notMoney, ...rest } = figures(scenario);
    expect({ ...rest, notMoney: path.startsWith('not_money') ? 1 : notMoney }).toEqual(before);
    const again = parseScenario(passed, { file: 'again.yaml', today: '2031-01-01' });
    expect('scenario' in again && again.scenario).toEqual(scenario);
  });

  it('is a need too, where the household named it', () => {
    const file = wordyFile();
    put(file, ['needs'], { seats: 3, zebulon_quarrel: 'yes', rack: 'yes' });
    put(file, ['vehicle', 'offers'], { zebulon_quarrel: 'no', rack: 'yes' });
    expect(needPaths(file)).toHaveLength(2);
    const { scenario, passed } = read(marked(file, 'needs.zebulon_quarrel'));
    expect(bare(JSON.stringify(scenario) + passed)).not.toMatch(/zebulon|quarrel/);
    expect(scenario.facts.needs.map(({ what }) => what)).toEqual(['seats', 'need_1', 'rack']);
    expect(scenario.facts.offers.vehicle).toMatchObject({ need_1: false, rack: true });
    const again = parseScenario(passed, { file: 'again.yaml', today: DAY_AFTER });
    expect('scenario' in again && again.scenario).toEqual(scenario);
  });

  it('stays out of report, JSON, CSV and terminal, all of them at once', () => {
    const file = wordyFile();
    const paths = textPaths(file);
    paths.forEach((path, i) => {
      put(file, path, `Zebulon${i} <b> "O'Quarrel" & Sons`);
    });
    const named = (part: number) => at(file, ['vehicle', 'components', part, 'name']);
    put(file, ['work_needed', 0, 'renews'], [named(0)]);
    put(file, ['look_first', 0, 'component'], named(0));
    put(file, ['vehicle', 'upkeep', 1, 'renews'], [named(1)]);
    // The words are the same however far it looks, and every number of the form is moved.
    put(file, ['household', 'look_ahead'], 12);
    const out = everything(marked(file, ...paths.map((path) => path.join('.'))));
    expect(out).not.toMatch(/zebulon|quarrel/i);
    expect(JSON.stringify(read(file).scenario)).toMatch(/zebulon/i);
  }, 180_000);
});

describe('private money', () => {
  const money = ['savings_for_this', 'spare_each_month', 'chance.set_aside_each_month'];

  it.each([[money], ...money.map((one) => [[one]])])('%s: the rest is what it is without', (paths) => {
    const file = wordyFile();
    const without = wordyFile();
    for (const path of paths) {
      const steps = path.split('.');
      delete (at(without, steps.slice(0, -1)) as File)[String(steps.at(-1))];
    }
    const hidden = read(marked(file, ...paths));
    const { facts, ...rest } = read(without).scenario;
    expect(hidden.scenario).toEqual({ ...rest, facts: { ...facts, private: paths } });
  });

  it('leaves its lines out of what is written, and nothing else', () => {
    const file = shortFile();
    const { savings_for_this: _, spare_each_month: __, ...without } = file;
    const { quantities, ...hidden } = decisionJson(
      decided(read(marked(file, 'savings_for_this', 'spare_each_month')).scenario),
    );
    const { quantities: all, ...known } = decisionJson(decided(read(without).scenario));
    expect(quantities).toEqual(all.filter(({ path }) => path !== 'spare_each_month'));
    const rest = ({ notices, breakEvens, swings, ...json }: typeof hidden) => json;
    expect(rest(hidden)).toEqual(rest(known));
    expect(hidden.notices.filter(({ kind }) => kind !== 'savings-private')).toEqual(known.notices);
  });

  it('takes what hangs on it along: which ranges go together, a line between two numbers', () => {
    const file = wordyFile();
    put(file, ['savings_for_this'], { low: 2000, likely: 2600, high: 3300, source: 'bank' });
    put(file, ['two_way'], ['savings_for_this', 'km_a_year']);
    (file.go_together as unknown[]).unshift({ a: 'savings_for_this', b: 'km_a_year', rank: 0.2 });
    const { scenario, passed } = read(marked(file, 'savings_for_this', 'savings_for_this.source'));
    expect(scenario.facts.chance.correlations).toHaveLength(2);
    expect(scenario.facts.twoWay).toBeNull();
    expect(passed).not.toMatch(/savings|\b2600\b|^private:/m);
  });
});

describe('what is read out of words', () => {
  it('is read before a word is taken out of them', () => {
    const file = wordyFile();
    put(file, ['household', 'partner'], 'Brake');
    put(file, ['household', 'mechanic'], 'Belt');
    put(file, ['title'], 'the 2018 van');
    put(file, ['replacement', 2, 'what'], 'the 2018 van');
    put(file, ['work_needed', 2, 'job'], 'brake line');
    put(file, ['vehicle', 'components', 2], { name: 'timing belt', run: '60000 km', share_of_average: 5 });
    for (const path of [
      ['replacement', 2, 'year'],
      ['work_needed', 2, 'dangers'],
    ])
      delete (at(file, path.slice(0, -1)) as File)[String(path.at(-1))];
    const hidden = read(marked(file, 'household.partner', 'household.mechanic', 'title'));
    expect(figures(hidden.scenario)).toEqual(figures(read(file).scenario));
    expect(hidden.scenario.facts.jobs[2]).toMatchObject({
      name: 'the partner line',
      dangers: ['brakes', 'lifting'],
    });
    expect(textOf(file)).toContain('brake line');
    expect(hidden.passed).toContain('like: timing belt');
    expect(hidden.passed).toContain('year: 2018');
  });
});
