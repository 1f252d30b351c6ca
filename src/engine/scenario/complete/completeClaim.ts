import { daysBetween, parseCivilDate } from '../../quantity/civilDate.ts';
import {
  type Claim,
  type ClaimEstimate,
  type ClaimFacts,
  type ClaimLine,
  isOwnInsurance,
} from '../inputs/claim.ts';
import { CLAIM } from '../inputs/claimSpecs.ts';
import { compare } from '../inputs/comparables.ts';
import { DEFAULTS } from '../inputs/defaults.ts';
import type { PresentVehicle } from '../inputs/inputs.ts';
import type { SparseClaim } from '../schema/scenarioSchema.ts';
import { completeExtras, completePlan, completeRebuild } from './completeClaimWork.ts';
import { completePlace } from './completePlace.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

const D = DEFAULTS.claim;

type SparseLine = SparseClaim['estimate']['lines'][number];

/** Tax is due on parts and paint nearly everywhere, on labour in some places. Common practice, no source. */
const isTaxed = ({ taxed, kind }: SparseLine): boolean => taxed ?? (kind === 'parts' || kind === 'paint');

const completeLine = (file: SparseLine, position: number, estimate: Pen): ClaimLine => {
  const pen = estimate.at(`lines.${position}`, `lines.${position}`, file.what);
  const labour = pen.at('labour', '');
  return {
    what: file.what,
    kind: file.kind,
    amount: file.amount ? pen.take('amount', 'amount', CLAIM.line, file.amount) : null,
    labour:
      file.hours && file.rate
        ? {
            hours: labour.take('hours', 'hours', CLAIM.lineHours, file.hours),
            rate: labour.take('rate', 'rate', CLAIM.lineRate, file.rate),
          }
        : null,
    betterment: pen.take('betterment', 'betterment', CLAIM.betterment, file.betterment, D.betterment),
    taxed: isTaxed(file),
  };
};

const completeEstimate = (file: SparseClaim['estimate'], pen: Pen): ClaimEstimate => {
  const more = pen.at('supplement', 'supplement');
  const { chance, adds, paid } = file.supplement ?? {};
  return {
    lines: file.lines.map((line, i) => completeLine(line, i, pen)),
    tax: pen.take('tax', 'tax', CLAIM.estimateTax, file.tax, D.estimateTax),
    supplement: {
      chance: more.take('chance', 'chance', CLAIM.supplementChance, chance, D.supplementChance),
      amount: more.take('amount', 'adds', CLAIM.supplementAmount, adds, D.extras),
      paid: more.take('paid', 'paid', CLAIM.supplementPaid, paid, D.supplementPaid),
    },
    shopHour: file.shop_hour ? pen.take('shopHour', 'shop_hour', CLAIM.shopHour, file.shop_hour) : null,
    days: pen.take('days', 'days', CLAIM.days, file.days, D.daysInShop),
  };
};

/** Days from the decision until the insurer stops paying for storage; never below nil. */
const daysUntil = (date: string, until: string): Fallback => {
  const [from, to] = [parseCivilDate(date), parseCivilDate(until)];
  return following(from && to ? Math.max(0, daysBetween(from, to)) : 0, `until ${until}`, 'quoted');
};

