import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument, stringify } from 'yaml';
import { decideAtAverage } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { shortForm, type Tree } from '../support/file.ts';

const read = (text: string): Scenario => {
  const parsed = parseScenario(text, { file: 'a file', today: '2026-11-25' });
  if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  return parsed.scenario;
};

/** Both sides' least cost by the ways themselves, every one of them evaluated: nothing of the solver is asked. */
const sidesOf = ({ inputs, facts }: Scenario): { readonly D: number; readonly cheaper: number } => {
  const ways = evaluate(inputs, EXPECTED, { facts, rounding: 'unrounded' });
  const least = (side: string): number =>
    Math.min(...ways.filter(({ plan }) => plan.side === side).map((way) => way.netPresentCost.counted));
  const [keep, replace] = [least('keep'), least('replace')];
  return { D: replace - keep, cheaper: Math.min(Math.abs(keep), Math.abs(replace)) };
};

/** The text with figures written at dotted paths, as a person would. */
const withFigures = (
  text: string,
  ...figures: readonly (readonly [path: string, figure: unknown])[]
): string => {
  const doc = parseDocument(text);
  for (const [path, figure] of figures)
    doc.setIn(
      path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
      doc.createNode(figure),
    );
  return doc.toString({ lineWidth: 0 });
};

type Tips = ReturnType<typeof decisionJson>['breakEvens'];

const decided = new Map<string, Decision>();
/** Each file is decided once for all that is asked about it here. */
const decisionOf = (text: string): Decision => {
  const known = decided.get(text) ?? decideAtAverage(read(text), 'test');
  decided.set(text, known);
  return known;
};

/** What of the tips that are printed does not hold once it is typed in; their number too, so that none can hold of nothing. */
const typedBack = (text: string): { readonly tips: number; readonly wrong: string[] } => {
  const { breakEvens }: { breakEvens: Tips } = decisionJson(decisionOf(text));
  const wrong: string[] = [];
  let tips = 0;
  for (const { path, roots, today, unit } of breakEvens)
    for (const { at, kind, typed } of roots) {
      tips += 1;
      const { D, cheaper } = sidesOf(read(withFigures(text, [path, typed])));
      if (kind !== 'jump') {
        if (!(Math.abs(D) < 1e-4 * cheaper)) wrong.push(`${path}: ${JSON.stringify(typed)} leaves ${D}`);
        continue;
      }
      // The sign turns beside a jump: a whole number towards today's value, else a hair to either side.
      const whole = ['months', 'years', 'weeks', 'days'].includes(unit) && Number.isInteger(at);
      const beside = whole ? [at, at < today ? at + 1 : at - 1] : [at * (1 - 1e-6), at * (1 + 1e-6)];
      const percent = typeof typed === 'number' && Math.abs(typed - at * 100) < 1e-9 * Math.abs(typed);
      const signs = beside.map((value) =>
        Math.sign(sidesOf(read(withFigures(text, [path, percent ? value * 100 : value]))).D),
      );
      if (signs[0] === signs[1]) wrong.push(`${path}: no turn at ${at}`);
    }
  return { tips, wrong };
};

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

