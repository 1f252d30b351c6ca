/** Work that is dangerous to leave, whether it may be driven, and the day of the inspection: what is said, and what is refused. */
import { describe, expect, it } from 'vitest';
import { decideAtAverage } from '../../src/engine/answer/atAverage.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { read, render } from '../report/page.ts';
import { type File, problemsOf, scenarioOf } from '../support/file.ts';

const decisionOf = (change?: (file: File) => void): Decision => decideAtAverage(scenarioOf(change), 'test');
const page = (decision: Decision) => read(render(decision));
const first = (decision: Decision): string =>
  decision.notices
    .filter(({ place }) => place === 'first')
    .map(({ text }) => text)
    .join(' ');
const gasket = (more: Record<string, unknown>) => (file: File) => {
  Object.assign(file.work_needed[0] as object, more);
};
/** The only job is this one. */
const only = (more: Record<string, unknown>) => (file: File) => {
  gasket(more)(file);
  file.work_needed = file.work_needed.slice(0, 1);
};
const waysOf = (change: (file: File) => void) => {
  const { inputs, facts } = scenarioOf(change);
  return evaluate(inputs, EXPECTED, { facts, rounding: 'unrounded' });
};

describe('a dangerous job that can wait', () => {
  const dear = { parts: 4000, hours: 30, shop_price: 6000 };
  it.each([
    'rear brake line leaks',
    'fuel leak at the tank',
    'exhaust into the cabin',
    'play in the steering',
    'front tyre with cords showing',
    'cracked front spring',
  ])('is asked about, never recommended to be left: %s', (job) => {
    for (const can_wait of ['yes', 12]) {
      const problems = problemsOf(gasket({ ...dear, job, can_wait }));
      expect(problems.map(({ path, kind }) => [path, kind])).toEqual([['work_needed.0.can_wait', 'unsafe']]);
      expect(problems[0]?.message).toMatch(/is it safe to drive until then\?/i);
      expect(problems[0]?.remedy).toMatch(/safety: yes.*safety: no.*why:/);
    }
    const left = decisionOf(only({ ...dear, job, can_wait: 'no', safety: 'yes' }));
    expect(left.options.map(({ id }) => id)).not.toContain('keep/left');
    expect(first(left)).toContain(`Don't drive it until this is done: ${job}.`);
  });

  it('may be left by who says why, and the page says so beside the work', () => {
    const said = {
      job: 'worn brake pads',
      can_wait: 6,
      safety: 'no',
      why: 'five millimetres left, measured in May',
    };
    expect(problemsOf(gasket({ ...said, why: undefined })).map(({ path }) => path)).toEqual([
      'work_needed.0.why',
    ]);
    const decision = decisionOf(gasket(said));
    expect(decision.options.map(({ id }) => id)).toContain('keep/left');
    expect(page(decision).querySelector('#work')?.textContent).toMatch(
      /said to be safe to drive until then: five millimetres left/i,
    );
    expect(decisionJson(decision).work[0]).toMatchObject({
      job: said.job,
      mayBeDriven: 'yes',
      safety: 'no',
      why: said.why,
    });
  });

  it('keeps the reason to itself where that is private', () => {
    const decision = decisionOf((file) => {
      gasket({ job: 'worn brake pads', can_wait: 6, safety: 'no', why: 'Odile measured them' })(file);
      file.private = ['work_needed.0.why'];
    });
    expect(JSON.stringify(decisionJson(decision)) + page(decision).textContent).not.toMatch(/measured them/);
  });

  it('is not asked about where no danger is said to be in it, or where it is not driven meanwhile', () => {
    const job = 'brake pads for the shelf';
    expect(problemsOf(gasket({ job, can_wait: 'yes', dangers: [] }))).toEqual([]);
    expect(problemsOf(gasket({ job, can_wait: 'yes', may_be_driven: 'no' }))).toEqual([]);
    expect(problemsOf(gasket({ job, can_wait: 'yes', dangers: ['lifting'] }))).not.toEqual([]);
  });

  it('is asked about where a patch puts it off, too', () => {
    const patch = { parts: 10, hours: 1, lasts: 9 };
    const job = 'fuel line drips';
    expect(problemsOf(gasket({ job, patch })).map(({ path }) => path)).toEqual(['work_needed.0.patch']);
    expect(problemsOf(gasket({ job, patch, safety: 'yes' }))).toEqual([]);
  });

  it('is not driven to the shop where nobody said that it may be', () => {
    expect(first(decisionOf(only({ job: 'fuel leak' })))).toContain('It stays where it is until');
    expect(first(decisionOf(only({ job: 'fuel leak', may_be_driven: 'to_the_shop' })))).toContain(
      'Have it towed, or drive it no farther than to the work, until',
    );
  });
});

