import { date, list, mapping, num, numOr, oneOf, words, yesNo } from '../fields.ts';
import type { Danger } from '../scenario.ts';
import { WORK } from '../specs.ts';
import type { Units } from '../units.ts';
import { by, workCost } from './running.ts';

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

/** One job the present vehicle needs. */
export const jobSchema = (units: Units) =>
  mapping(
    {
      job: words('The job, in a few words.'),
      ...workCost(units),
      by: by(),
      can_wait: numOr(
        WORK.canWait,
        units,
        { no: 'no', yes: 'yes' },
        'no (not to be driven until done), yes (for ever), or the months it can wait. Never assumed.',
      ),
      safety: yesNo('Whether driving without it is unsafe.').optional(),
      immobilises: yesNo('Whether it cannot move until this is done.').optional(),
      not_cured: mapping(
        { chance: num(WORK.chance, units), ...workCost(units) },
        'The chance that this does not cure the fault, and what the second attempt costs.',
      ).optional(),
      more_found: mapping(
        { chance: num(WORK.chance, units), ...workCost(units) },
        'The chance of finding more once opened, and what that adds.',
      ).optional(),
      patch: mapping(
        { ...workCost(units), lasts: num(WORK.lasts, units), by: by() },
        'A cheaper repair that holds for a while.',
      ).optional(),
      left: mapping(
        {
          a_month: num(WORK.leftAMonth, units).optional(),
          value_lost: num(WORK.valueLost, units).optional(),
        },
        'What leaving it undone costs.',
      ).optional(),
      buyer_pays: num(WORK.buyerPays, units).optional(),
      days_without: num(WORK.daysWithout, units).optional(),
      renews: list(words('The name of a component of the vehicle.')).optional(),
      dangers: list(oneOf(DANGERS, 'A danger of this job.')).optional(),
      qualified_only: yesNo('Whether only qualified work will do.').optional(),
      quote_ends: date("The day on which a shop's price ends.").optional(),
      someone_else_pays: words('Who was asked: recall, guarantee, service contract, cover.').optional(),
      first_time: yesNo('Whether whoever does it at home does so for the first time.').optional(),
      already_spent: num(WORK.spent, units).optional(),
    },
    'One job the vehicle needs.',
  );
