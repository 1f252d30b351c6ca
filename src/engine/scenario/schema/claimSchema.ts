import * as z from 'zod/mini';
import { CLAIM } from '../inputs/claimSpecs.ts';
import type { Units } from '../inputs/units.ts';
import { alsoNeeded, estimate, placeRule, plan, rebuild } from './claimPartsSchema.ts';
import { date, list, mapping, maybe, num, oneOf, words, yesNo } from './fields.ts';

const money = (units: Units) => ({
  rental: maybe(
    mapping(
      {
        a_day: num(CLAIM.rentalADay, units),
        paid_a_day: maybe(num(CLAIM.rentalPaidADay, units)),
        paid_days: maybe(num(CLAIM.rentalDays, units)),
      },
      'A rental: what a day costs, what of it the insurer pays, and for how many days.',
    ),
  ),
  storage: maybe(
    mapping(
      {
        a_day: num(CLAIM.storageADay, units),
        days: maybe(num(CLAIM.storageDays, units)),
        paid_days: maybe(num(CLAIM.storagePaidDays, units)),
        paid_until: maybe(date('The day until which the insurer pays for it.')),
      },
      'Where it stands, and until when the insurer pays.',
    ),
  ),
  tow: maybe(
    mapping(
      { costs: num(CLAIM.tow, units), paid: maybe(num(CLAIM.towPaid, units)) },
      'Towing it away from where it stands.',
    ),
  ),
  refunds: maybe(
    list(
      mapping(
        {
          what: words('What was paid ahead: premium, service contract, gap cover.'),
          paid: num(CLAIM.prepaid, units),
          months: num(CLAIM.prepaidMonths, units),
          left: num(CLAIM.prepaidLeft, units),
          fee: maybe(num(CLAIM.prepaidFee, units)),
          insurance: maybe(
            yesNo(
              "Whether it is the vehicle's own insurance: then it stands for the unused part of that bill.",
            ),
          ),
        },
        'Something paid ahead that goes unused when the vehicle goes.',
      ),
      20,
    ),
  ),
  lost_value: maybe(
    mapping(
      {
        lost: num(CLAIM.lost, units),
        claimed: maybe(num(CLAIM.lostClaimed, units)),
        paid: maybe(num(CLAIM.lostPaid, units)),
      },
      'What a buyer pays less though it is well repaired, and the claim for it.',
    ),
  ),
});

const policy = (units: Units) => ({
  deductible: maybe(num(CLAIM.deductible, units)),
  other_limit: maybe(num(CLAIM.otherLimit, units)),
  recovered: maybe(
    mapping(
      {
        chance: num(CLAIM.recovered, units),
        for: maybe(oneOf(['owner first', 'in proportion'], 'How the insurer shares what it gets back.')),
      },
      'What your insurer may get back from the other side, your share of the bill with it.',
    ),
  ),
  surcharge: maybe(
    mapping(
      { a_year: num(CLAIM.surcharge, units), years: num(CLAIM.surchargeYears, units) },
      'Dearer insurance afterwards.',
    ),
  ),
  sales_tax: maybe(num(CLAIM.salesTax, units)),
  title_fee: maybe(num(CLAIM.titleFee, units)),
  transfer_fee: maybe(num(CLAIM.transferFee, units)),
  tax_only_when_bought: maybe(yesNo('Whether tax and fees are paid only once another vehicle is bought.')),
  lender: maybe(
    mapping(
      {
        name: words('Who lent the money.'),
        paid_first: maybe(yesNo('Whether the policy names the lender, so that it is paid first.')),
        requires_repair: maybe(yesNo('Whether the lender wants the vehicle repaired.')),
        cheque: maybe(
          oneOf(
            ['released to the owner', 'only for the repair', 'put to the loan'],
            'What becomes of a cheque that names the lender too.',
          ),
        ),
      },
      'The lender of vehicle.loan.',
    ),
  ),
  gap: maybe(
    mapping(
      { limit: maybe(num(CLAIM.gapLimit, units)), not_covered: maybe(num(CLAIM.gapNotCovered, units)) },
      'Gap cover: pays a lender what a total loss leaves owing.',
    ),
  ),
});

/** A collision that is not settled yet. */
export const claimSchema = (units: Units) =>
  mapping(
    {
      what: words('What happened, in a few words.'),
      happened: maybe(date('The day it happened.')),
      pays: oneOf(['own', 'other', 'nobody'], "Whose insurer pays: your own, the other driver's, nobody's."),
      insurer: maybe(words('The insurer that pays.')),
      fault: maybe(num(CLAIM.fault, units)),
      place: z.union([words('The code of a listed place, such as US-VA.'), placeRule(units)]),
      value: maybe(num(CLAIM.value, units)),
      comparables: maybe(
        list(
          mapping(
            {
              what: words('The vehicle, and where it was seen.'),
              price: num(CLAIM.comparablePrice, units),
              odometer: num(CLAIM.comparableDistance, units),
              adjust: maybe(num(CLAIM.adjustment, units)),
            },
            'A vehicle like it, offered or sold.',
          ),
          20,
        ),
      ),
      a_mile: maybe(num(CLAIM.perDistance, { ...units, distance: 'miles' })),
      a_km: maybe(num(CLAIM.perDistance, { ...units, distance: 'km' })),
      damage_before: maybe(num(CLAIM.damageBefore, units)),
      estimate: estimate(units),
      salvage: maybe(num(CLAIM.salvage, units)),
      ...policy(units),
      ...money(units),
      also_needed: maybe(alsoNeeded(units)),
      own_repair: maybe(plan(units, 'Taking the money and repairing it at home.')),
      safe_only: maybe(plan(units, 'Taking the money and mending only what makes it safe and legal.')),
      rebuild: maybe(rebuild(units)),
      structure: maybe(
        oneOf(['sound', 'damaged', 'not checked'], 'What carries it, beneath the skin: what was found.'),
      ),
      airbags_deployed: maybe(yesNo('Whether an airbag went off.')),
      flooded: maybe(yesNo('Whether it stood in water.')),
      injured: maybe(yesNo('Whether anybody was hurt.')),
      signing_closes: maybe(yesNo('Whether signing closes the claim for good.')),
      answer_by: maybe(
        list(
          mapping(
            { what: words('What is to be answered.'), date: date('The last day for it.') },
            'A day by which to answer.',
          ),
          20,
        ),
      ),
    },
    'A collision that is not settled yet. The vehicle is described as it was before; sells_for.as_it_stands is damaged.',
  );
