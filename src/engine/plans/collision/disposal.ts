/** The courses in which it goes today: to the insurer as a total loss, or sold damaged, with a claim or without. */
import type { LoanFlows } from '../../cashflow/contracts/loan.ts';
import type { Split } from '../../cashflow/contracts/settlement/lossPayee.ts';
import type { Contract } from '../../cashflow/posting.ts';
import type { Brought } from '../vehicle/boughtVehicle.ts';
import { NOTHING } from '../vehicle/byReading.ts';
import type { Context } from '../vehicle/context.ts';
import { type Gone, goneBy } from '../vehicle/disposalToday.ts';
import { nameOf } from '../vehicle/held.ts';
import { LIKE_OURS, LIKE_PATH, offerAt, offerings } from '../vehicle/likeOurs.ts';
import { replacementClosed } from '../vehicle/openOptions.ts';
import { type Way, wayOf } from '../vehicle/option.ts';
import { capital, replacementIds } from '../vehicle/optionNames.ts';
import { presentUnusedToday } from '../vehicle/paidAhead.ts';
import type { Financing, Nameless, Plan } from '../vehicle/plan.ts';
import { bringsToday, type Offer, presentLoan } from '../vehicle/presentVehicle.ts';
import { recipe } from '../vehicle/recipe.ts';
import { doneWithout, replacedToday } from '../vehicle/replaceNowPlan.ts';
import { settlementClosed } from './eligibility.ts';
import { type Asked, claimOf, settled } from './settlement.ts';
import { byClaim, byCollision, refunds, settlement } from './settlementFlows.ts';
import { afterwards } from './treatment.ts';

/** One way in which it goes today, once. */
export type Going = {
  readonly id: string;
  readonly label: string;
  readonly how: 'given up' | 'repair in money' | null;
  /** Null: it goes to the insurer. */
  readonly offer: Offer | null;
};

const DAMAGED: Offer = {
  letGo: 'as it stands',
  mended: false,
  price: 'asItStands',
  path: 'vehicle.sells_for.as_it_stands',
  privately: true,
};
const TRADED: Offer = {
  ...DAMAGED,
  letGo: 'trade-in',
  price: 'tradeIn',
  path: 'vehicle.sells_for.trade_in',
  privately: false,
};
const SCRAPPED: Offer = {
  ...DAMAGED,
  letGo: 'scrap',
  price: 'scrap',
  path: 'vehicle.sells_for.scrap',
  privately: false,
};

/** Every way it may go, each selling it once: surrendered, sold damaged with the cash, sold damaged without a claim. */
export const goings = (ctx: Context): Going[] => {
  const { sellsFor } = ctx.inputs.vehicle;
  const offers = [
    DAMAGED,
    ...(sellsFor.tradeIn === null ? [] : [TRADED]),
    // Scrap is for what no buyer would pay more for, his questions and the weeks counted.
    ...(sellsFor.scrap > bringsToday(DAMAGED, ctx) ? [SCRAPPED] : []),
  ];
  const words: Record<string, string> = {
    'as it stands': 'sell it damaged',
    'trade-in': 'trade it in damaged',
    scrap: 'scrap it',
  };
  const ids: Record<string, string> = {
    'as it stands': 'sold-damaged',
    'trade-in': 'traded-in',
    scrap: 'scrapped',
  };
  const sold = (how: Going['how'], id: string, said: string): Going[] =>
    offers.map((offer) => ({
      id: `claim/${id}${ids[offer.letGo]}`,
      label: `${said}${words[offer.letGo]}`,
      how,
      offer,
    }));
  return [
    {
      id: 'claim/total-loss',
      label: 'total loss: take the payout and give it up',
      how: 'given up',
      offer: null,
    },
    ...sold('repair in money', '', 'take the cash, '),
    ...sold(null, 'no-claim-', 'no claim, '),
  ];
};

export const goingAsked = ({ how }: Going, replaced: boolean): Asked | null =>
  how === null ? null : { how, replaced, days: 0, more: 0 };

const splitOf = (going: Going, replaced: boolean, ctx: Context): Split<number> | null => {
  const asked = goingAsked(going, replaced);
  return asked && settled(ctx, asked);
};

const settlesOn = (ctx: Context, going: Going, replaced: boolean): Contract[] => {
  const split = splitOf(going, replaced, ctx);
  return split ? settlement(split, going.offer === null) : [];
};

