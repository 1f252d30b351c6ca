import { daysBetween, parseCivilDate } from '../../quantity/civilDate.ts';
import {
  type Claim,
  type ClaimEstimate,
  type ClaimFacts,
  type ClaimLine,
  isOwnInsurance,
} from '../inputs/claim.ts';
import * as CLAIM from '../inputs/claimInputs.ts';
import { compare } from '../inputs/comparables.ts';
import type { PresentVehicle } from '../inputs/inputs.ts';
import type { SparseClaim } from '../schema/scenarioSchema.ts';
import { completeExtras, completePlan, completeRebuild } from './completeClaimWork.ts';
import { completePlace } from './completePlace.ts';
import { type Fallback, following, type Pen } from './quantityBook.ts';

type SparseLine = SparseClaim['estimate']['lines'][number];

/** Tax is due on parts and paint nearly everywhere, on labour in some places. Common practice, no source. */
const isTaxed = ({ taxed, kind }: SparseLine): boolean => taxed ?? (kind === 'parts' || kind === 'paint');

const completeLine = (file: SparseLine, position: number, estimate: Pen): ClaimLine => {
  const pen = estimate.at(`lines.${position}`, `lines.${position}`, file.what);
  const take = pen.from(CLAIM.LINE, file);
  const { hours, rate } = CLAIM.LINE;
  return {
    what: file.what,
    kind: file.kind,
    amount: take('amount'),
    labour:
      file.hours && file.rate
        ? (pen.at('labour', '').all({ hours, rate }, file) as ClaimLine['labour'])
        : null,
    betterment: take('betterment'),
    taxed: isTaxed(file),
  };
};

const completeEstimate = (file: SparseClaim['estimate'], pen: Pen): ClaimEstimate => ({
  lines: file.lines.map((line, i) => completeLine(line, i, pen)),
  ...pen.all({ tax: CLAIM.ESTIMATE.tax }, file),
  supplement: pen.at('supplement', 'supplement').all(CLAIM.SUPPLEMENT, file.supplement),
  ...pen.all(CLAIM.SHOP, file),
});

/** Days from the decision until the insurer stops paying for storage; never below nil. */
const daysUntil = (date: string, until: string): Fallback => {
  const [from, to] = [parseCivilDate(date), parseCivilDate(until)];
  return following(from && to ? Math.max(0, daysBetween(from, to)) : 0, `until ${until}`, 'quoted');
};

/** What is paid by day, and what is paid once. `pen` stands at the claim. */
const completeCosts = (file: SparseClaim, pen: Pen, date: string) => {
  const { rental, storage, tow, lost_value: lost } = file;
  const stored = pen.at('storage', 'storage');
  const worth = pen.at('lostValue', 'lost_value').from(CLAIM.LOST_VALUE, lost);
  const { paidDays } = CLAIM.STORAGE;
  return {
    rental: rental ? pen.at('rental', 'rental').all(CLAIM.RENTAL, rental) : null,
    storage: storage
      ? {
          ...stored.all({ aDay: CLAIM.STORAGE.aDay, days: CLAIM.STORAGE.days }, storage),
          paidDays: stored.take(
            'paidDays',
            storage.paid_until === undefined ? paidDays.key : 'paid_until',
            paidDays,
            storage.paid_days,
            storage.paid_until === undefined ? paidDays.or : daysUntil(date, storage.paid_until),
            { isDefault: !(storage.paid_days || storage.paid_until) },
          ),
        }
      : null,
    tow: tow ? pen.at('tow', 'tow').all(CLAIM.TOW, tow) : null,
    lostValue: lost
      ? {
          lost: worth('lost'),
          claimed: worth('claimed', following(lost.lost.value, 'as much as is lost')),
          paid: worth('paid'),
        }
      : null,
  };
};

/** What the policy, the lender and the place's offices have to do with it. `pen` stands at the claim. */
const completeTerms = (file: SparseClaim, pen: Pen) => {
  const take = pen.from(CLAIM.SETTLEMENT, { ...file, deductible: ownOnly(file) });
  return {
    deductible: take('deductible'),
    fault: take('fault'),
    otherLimit: take('otherLimit'),
    ...pen.at('', 'recovered').all(CLAIM.RECOVERY, file.recovered),
    surcharge: pen.at('surcharge', 'surcharge').all(CLAIM.SURCHARGE, file.surcharge),
    salvage: take('salvage'),
    ...pen.all(CLAIM.TOTAL_LOSS, file),
    refunds: (file.refunds ?? []).map((one, i) => ({
      what: one.what,
      insurance: isOwnInsurance(one.what, one.insurance),
      ...pen.at(`refunds.${i}`, `refunds.${i}`, one.what).all(CLAIM.PREPAID, one),
    })),
    gap: file.gap ? pen.at('gap', 'gap').all(CLAIM.GAP, file.gap) : null,
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
  const take = pen.from(CLAIM.SETTLEMENT, file);
  const claim: Claim = {
    value: take('value', compared, { isDefault: false }),
    damageBefore: take('damageBefore'),
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
