import type { MayBeDriven } from '../inputs/inputs.ts';
import type { Danger } from '../inputs/scenario.ts';
import type { Units } from '../inputs/units.ts';
import * as WORK from '../inputs/workInputs.ts';
import { date, list, mapping, maybe, num, numOr, oneOf, words, yesNo } from './fields.ts';
import { shapeOf } from './groupShape.ts';
import { by } from './runningSchema.ts';

/** Every danger a job may hold. */
export const DANGERS = [
  'lifting',
  'brakes',
  'steering',
  'exhaust',
  'airbag',
  'fuel',
  'battery',
  'high-voltage',
  'structure',
] as const satisfies readonly Danger[];

const MAY_BE_DRIVEN = ['yes', 'to_the_shop', 'no'] as const satisfies readonly MayBeDriven[];

/** One job the present vehicle needs. */
export const jobSchema = (units: Units) =>
  mapping(
    {
      job: words('The job, in a few words.'),
      ...shapeOf(WORK.WORK_COST, units),
      by: by(),
      can_wait: numOr(
        WORK.CAN_WAIT,
        units,
        { no: 'no', yes: 'yes' },
        'no (not to be driven until done, but to a shop), yes (for ever), or the months it can wait. Never assumed.',
      ),
      safety: maybe(yesNo('Whether driving without it is unsafe.')),
      why: maybe(words('Why it is safe to drive until then, or is not.')),
      may_be_driven: maybe(
        oneOf(
          MAY_BE_DRIVEN,
          'How far it may be driven with this undone. Unless told: no with "safety: yes", to_the_shop with "can_wait: no".',
        ),
      ),
      immobilises: maybe(
        yesNo('Whether it cannot move until this is done: the same as "may_be_driven: no".'),
      ),
      not_cured: maybe(
        mapping(
          shapeOf({ ...WORK.NOT_CURED, ...WORK.WORK_COST }, units),
          'The chance that this does not cure the fault, and what the second attempt costs.',
        ),
      ),
      more_found: maybe(
        mapping(
          shapeOf({ ...WORK.MORE_FOUND, ...WORK.WORK_COST }, units),
          'The chance of finding more once opened, and what that adds.',
        ),
      ),
      patch: maybe(
        mapping(
          { ...shapeOf({ ...WORK.WORK_COST, ...WORK.PATCH }, units), by: by() },
          'A cheaper repair that holds for a while.',
        ),
      ),
      left: maybe(mapping(shapeOf(WORK.LEFT, units), 'What leaving it undone costs.')),
      ...shapeOf(WORK.JOB, units),
      renews: maybe(list(words('The name of a component of the vehicle.'))),
      dangers: maybe(list(oneOf(DANGERS, 'A danger of this job.'))),
      qualified_only: maybe(yesNo('Whether only qualified work will do.')),
      own_hands: maybe(yesNo('Whether own hands may do it; no is the same as "qualified_only: yes".')),
      quote_ends: maybe(date("The day on which a shop's price ends.")),
      someone_else_pays: maybe(words('Who was asked: recall, guarantee, service contract, cover.')),
      first_time: maybe(yesNo('Whether whoever does it at home does so for the first time.')),
      already_spent: maybe(num(WORK.SPENT, units)),
    },
    'One job the vehicle needs.',
  );