const claimBrings = (ctx: Context, going: Going, replaced: boolean): Contract[] => {
  const split = splitOf(going, replaced, ctx);
  return split ? byClaim(split, 0, replaced, ctx) : [];
};

/** What the collision takes, and what comes back for a vehicle that is gone. */
const besides = (ctx: Context): Contract[] => [
  ...byCollision(0, true, ctx),
  ...refunds(ctx),
  // A premium that the file lists stands for what is unearned of it.
  presentUnusedToday(
    ctx,
    claimOf(ctx.inputs, ctx.facts).claim.refunds.some(({ insurance }) => insurance),
  ),
];

const broughtByInsurer = (ctx: Context, going: Going, replaced: boolean): Brought => {
  const split = splitOf(going, replaced, ctx);
  return {
    tradeIn: 0,
    payoff: ctx.inputs.vehicle.loan?.owed ?? 0,
    proceeds: split ? split.payment + split.refund + split.gap : 0,
  };
};

/** The loan that is left on it once the day is settled. */
const loanLeft = (ctx: Context, going: Going, replaced: boolean): LoanFlows | null => {
  const owed = ctx.inputs.vehicle.loan?.owed ?? 0;
  // Without a loan nothing of what it then is has to be known.
  if (owed <= 0) return null;
  return presentLoan(afterwards('left', splitOf(going, replaced, ctx)?.stillOwed ?? owed, ctx));
};

/** The day on which it goes: what is settled, what it brings, and what is still owed on it. */
const goesOn = (going: Going, replaced: boolean): Gone => {
  const day = [recipe(settlesOn, going, replaced), recipe(claimBrings, going, replaced), recipe(besides)];
  return going.offer === null
    ? {
        brought: recipe(broughtByInsurer, going, replaced),
        pieces: day,
        awaited: () => null,
        toCome: () => NOTHING,
        owedAt: () => 0,
      }
    : goneBy(going.offer, recipe(loanLeft, going, replaced), day);
};

const planOf = ({ offer }: Going, id: string, label: string, plan: Nameless): Plan => ({
  ...plan,
  id,
  label,
  work: 'skipped',
  letGo: offer?.letGo ?? 'to the insurer',
});

const goneAndReplaced = (
  ctx: Context,
  going: Going,
  id: string,
  label: string,
  index: number,
  financing: Financing,
): Plan => {
  const plan = planOf(going, id, label, replacedToday(goesOn(going, true), index, financing, ctx));
  return index === LIKE_OURS ? { ...plan, side: 'like' } : plan;
};

const goneForGood = (_ctx: Context, going: Going, id: string, label: string): Plan =>
  planOf(going, id, label, doneWithout(goesOn(going, false)));

/** The ways of one going: with each replacement that serves, and without one. */
export const goingWays = (
  going: Going,
  ctx: Context,
): { readonly open: Way[]; readonly why: string | null } => {
  const why = going.how === null ? null : settlementClosed(going.how, ctx);
  if (why) return { open: [], why };
  const ids = replacementIds(ctx.facts.replacementNames);
  const open = offerings(ctx).flatMap((index): Way[] => {
    // No dealer who takes it in part payment sells another like ours.
    if (replacementClosed(index, 0, ctx) || (index === LIKE_OURS && going.offer?.letGo === 'trade-in'))
      return [];
    const deal = offerAt(index, 0, ctx);
    const [side, name, what] =
      index === LIKE_OURS
        ? (['like', nameOf(index, ctx), LIKE_PATH] as const)
        : (['replace', `the ${nameOf(index, ctx)}`, `replace/${ids[index]}`] as const);
    const low = deal.payment.kind === 'loan' && deal.lowRateInstead !== null;
    const financings: Financing[] = low ? ['as offered', 'low rate'] : ['as offered'];
    return financings.map((financing) => {
      const id = `${going.id}/${what}${financing === 'low rate' ? '/low-rate' : ''}`;
      const label = `${capital(going.label)}, and get ${name}${financing === 'low rate' ? ' at the low rate' : ''}`;
      return wayOf(
        { id, side, label, treatments: null },
        goneAndReplaced,
        going,
        id,
        label,
        index,
        financing,
      );
    });
  });
  if (ctx.inputs.doingWithout && going.offer?.letGo !== 'trade-in') {
    const id = `${going.id}/without`;
    const label = `${capital(going.label)}, and do without`;
    open.push(wayOf({ id, side: 'without', label, treatments: null }, goneForGood, going, id, label));
  }
  return { open, why: null };
};
