import { daysBetween, parseCivilDate } from '../quantity/civilDate.ts';
import type { Inputs } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import type { Notice } from './decision.ts';

/** So near, the days count; farther off a date says more. */
const DAYS_AWAY = 60;

const counted = (n: number, one: string): string => `${n} ${one}${n === 1 ? '' : 's'}`;
const until = (when: string): string =>
  `It must pass inspection ${when}; past that it may not be used until it has.`;

/** By when it must pass, where only months are known; null where that lies beyond the time looked at. */
const byMonth = (month: number, lookAhead: number): string | null => {
  if (month > lookAhead) return null;
  return until(month === 0 ? 'today' : `within ${counted(month, 'month')}`);
};

/**
 * When it must pass its inspection. Run out or days away it is said first, in days; farther off, beside the answer. Null
 * where none is due within the time looked at.
 */
export const inspectionNotice = ({ household }: Inputs, facts: Facts): Notice | null => {
  const { inspectionDueMonth: month, inspectionDay: day } = facts;
  if (month === null) return null;
  const notice = (place: Notice['place'], text: string | null): Notice | null =>
    text === null ? null : { kind: 'inspection-due', place, text, cost: null };
  const [today, due] = [parseCivilDate(facts.date), parseCivilDate(day)];
  if (!today || !due) return notice(month === 0 ? 'first' : 'answer', byMonth(month, household.lookAhead));
  const days = daysBetween(today, due);
  if (days < 0)
    return notice(
      'first',
      `Its inspection ran out ${counted(-days, 'day')} ago (${day}); until it passes it may not be used.`,
    );
  if (days === 0) return notice('first', until(`today, ${day}`));
  if (days <= DAYS_AWAY) return notice('first', until(`within ${counted(days, 'day')}, by ${day}`));
  return notice('answer', month > household.lookAhead ? null : until(`by ${day}`));
};
