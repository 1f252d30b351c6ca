import { describe, expect, it } from 'vitest';
import { problemText } from '../../src/engine/scenario/text/problems.ts';
import { type File, problemsOf, scenarioOf, type Tree, warningsOf } from '../support/file.ts';

const told = (problems: ReturnType<typeof problemsOf>): string =>
  problems.map((problem) => problemText('mine.yaml', problem)).join('\n');

/** Odile shares the money, and her name is private. */
const odile =
  (change: (file: File) => void) =>
  (file: File): void => {
    file.household = { partner: 'Odile' };
    file.private = ['household.partner'];
    change(file);
  };

const gearbox: Tree = { name: "Odile's gearbox", life: { typical: 150000 }, shop_price: 900 };

describe('messages about a file with private words', () => {
  it('have none of them, where something is wrong', () => {
    const words = told(
      problemsOf(
        odile((file) => {
          file.vehicle.components = [gearbox];
          file.look_first = [
            { what: 'a test', costs: 1, component: "Odile's gearbx", within: 9, sees: 90, clears: 90 },
          ];
          (file.work_needed[0] as Tree).renews = ["the gearbox of ODILE's"];
        }),
      ),
    );
    expect(words).toContain('"the gearbox of the partner\'s" is no component of the vehicle');
    expect(words).toContain('Did you mean "the partner\'s gearbox"?');
    expect(words).not.toMatch(/\bodile\b/i);
  });

  it('have none of them, where something is to be looked at', () => {
    const words = told(
      warningsOf(
        odile((file) => {
          const job = file.work_needed[0] as Tree;
          job.job = "Odile's airbag module";
        }),
      ),
    );
    expect(words).toContain('work_needed.0');
    expect(words).not.toMatch(/odile/i);
  });

  it('say of the file as it is written what is wrong with it', () => {
    const open = problemsOf((file) => {
      file.household = { partner: 'Odile' };
      file.vehicle.what = 'the wagon';
    });
    const hidden = problemsOf(
      odile((file) => {
        file.vehicle.what = 'the wagon';
      }),
    );
    expect(open.map(({ path }) => path)).toContain('vehicle.year');
    expect(hidden.map(({ path, message }) => [path, message])).toEqual(
      open.map(({ path, message }) => [path, message]),
    );
  });
});

describe('what may be private', () => {
  it('is whatever is said in words, where nothing is read out of them', () => {
    const scenario = scenarioOf((file) => {
      file.vehicle.ends = [{ what: 'frame rot', chance_a_year: 2 }];
      file.replacement.one_offs = [{ what: 'hitch', month: 2, amount: 90 }];
      file.not_money = ['the dog likes it', 'it is red'];
      file.private = ['vehicle.ends.0.what', 'replacement.one_offs.0.what', 'not_money.1'];
    });
    expect(scenario.inputs.vehicle.ends[0]?.what).toBe('end 1');
    expect(scenario.inputs.replacement[0]?.oneOffs[0]?.name).toBe('one-off 1');
    expect(scenario.facts.notMoney).toEqual(['the dog likes it']);
  });

  it('is no need that everybody has', () => {
    const words = told(
      problemsOf((file) => {
        file.needs = { seats: 4, name: 2 };
        file.private = ['needs.seats'];
      }),
    );
    expect(words).toContain('"needs.seats" cannot be private');
  });

  it('may be no longer than a text may be, and makes none too long', () => {
    const scenario = scenarioOf((file) => {
      file.household = { partner: 'Al' };
      file.note = 'Al '.repeat(660).trim();
      file.private = ['household.partner'];
    });
    expect(scenario.facts.note.length).toBe(2000);
  });

  it('is told where the list holds no places, or the rest no scenario', () => {
    for (const list of [
      [{ a: 1 }],
      [null, 7, ['note']],
      'note',
      { note: 1 },
      ['', '.', 'private', 'private.0'],
    ])
      expect(
        problemsOf((file) => {
          file.private = list;
          file.needs = 4;
          file.go_together = [null, 'note', { a: null }];
          file.work_needed = 'nothing' as never;
        }).length,
      ).toBeGreaterThan(0);
  });
});