describe('own hands', () => {
  it('are closed by what is said, not by a word alone', () => {
    const { inputs, facts } = scenarioOf(gasket({ own_hands: 'no' }));
    expect([inputs.workNeeded[0]?.by, facts.jobs[0]?.qualifiedOnly]).toEqual(['shop', true]);
    const welded = { job: 'weld the rusted sill', own_hands: 'yes' };
    expect(scenarioOf(gasket(welded)).inputs.workNeeded[0]?.by).toBe('own');
  });
  it.each(['subframe bushings', 'a frame for the number plate', 'license plate frame'])(
    'stay open where nothing that carries the load is touched: %s',
    (job) => expect(scenarioOf(gasket({ job, can_wait: 'yes' })).facts.jobs[0]?.qualifiedOnly).toBe(false),
  );
});

describe('whether it may be driven', () => {
  const stands = (more: Record<string, unknown>) => (file: File) => {
    Object.assign(file.vehicle, { storage_a_day: 20 });
    only({ job: 'wheel alignment', parts: 0, hours: 0, shop_price: 120, days_without: 4, ...more })(file);
  };
  const storage = (more: Record<string, unknown>) =>
    decisionOf(stands(more))
      .options.find(({ id }) => id === 'keep')
      ?.ledger.filter(({ path }) => path === 'vehicle.storage_a_day')
      .reduce((sum, { amount }) => sum + amount.counted, 0);

  it('an alignment that cannot wait is driven to the shop: it does not stand, and pays no storage', () => {
    expect(first(decisionOf(stands({})))).toBe(
      'Have it towed, or drive it no farther than to the work, until this is done: wheel alignment.',
    );
    expect(storage({})).toBe(0);
  });
  it.each([{ may_be_driven: 'no' }, { immobilises: 'yes' }])(
    'one that may not be driven stands: %o',
    (more) => {
      expect(first(decisionOf(stands(more)))).toBe(
        'It stays where it is until this is done: wheel alignment.',
      );
      expect(storage(more)).toBe(80_00);
    },
  );
  it('no way drives on with such a job undone, however long it could wait', () => {
    const ids = (may_be_driven: string) =>
      waysOf(stands({ can_wait: 'yes', may_be_driven })).map(({ plan }) => plan.id);
    expect(ids('yes')).toContain('keep/left');
    for (const said of ['to_the_shop', 'no']) expect(ids(said)).not.toContain('keep/left');
  });
  it('the way to the shop comes after what keeps it from moving at all', () => {
    expect(first(decisionOf())).toBe(
      "Don't drive it until this is done: front brakes. Once it may be driven again, have it towed, or drive it no farther than to the work, until this is done: head gasket.",
    );
    const barred = decisionOf((file) => Object.assign(file.vehicle, { may_be_driven: 'no' }));
    expect(first(barred)).not.toContain('to the shop');
  });
  it('is among the data', () => {
    expect(decisionJson(decisionOf()).work.map(({ mayBeDriven }) => mayBeDriven)).toEqual([
      'to_the_shop',
      'no',
    ]);
  });
});

describe('the day of the inspection', () => {
  const due = (must_pass_inspection_by: unknown) =>
    decisionOf((file) => {
      file.date = '2026-11-27';
      Object.assign(file.vehicle, { must_pass_inspection_by });
    });
  it.each([
    ['2026-11-15', 'Its inspection ran out 12 days ago (2026-11-15); until it passes it may not be used.'],
    ['2026-11-26', 'Its inspection ran out 1 day ago (2026-11-26); until it passes it may not be used.'],
    ['2026-11-27', 'It must pass inspection today, 2026-11-27; past that it may not be used until it has.'],
    [
      '2026-12-06',
      'It must pass inspection within 9 days, by 2026-12-06; past that it may not be used until it has.',
    ],
  ])('%s is said in days, in the answer', (day, words) => {
    const decision = due(day);
    expect(first(decision)).toContain(words);
    const said = words.replace(
      /\d{4}-\d\d-(\d\d)/,
      (date, d) => `${Number(d)} ${date.includes('-11-') ? 'November' : 'December'} 2026`,
    );
    expect(answerLines(decision)).toContain(said);
    expect(page(decision).querySelector('#answer .first')?.textContent).toContain(said);
    expect(decisionJson(decision).notices.map(({ text }) => text)).toContain(words);
  });
  it('further off it is a date, or so many months where only these were said', () => {
    const text = (by: unknown) => due(by).notices.find(({ kind }) => kind === 'inspection-due');
    expect(text('2027-04-10')).toMatchObject({
      place: 'answer',
      text: 'It must pass inspection by 2027-04-10; past that it may not be used until it has.',
    });
    expect(text(4)?.text).toMatch(/within 4 months;/);
    expect(text(1)?.text).toMatch(/within 1 month;/);
    expect(text(0)?.text).toMatch(/inspection today;/);
    expect(text('2040-01-01')).toBeUndefined();
  });
});
