import { monthly } from '../../cashflow/contracts/recurring.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Context } from './context.ts';

/** Getting about without a vehicle from a month on, to the horizon; nothing where nobody said how. */
export const gettingAbout = ({ inputs, levels, horizon }: Context, from: number): Contract[] => {
  const { doingWithout } = inputs;
  if (!doingWithout) return [];
  return [
    monthly(
      {
        category: 'getting about without it',
        what: 'rides, a rental, a borrowed one',
        path: 'doing_without',
        reason: 'so many days a month at so much a day',
      },
      doingWithout.aDay * doingWithout.daysAMonth,
      levels.general,
      from,
      horizon,
    ),
  ];
};