/** What is paid by day, and what is paid once. `pen` stands at the claim. */
const completeCosts = (file: SparseClaim, pen: Pen, date: string) => {
  const { rental, storage, tow, lost_value: lost } = file;
  const [hired, stored, towed, worth] = [
    pen.at('rental', 'rental'),
    pen.at('storage', 'storage'),
    pen.at('tow', 'tow'),
    pen.at('lostValue', 'lost_value'),
  ];
  return {
    rental: rental
      ? {
          aDay: hired.take('aDay', 'a_day', CLAIM.rentalADay, rental.a_day),
          paidADay: hired.take('paidADay', 'paid_a_day', CLAIM.rentalPaidADay, rental.paid_a_day, D.notPaid),
          paidDays: hired.take('paidDays', 'paid_days', CLAIM.rentalDays, rental.paid_days, D.noDaysPaid),
        }
      : null,
    storage: storage
      ? {
          aDay: stored.take('aDay', 'a_day', CLAIM.storageADay, storage.a_day),
          days: stored.take('days', 'days', CLAIM.storageDays, storage.days, D.daysStored),
          paidDays: stored.take(
            'paidDays',
            storage.paid_until === undefined ? 'paid_days' : 'paid_until',
            CLAIM.storagePaidDays,
            storage.paid_days,
            storage.paid_until === undefined ? D.noDaysPaid : daysUntil(date, storage.paid_until),
            { isDefault: !(storage.paid_days || storage.paid_until) },
          ),
        }
      : null,
    tow: tow
      ? {
          costs: towed.take('costs', 'costs', CLAIM.tow, tow.costs),
          paid: towed.take('paid', 'paid', CLAIM.towPaid, tow.paid, D.notPaid),
        }
      : null,
    lostValue: lost
      ? {
          lost: worth.take('lost', 'lost', CLAIM.lost, lost.lost),
          claimed: worth.take(
            'claimed',
            'claimed',
            CLAIM.lostClaimed,
            lost.claimed,
            following(lost.lost.value, 'as much as is lost'),
          ),
          paid: worth.take('paid', 'paid', CLAIM.lostPaid, lost.paid, D.lostPaid),
        }
      : null,
  };
};

/** What the policy, the lender and the place's offices have to do with it. `pen` stands at the claim. */
const completeTerms = (file: SparseClaim, pen: Pen) => {
  const after = pen.at('surcharge', 'surcharge');
  const gap = pen.at('gap', 'gap');
  return {
    deductible: pen.take('deductible', 'deductible', CLAIM.deductible, ownOnly(file), D.noShare),
    fault: pen.take('fault', 'fault', CLAIM.fault, file.fault, D.fault),
    otherLimit: file.other_limit
      ? pen.take('otherLimit', 'other_limit', CLAIM.otherLimit, file.other_limit)
      : null,
    recovered: pen.take(
      'recovered',
      'recovered.chance',
      CLAIM.recovered,
      file.recovered?.chance,
      D.recovered,
    ),
    surcharge: {
      aYear: after.take('aYear', 'a_year', CLAIM.surcharge, file.surcharge?.a_year, D.surcharge),
      years: after.take('years', 'years', CLAIM.surchargeYears, file.surcharge?.years, D.surchargeYears),
    },
    salvage: file.salvage ? pen.take('salvage', 'salvage', CLAIM.salvage, file.salvage) : null,
    salesTax: pen.take('salesTax', 'sales_tax', CLAIM.salesTax, file.sales_tax, D.salesTax),
    titleFee: pen.take('titleFee', 'title_fee', CLAIM.titleFee, file.title_fee, D.fee),
    transferFee: pen.take('transferFee', 'transfer_fee', CLAIM.transferFee, file.transfer_fee, D.fee),
    refunds: (file.refunds ?? []).map((one, i) => {
      const at = pen.at(`refunds.${i}`, `refunds.${i}`, one.what);
      return {
        what: one.what,
        insurance: isOwnInsurance(one.what, one.insurance),
        paid: at.take('paid', 'paid', CLAIM.prepaid, one.paid),
        months: at.take('months', 'months', CLAIM.prepaidMonths, one.months),
        left: at.take('left', 'left', CLAIM.prepaidLeft, one.left),
        fee: at.take('fee', 'fee', CLAIM.prepaidFee, one.fee, D.fee),
      };
    }),
    gap: file.gap
      ? {
          limit: file.gap.limit ? gap.take('limit', 'limit', CLAIM.gapLimit, file.gap.limit) : null,
          notCovered: gap.take('notCovered', 'not_covered', CLAIM.gapNotCovered, file.gap.not_covered, D.fee),
        }
      : null,
  };
};

