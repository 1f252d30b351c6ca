import { bundled } from '../../cashflow/bundle.ts';
import { type LoanFlows, loanFlows, loanPayments, owedAt } from '../../cashflow/contracts/loan.ts';
import { marketValue } from '../../cashflow/contracts/marketValue.ts';
import { type PurchaseTerms, purchase, purchaseFigures } from '../../cashflow/contracts/purchase.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract, Reading } from '../../cashflow/posting.ts';
import { latest } from '../../quantity/remember.ts';
import type { Payment, Replacement, ValueLaw } from '../../scenario/inputs/inputs.ts';
import { type Context, lasting, onceIn, together } from './context.ts';
import { deductibles } from './deductibles.ts';
import { buyOutMonth, type LeasePayment, leaseOf, leaseSpans } from './leases.ts';
import type { Reads } from './memory.ts';
import { unearnedOver, unusedBack } from './paidAhead.ts';
import type { Financing, Plan } from './plan.ts';
import { around } from './purchaseExtras.ts';
import { runningCosts } from './runningCosts.ts';
import { netValue } from './selling.ts';
import { boughtSpan, type Span } from './span.ts';

/** What the household brings to a purchase: the dealer's offer and what a present loan still wants. */
export interface Brought {
  /** Trade-in against this purchase; 0 when the old one goes another way. */
  readonly tradeIn: number;
  /** Payoff of the present loan, and what the old one brought another way towards it. */
  readonly payoff: number;
  readonly proceeds: number;
}

/** A purchase put together: its contracts, and what would be owned and owed at a later month. */
export interface Bought {
  readonly contracts: readonly Contract[];
  readonly valueAt: (month: number, reading: Reading) => number;
  readonly owedAt: (month: number) => number;
  /**
   * What is unearned of its yearly bills, in money of that month.
   *
   * @param lookEnds that day, so that no bill for a year that begins then is paid; at the horizon unless told
   */
  readonly toCome: (month: number, lookEnds?: boolean) => number;
  readonly purchase: Plan['purchase'];
}

/** The purchase's terms in month k: everything grown to k for the same model age. */
const purchaseTerms = (
  offer: Replacement,
  brought: Brought,
  financing: Financing,
  level: number,
): PurchaseTerms => {
  const { payment } = offer;
  const grown = (n: number): number => n * level;
  return {
    price: grown(offer.price),
    salesTax: offer.salesTax,
    tradeInCredit: offer.tradeInCredit === null ? null : grown(offer.tradeInCredit),
    rebate: financing === 'low rate' ? 0 : grown(offer.rebate),
    extras: [...offer.fees, ...offer.addOns].map(({ name, amount, financed, financeCharge }) => ({
      name,
      amount: grown(amount),
      financed,
      financeCharge,
    })),
    tradeIn: brought.tradeIn,
    payoffRolledIn: rolledInto(offer, brought),
    loan: payment.kind === 'loan' ? { downPayment: grown(payment.downPayment) } : null,
  };
};

type LoanPayment = Extract<Payment, { kind: 'loan' }>;

/** The loan's flows of a purchase, from the month it is advanced. */
const purchaseLoan = (
  offer: Replacement,
  payment: LoanPayment,
  terms: PurchaseTerms,
  financing: Financing,
  ctx: Context,
): LoanFlows =>
  loanFlows(
    {
      principal: purchaseFigures(terms).advance,
      notePerYear: financing === 'low rate' ? (offer.lowRateInstead ?? payment.apr) : payment.apr,
      payments: payment.months,
      firstPaymentMonth: payment.firstPayment,
      delayInterest: payment.interestDuringDelay ? 'charged' : 'free',
    },
    ctx.rounding,
  );

/** What of a present loan goes into the next one: its payoff, less what the old one brought another way. */
const shortfallOf = ({ tradeIn, payoff, proceeds }: Brought): number =>
  tradeIn > 0 ? payoff : Math.max(0, payoff - proceeds);

/** What of it this purchase's own loan takes in. */
const rolledInto = ({ payment }: Replacement, brought: Brought): number =>
  payment.kind === 'loan' && payment.rollInShortfall ? shortfallOf(brought) : 0;

/**
 * Buying or leasing a replacement at the end of `month` and running it to the horizon. Within one drawn future the ways
 * that buy it alike share one purchase.
 */
export const bought = (
  index: number,
  month: number,
  brought: Brought,
  financing: Financing,
  ctx: Context,
): Bought => {
  const offer = ctx.inputs.replacement[index] as Replacement;
  if (ctx.future.recall === null) return boughtAnew(offer, index, month, brought, financing, ctx);
  const rolled = rolledInto(offer, brought);
  return onceIn(ctx.future, offer, ['bought', month, financing, brought.tradeIn, rolled], () => {
    const { contracts, valueAt, owedAt, toCome, purchase } = boughtAnew(
      offer,
      index,
      month,
      brought,
      financing,
      ctx,
    );
    return { contracts: [bundled(contracts, month, false)], valueAt, owedAt, toCome, purchase };
  });
};

const boughtAnew = (
  offer: Replacement,
  index: number,
  month: number,
  brought: Brought,
  financing: Financing,
  ctx: Context,
): Bought => {
  const name = ctx.facts.replacementNames[index] ?? offer.name;
  const path = ctx.inputs.replacement.length === 1 ? 'replacement' : `replacement[${index}]`;
  const deal =
    offer.payment.kind === 'lease'
      ? leased(offer, offer.payment, name, path, month, ctx)
      : owned(offer, name, path, month, brought, financing, ctx);
  const contracts = [...deal.contracts];
  for (const span of deal.held) {
    contracts.push(...runningCosts(offer, span, ctx));
    if (span.end < ctx.horizon) contracts.push(unusedBack(offer, span, span.end, ctx));
  }
  return {
    contracts,
    valueAt: deal.valueAt,
    owedAt: deal.owedAt,
    toCome: unearnedOver(offer, deal.held, ctx),
    purchase: deal.purchase,
  };
};

