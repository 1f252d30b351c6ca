import { type Compiled, recordingsOf, type Tape } from '../evaluation/tape.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import type { Treatments } from '../plans/vehicle/neededWork.ts';
import { type Way, wayOf } from '../plans/vehicle/option.ts';
import type { Plan } from '../plans/vehicle/plan.ts';
import type { WalksAs } from '../plans/vehicle/retirement.ts';
import { walkPlan } from '../plans/vehicle/walkPlan.ts';
import { remember } from '../quantity/remember.ts';
import { type Detail, detailOf } from './cashDetail.ts';
import { type Drawer, drawerOf } from './futureDrawer.ts';
import { type JointInputs, jointInputs } from './jointInputs.ts';
import type { Subject } from './studyDesign.ts';

/** What serves every run of draws for one subject: inputs to be set anew for each future, a source of those, and the tape. */
export interface Study {
  readonly subject: Subject;
  readonly drawer: Drawer;
  readonly joint: JointInputs;
  readonly tape: Tape;
  readonly ways: readonly Way[];
  /** The way that walks away at the end of a month. */
  readonly walking: (month: number, how: WalksAs) => Way | null;
  /** What a compiled plan brings in every future. */
  readonly same: (compiled: Compiled) => Detail;
}

export const studyOf = (subject: Subject, drawer?: Drawer): Study => {
  const { scenario, unknowns, options, fixed, rule, ruleWay, horizon } = subject;
  const joint = jointInputs(scenario.inputs, unknowns.ranged);
  const base = contextOf(scenario.inputs, scenario.facts, EXPECTED, 'unrounded');
  const walks = new Map<string, Way>();
  const same = new WeakMap<Compiled, Detail>();
  return {
    subject,
    drawer: drawer ?? drawerOf(scenario, unknowns, 0, 0),
    joint,
    tape: recordingsOf(base).moving(joint.moved),
    ways: [...options, ...(fixed ? [fixed] : [])],
    walking: (month, how) => {
      const next = rule?.next(month, how) ?? null;
      if (next === null || !ruleWay?.treatments) return null;
      const key = `${month} ${how}`;
      const way = walks.get(key) ?? walkingWay(next, month, how, ruleWay.treatments);
      walks.set(key, way);
      return way;
    },
    same: (compiled) => {
      const known = same.get(compiled) ?? detailOf(compiled.fixed, horizon);
      same.set(compiled, known);
      return known;
    },
  };
};

const walked = (
  ctx: Context,
  replacement: number,
  month: number,
  how: WalksAs,
  treatments: Treatments,
): Plan => walkPlan(replacement, month, how, treatments, ctx);

const walkingWay = (replacement: number, month: number, how: WalksAs, treatments: Treatments): Way =>
  wayOf(
    { id: `walk/${month}/${how}`, side: 'later', label: '', treatments: null },
    walked,
    replacement,
    month,
    how,
    treatments,
  );

/** One study serves one scramble after another. */
export const studyFor = remember(
  (subject: Subject) => studyOf(subject),
  ([a], [b]) => a === b,
  1,
);