/** A share of the bill is borne under the own policy alone. */
const ownOnly = (file: SparseClaim): SparseClaim['deductible'] =>
  file.pays === 'own' ? file.deductible : undefined;

const factsOf = (
  file: SparseClaim,
  date: string,
  compared: Pick<ClaimFacts, 'comparables' | 'perDistance' | 'comparablesSay'>,
): ClaimFacts => ({
  what: file.what,
  happened: file.happened ?? '',
  pays: file.pays,
  insurer: file.insurer ?? '',
  place: completePlace(file.place, date),
  ...compared,
  lender: file.lender
    ? {
        name: file.lender.name,
        paidFirst: file.lender.paid_first ?? null,
        requiresRepair: file.lender.requires_repair ?? null,
        cheque: file.lender.cheque ?? null,
      }
    : null,
  estimate: {
    total: file.estimate.total?.value ?? null,
    parts: file.estimate.lines.map(({ part }) => part ?? 'not said'),
    taxOnlyWhenPaid: file.estimate.tax_only_when_paid ?? false,
  },
  taxOnlyWhenBought: file.tax_only_when_bought ?? false,
  recoveredFor: file.recovered?.for ?? null,
  structure: file.structure ?? 'not checked',
  airbagsDeployed: file.airbags_deployed ?? null,
  flooded: file.flooded ?? null,
  injured: file.injured ?? null,
  signingCloses: file.signing_closes ?? null,
  answerBy: (file.answer_by ?? []).map((one) => ({ what: one.what, date: one.date, past: one.date < date })),
  storagePaidUntil: file.storage?.paid_until ?? '',
  rebuild: {
    insuranceQuoted: file.rebuild?.insurance_quoted ?? false,
    retitlingConfirmed: file.rebuild?.retitling_confirmed ?? false,
    inspected: file.rebuild?.inspected ?? false,
  },
});

/** A claim's numbers and facts, complete; null where there is none. The vehicle as it was before the collision. */
export const completeClaim = (
  file: SparseClaim | undefined,
  root: Pen,
  date: string,
  { odometer, sellsFor }: Pick<PresentVehicle, 'odometer' | 'sellsFor'>,
): { readonly claim: Claim; readonly facts: ClaimFacts } | null => {
  if (!file) return null;
  const pen = root.at('claim', 'claim');
  const perDistance = (root.units.distance === 'km' ? file.a_km : file.a_mile)?.value ?? 0;
  const given = (file.comparables ?? []).map((one) => ({
    what: one.what,
    price: one.price.value,
    odometer: one.odometer.value,
    adjustment: one.adjust?.value ?? 0,
  }));
  const { lines, mean } = compare(given, { odometer, perDistance });
  const compared = following(mean ?? 0, `the mean of ${lines.length} comparables`, 'measured');
  const claim: Claim = {
    value: pen.take('value', 'value', CLAIM.value, file.value, compared, {
      isDefault: false,
    }),
    damageBefore: pen.take(
      'damageBefore',
      'damage_before',
      CLAIM.damageBefore,
      file.damage_before,
      D.damageBefore,
    ),
    estimate: completeEstimate(file.estimate, pen.at('estimate', 'estimate')),
    ...completeTerms(file, pen),
    ...completeCosts(file, pen, date),
    ...completeExtras(file.also_needed, pen),
    ownRepair: completePlan(file.own_repair, pen.at('ownRepair', 'own_repair', 'own repair')),
    safeOnly: completePlan(
      file.safe_only,
      pen.at('safeOnly', 'safe_only', 'safe and legal only'),
      following(Math.max(0, sellsFor.running - sellsFor.asItStands), 'as much as the damage takes off today'),
    ),
    rebuild: completeRebuild(file.rebuild, pen.at('rebuild', 'rebuild', 'rebuilding it')),
  };
  return { claim, facts: factsOf(file, date, { comparables: lines, perDistance, comparablesSay: mean }) };
};
