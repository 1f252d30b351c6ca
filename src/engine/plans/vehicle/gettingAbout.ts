import { monthly } from '../../cashflow/contracts/recurring.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { DoingWithout } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';

/** Getting about without a vehicle from a month on, to the horizon. */
export const gettingAbout = (without: DoingWithout, from: number, { levels, horizon }: Context): Contract =>
  monthly(
    {
      category: 'getting about without it',
      what: 'rides, a rental, a borrowed one',
      path: 'doing_without',
      reason: 'so many days a month at so much a day',
    },
    without.aDay * without.daysAMonth,
    levels.general,
    from,
    horizon,
  );
