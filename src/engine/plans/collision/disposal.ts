/** The courses in which it goes today: to the insurer as a total loss, or sold damaged, with a claim or without. */
import { bought } from '../vehicle/boughtVehicle.ts';
import { type Context, onceIn } from '../vehicle/context.ts';
import { type Gone, goneBy } from '../vehicle/disposalToday.ts';
import { gettingAbout } from '../vehicle/gettingAbout.ts';
import { replacementClosed } from '../vehicle/openOptions.ts';
import type { Way } from '../vehicle/option.ts';
import { capital, replacementIds } from '../vehicle/optionNames.ts';
import { presentUnusedToday } from '../vehicle/paidAhead.ts';
import { type Financing, type Nameless, named, type Plan } from '../vehicle/plan.ts';
import { bringsToday, type Offer, presentLoan } from '../vehicle/presentVehicle.ts';
import { settlementClosed } from './eligibility.ts';
import { type Asked, claimOf, settled } from './settlement.ts';
import { byClaim, byCollision, refunds, settlement } from './settlementFlows.ts';
import { afterwards } from './treatment.ts';

/** One way in which it goes today, once. */
export interface Going {
  readonly id: string;
  readonly label: string;
  readonly how: 'given up' | 'repair in money' | null;
  /** Null: it goes to the insurer. */
  readonly offer: Offer | null;
}

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

/** The day on which it goes: what is settled, what it brings, and what is still owed on it. Within a future, once. */
const goesOn = (going: Going, replaced: boolean, ctx: Context): Gone =>
  onceIn(ctx.future, going, [replaced], () => goesOnAnew(going, replaced, ctx));

const goesOnAnew = (going: Going, replaced: boolean, ctx: Context): Gone => {
  const asked = goingAsked(going, replaced);
  const split = asked && settled(ctx, asked);
  const around = [
    ...(asked && split
      ? [...settlement(split, asked, going.offer === null, ctx), ...byClaim(split, 0, replaced, ctx)]
      : []),
    ...byCollision(0, true, ctx),
    ...refunds(ctx),
    // A premium that the file lists stands for what is unearned of it.
    presentUnusedToday(
      ctx,
      claimOf(ctx.inputs, ctx.facts).claim.refunds.some(({ insurance }) => insurance),
    ),
  ];
  const owed = ctx.inputs.vehicle.loan?.owed ?? 0;
  if (going.offer === null) {
    const proceeds = split ? split.payment + split.refund + split.gap : 0;
    return {
      brought: { tradeIn: 0, payoff: owed, proceeds },
      contracts: around,
      awaited: null,
      toCome: () => 0,
      owedAt: () => 0,
    };
  }
  // Without a loan nothing of what it then is has to be known.
  const loan = owed > 0 ? presentLoan(afterwards('left', split ? split.stillOwed : owed, ctx)) : null;
  return goneBy(going.offer, loan, around, ctx);
};

const planOf = ({ offer }: Going, id: string, label: string, plan: Nameless): Plan =>
  named(plan, { id, label, work: 'skipped', letGo: offer?.letGo ?? 'to the insurer' });

/** The ways of one going: with each replacement that serves, and without one. */
export const goingWays = (
  going: Going,
  ctx: Context,
): { readonly open: Way[]; readonly why: string | null } => {
  const why = going.how === null ? null : settlementClosed(going.how, ctx);
  if (why) return { open: [], why };
  const ids = replacementIds(ctx.facts.replacementNames);
  const open = ctx.inputs.replacement.flatMap((deal, index): Way[] => {
    if (replacementClosed(index, 0, ctx)) return [];
    const name = ctx.facts.replacementNames[index] as string;
    const low = deal.payment.kind === 'loan' && deal.lowRateInstead !== null;
    const financings: Financing[] = low ? ['as offered', 'low rate'] : ['as offered'];
    return financings.map((financing) => {
      const id = `${going.id}/replace/${ids[index]}${financing === 'low rate' ? '/low-rate' : ''}`;
      const label = `${capital(going.label)}, and get the ${name}${financing === 'low rate' ? ' at the low rate' : ''}`;
      const build = (at: Context): Plan => {
        const old = goesOn(going, true, at);
        const next = bought(index, 0, old.brought, financing, at);
        return planOf(going, id, label, {
          side: 'replace',
          replacement: index,
          replaceMonth: 0,
          contracts: [...old.contracts, ...next.contracts],
          changeOver: null,
          awaited: old.awaited,
          valueAt: next.valueAt,
          toCome: (month, reading) => old.toCome(month, reading) + next.toCome(month),
          owedAt: (month) => old.owedAt(month) + next.owedAt(month),
          vehicleAtEnd: name,
          purchase: next.purchase,
        });
      };
      return { id, side: 'replace', label, treatments: null, build };
    });
  });
  if (ctx.inputs.doingWithout && going.offer?.letGo !== 'trade-in') {
    const id = `${going.id}/without`;
    const label = `${capital(going.label)}, and do without`;
    const build = (at: Context): Plan => {
      const { doingWithout } = at.inputs;
      const { contracts, awaited, toCome, owedAt } = goesOn(going, false, at);
      return planOf(going, id, label, {
        side: 'without',
        replacement: null,
        replaceMonth: null,
        contracts: [...contracts, ...(doingWithout ? [gettingAbout(doingWithout, 1, at)] : [])],
        changeOver: null,
        awaited,
        valueAt: () => 0,
        toCome,
        owedAt,
        vehicleAtEnd: '',
        purchase: null,
      });
    };
    open.push({ id, side: 'without', label, treatments: null, build });
  }
  return { open, why: null };
};
