/** Deciding, for callers whose arguments nobody has read yet. Each throws as `wants.ts` says. */

import * as deciding from '../engine/answer/decide.ts';
import * as stepping from '../engine/answer/inSteps.ts';
import * as heart from '../engine/evaluation/evaluate.ts';
import { waysOf } from '../engine/evaluation/options.ts';
import type { Evaluated } from '../engine/evaluation/project.ts';
import { contextOf, EXPECTED, type Future } from '../engine/plans/vehicle/context.ts';
import type { Inputs } from '../engine/scenario/inputs/inputs.ts';
import { SCRAMBLES, type Scenario } from '../engine/scenario/inputs/scenario.ts';
import * as drawing from '../engine/simulation/draws.ts';
import { guarded } from './guarded.ts';
import { facts, inputs, scenario } from './scenario.ts';
import { all, calls, choice, holds, list, optional, row, terms, text, type Want, whole } from './wants.ts';

const drawn = row({ luckOf: calls, turnsOut: calls });

const future: Want = (value, at) => {
  row({ kind: choice('expected', 'drawn') })(value, at);
  if ((value as Future).kind === 'drawn') drawn(value, at);
};

const decided = row({ options: list(row({})), verdict: row({}) });

const setting = terms({ facts, rounding: choice('to the cent', 'unrounded') }, { only: list(text) });

/** A way that is asked for exists, open or not. */
const known = (asked: readonly string[], numbers: Inputs, future: Future, setting: heart.Setting): void => {
  const { open, closed } = waysOf(contextOf(numbers, setting.facts, future, setting.rounding));
  const ids = [...open, ...closed].map(({ id }) => id);
  asked.forEach((id, i) => {
    choice(...ids)(id, `evaluate, setting.only[${i}]`);
  });
};

/**
 * The one function at the heart: inputs and a future in, the flows of every open way out, in a settled order; costs
 * positive, receipts negative, months 0..H, in currency units. It draws nothing. TypeError for a string in a number's
 * place and for a setting that does not exist; RangeError for a number that is none, a look ahead that is not whole
 * months from 1 to 240, misspelt choices, ways that do not exist, and where no number holds what a way comes to.
 */
export const evaluate = guarded(
  'evaluate',
  { inputs, future, setting },
  (numbers: Inputs, future: Future, setting: heart.Setting): Evaluated[] => {
    const evaluated = heart.evaluate(numbers, future, setting);
    const missing = setting.only?.filter((id) => !evaluated.some(({ plan }) => plan.id === id)) ?? [];
    if (missing.length > 0) known(missing, numbers, future, setting);
    return evaluated;
  },
);

const LAST_SEED = 2 ** 32 - 1;
/** A scramble has no more points than these. */
const MOST_POINTS = 2 ** 20;

const stretch = {
  seed: whole(0, LAST_SEED),
  scramble: whole(0, SCRAMBLES - 1),
  from: whole(0, MOST_POINTS),
  to: whole(1, MOST_POINTS),
};
const rising = holds<drawing.DrawSetting>('from below to is wanted', ({ from, to }) => from < to);

/**
 * Draws futures `from` up to and not including `to` of one scramble (0 to 15) under a seed (0 to 2^32 - 1) of a
 * scenario; the same arguments give the same figures on every machine. RangeError for places that are not whole or in
 * order; else errors as of `evaluate`.
 */
export const simulateScramble = guarded(
  'simulateScramble',
  { scenario, setting: all(terms(stretch), rising) },
  drawing.simulateScramble,
);

const draws: Want = all(
  list(all(row({ ...stretch, costs: list(row({})) }), rising)),
  holds<readonly drawing.ScrambleDraws[]>(
    'two scrambles or more are wanted, whole, in order from 0, of one seed and equally long; or none',
    (all) =>
      all.length !== 1 &&
      all.every(
        ({ seed, scramble, from, to }, i) =>
          scramble === i && from === 0 && to === all[0]?.to && seed === all[0]?.seed,
      ),
  ),
);

/** A scenario whose ways all come to a number: solving for what tips them would have no end otherwise. */
const answerable: Want = all(scenario, (value, at) => {
  const { inputs: numbers, facts } = value as Scenario;
  const ways = heart.evaluate(numbers, EXPECTED, { facts, rounding: 'unrounded' });
  const lost = ways.find((way) => !Object.values(way.netPresentCost).every(Number.isFinite));
  if (lost) throw new RangeError(`${at}: no number holds what ${lost.plan.id} comes to`);
});

/**
 * The first answer: ways, ledgers, the pair; the verdict provisional. A few milliseconds. Errors as of `evaluate`.
 */
export const firstAnswer = guarded('firstAnswer', { scenario, version: text }, deciding.firstAnswer);

/** That answer with every place where it tips and how far each number swings it. Errors as of `evaluate`. */
export const withTips = guarded('withTips', { scenario: answerable, first: decided }, deciding.withTips);

/** The answer at average inputs, before any future is drawn; `version` is printed with it. Errors as of `evaluate`. */
export const decideAtAverage = guarded(
  'decideAtAverage',
  { scenario: answerable, version: text },
  deciding.decideAtAverage,
);

/**
 * A decision at averages with what drawn futures say of it: whole scrambles of that scenario, in order from 0, each from
 * its first future on; none leaves it as it is. RangeError for draws of another kind; else errors as of `evaluate`.
 */
export const withChances = guarded(
  'withChances',
  { scenario: answerable, decision: decided, draws },
  deciding.withChances,
);

/**
 * A complete scenario and its drawn futures in, the whole answer out; without draws, the answer at average inputs.
 * Errors as of `withChances`.
 */
export const decide = guarded(
  'decide',
  { scenario: answerable, version: text, draws: optional(draws) },
  deciding.decide,
);

/**
 * The answer with 256 futures behind it, then 1,024, then all that the scenario asks for: one after another, as they are
 * asked for. Errors as of `withChances`.
 */
export const answersInSteps = guarded(
  'answersInSteps',
  { scenario: answerable, decision: decided },
  stepping.answersInSteps,
);