/** Households whose answer hangs on little: two prices near each other, a part that may fail, an end that may come. */
const anyFile = fc
  .record({
    running: fc.integer({ min: 2500, max: 7000 }),
    asItStands: fc.integer({ min: 400, max: 2000 }),
    price: fc.integer({ min: 4000, max: 16000 }),
    hours: fc.integer({ min: 2, max: 40 }),
    ownHour: fc.constantFrom(undefined, 12, 25),
    cured: fc.constantFrom(0, 20),
    ends: fc.boolean(),
    buyerPays: fc.constantFrom(0, 70),
    left: fc.constantFrom(undefined, 15),
  })
  .map(({ running, asItStands, price, hours, ownHour, cured, ends, buyerPays, left }): Tree => {
    const file = shortForm();
    const [head] = file.work_needed;
    return {
      ...file,
      household: ownHour === undefined ? {} : { price_of_own_hour: ownHour },
      vehicle: {
        ...file.vehicle,
        sells_for: { running, as_it_stands: asItStands, trade_in: Math.min(asItStands, 600) },
        components: [{ name: 'alternator', life: { typical: 130000 }, parts: 190, hours: 2.5 }],
        ...(ends ? { ends: [{ what: 'frame rot', chance_a_year: 6, rises_a_year: 3 }] } : {}),
      },
      work_needed: [
        { ...head, hours, buyer_pays: buyerPays, ...(cured ? { not_cured: { chance: cured } } : {}) },
        {
          job: 'door trim',
          parts: 90,
          hours: 3,
          can_wait: 'yes',
          ...(left ? { left: { a_month: left } } : {}),
        },
      ],
      replacement: { ...file.replacement, price_with_all_fees: price, down_payment: 1500 },
    };
  });

/** Bills of both vehicles that change on a date: each figure stands at a place of its own in a list. */
const changing = (): string => {
  const file = shortForm();
  const later = { from: '2028-04', insurance_a_year: 380, why: 'the insurer drops collision cover' };
  return stringify({
    ...file,
    date: '2026-11-25',
    vehicle: { ...file.vehicle, parking_a_month: 20, changes: [later] },
    replacement: {
      ...file.replacement,
      price_with_all_fees: 12_500,
      parking_a_month: 20,
      changes: [{ from: '2027-09-15', insurance_a_year: 1150, parking_a_month: 35 }],
    },
  });
};

describe('law 13: a tip, typed into the file, tips', () => {
  it('of a figure that holds from a date on too', () => {
    const tipping = decisionOf(changing()).breakEvens.filter(
      ({ quantity, status }) =>
        quantity.path.includes('.changes.') && (status === 'one' || status === 'several'),
    );
    expect(tipping.length).toBeGreaterThan(0);
    expect(typedBack(changing()).wrong).toEqual([]);
  });

  it.each(demos)('%s', (name) => {
    const { tips, wrong } = typedBack(readFileSync(new URL(name, folder), 'utf8'));
    expect(wrong).toEqual([]);
    expect(tips).toBeGreaterThan(10);
  });

  it.each(demos)('and so do two numbers at once: %s', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const line = decisionOf(text).breakEvenLine;
    const points = line?.points.filter(({ y }) => y !== null) ?? [];
    // In the sedan's no price of what would replace it is paid for by driving less.
    expect(points.length > 0).toBe(name !== 'owed-sedan.yaml');
    for (const { x, y } of points.filter((_, i) => i % 5 === 0 || i === points.length - 1)) {
      const both = withFigures(text, [line?.x.path ?? '', x], [line?.y.path ?? '', y]);
      const { D, cheaper } = sidesOf(read(both));
      expect(Math.abs(D), `${x} and ${y}`).toBeLessThan(1e-4 * cheaper);
    }
  });

  it('in random households', () => {
    let all = 0;
    for (const file of fc.sample(anyFile, { numRuns: 6, seed: 20 })) {
      const { tips, wrong } = typedBack(stringify(file));
      expect(wrong).toEqual([]);
      all += tips;
    }
    expect(all).toBeGreaterThan(100);
  });
});

describe('law 14: when a number moves, each side chooses its best way anew', () => {
  it.each(['short-form.yaml', 'wagon-weekend.yaml', 'parked-hatchback.yaml'])('swings of %s', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const { swings, quantities } = decisionOf(text);
    const path = (key: string) => quantities.find((one) => one.key === key)?.path as string;
    for (const { quantity, low, high } of swings
      .filter(({ quantity }) => quantity.unit === 'money')
      .slice(0, 12))
      for (const { value, difference } of [low, high]) {
        const { D, cheaper } = sidesOf(read(withFigures(text, [path(quantity.key), value])));
        expect(Math.abs(difference - D), `${quantity.path} at ${value}`).toBeLessThan(1e-6 * cheaper);
      }
  });
});