/** A purchase before anything is known of how it runs: what luck touches is left out. */
interface Deal extends Omit<Bought, 'toCome'> {
  /** The spans in which it is run: more than one where leases follow each other. */
  readonly held: readonly Span[];
}

/** A table of values grows with the price of the same model age; a decline applies to whatever it starts from. */
const grownLaw = (law: ValueLaw, level: number): ValueLaw =>
  law.kind === 'points'
    ? { ...law, points: law.points.map(({ month, value }) => ({ month, value: value * level })) }
    : { ...law, perDistance: law.perDistance * level };

/** What a replacement got at the end of `month` is worth later, before what selling it costs. */
const marketWorth = (offer: Replacement, month: number, ctx: Context): ((at: number) => number) => {
  const level = ctx.vehiclePriceLevel(month);
  const terms = {
    now: offer.worthDayAfter * level,
    law: grownLaw(offer.value, level),
    floor: offer.floor,
    brandFactor: offer.brandFactor,
  };
  return latest((at) => marketValue(terms, at - month, (at - month) * ctx.distanceAMonth));
};

const worth =
  (offer: Replacement, worthAt: (at: number) => number, ctx: Context): Bought['valueAt'] =>
  (at, reading) =>
    netValue(offer, worthAt(at), at, reading, ctx);

const BUYING_READS: Reads<Replacement> = {
  own: [
    'price',
    'salesTax',
    'tradeInCredit',
    'rebate',
    'fees',
    'addOns',
    'payment',
    'lowRateInstead',
    'inspectionBefore',
    'catchUp',
    'oneOffs',
  ],
  household: ['lookAhead', 'pricesRise'],
};

/** Buying it, what it is worth later, and what cover leaves its owner to pay, who never bears more than that. */
const DEAL_READS: Reads<Replacement> = {
  own: [
    ...BUYING_READS.own,
    'worthDayAfter',
    'value',
    'floor',
    'brandFactor',
    'selling',
    'cover',
    'registration',
    'registrationRefunded',
    'tax',
    'parkingAMonth',
  ],
  household: [...BUYING_READS.household, 'distanceAYear', 'priceOfOwnHour', 'moneyEarns'],
  vehicle: ['ownDamage'],
};

const owned = (
  offer: Replacement,
  name: string,
  path: string,
  month: number,
  brought: Brought,
  financing: Financing,
  ctx: Context,
): Deal => {
  const particulars = [month, financing, brought.tradeIn, rolledInto(offer, brought)];
  return lasting(ctx.future, offer, DEAL_READS, particulars, (lasts): Deal => {
    const { terms, loan, contracts } = lasting(ctx.future, offer, BUYING_READS, particulars, (itLasts) => {
      const line = linesOf(name, path);
      const terms = purchaseTerms(offer, brought, financing, ctx.vehiclePriceLevel(month));
      const loan =
        offer.payment.kind === 'loan' ? purchaseLoan(offer, offer.payment, terms, financing, ctx) : null;
      const buying = [purchase(line, terms, month), ...around(offer, name, path, month, ctx)];
      if (loan) {
        const paid = line('loan', 'loan payment', 'loan', 'monthly, as the loan says');
        buying.push(loanPayments(paid, loan, month, ctx.horizon));
      }
      return { terms, loan, contracts: together(buying, month, itLasts) };
    });
    const span = boughtSpan(path, name, month, ctx.horizon);
    const worthAt = marketWorth(offer, month, ctx);
    return {
      held: [span],
      contracts: together([...contracts, ...deductibles(worthAt, span, ctx)], month, lasts),
      valueAt: worth(offer, worthAt, ctx),
      owedAt: (at) => (loan ? owedAt(loan, at - month) : 0),
      purchase: loan ? { terms, financing } : null,
    };
  });
};

/** As a purchase, but a list of its own: each caller of `lasting` has one. */
const LEASE_READS: Reads<Replacement> = { ...DEAL_READS };

/** One lease after the other to the horizon, or one that is bought at its end. */
const leased = (
  offer: Replacement,
  payment: LeasePayment,
  name: string,
  path: string,
  month: number,
  ctx: Context,
): Deal => {
  return lasting(ctx.future, offer, LEASE_READS, [month], (lasts): Deal => {
    const worthAt = marketWorth(offer, month, ctx);
    const spans = leaseSpans(payment, month, ctx.horizon);
    // Each lease is a vehicle of its own; one that is bought at its end goes on ageing.
    const held = spans.map(({ start, end, nth }) =>
      boughtSpan(path, name, start, payment.afterwards === 'buy' ? ctx.horizon : end, nth),
    );
    const contracts = [
      ...around(offer, name, path, month, ctx),
      ...spans.map((span) => leaseOf(payment, span, month, name, path, ctx)),
      ...held.flatMap((span) => deductibles(worthAt, span, ctx)),
    ];
    const value = worth(offer, worthAt, ctx);
    return {
      held,
      contracts: together(contracts, month, lasts),
      valueAt: (at, reading) => (at >= buyOutMonth(payment, month) ? value(at, reading) : 0),
      owedAt: () => 0,
      purchase: null,
    };
  });
};
