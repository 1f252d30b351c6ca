import * as z from 'zod/mini';
import * as CLAIM from '../inputs/claimInputs.ts';
import type { Units } from '../inputs/units.ts';
import { alsoNeeded, estimate, placeRule, plan, rebuild } from './claimPartsSchema.ts';
import { date, list, mapping, maybe, oneOf, words, yesNo } from './fields.ts';
import { shapeByUnit, shapeOf } from './groupShape.ts';

const money = (units: Units) => ({
  rental: maybe(
    mapping(
      shapeOf(CLAIM.RENTAL, units),
      'A rental: what a day costs, what of it the insurer pays, and for how many days.',
    ),
  ),
  storage: maybe(
    mapping(
      {
        ...shapeOf(CLAIM.STORAGE, units),
        paid_until: maybe(date('The day until which the insurer pays for it.')),
      },
      'Where it stands, and until when the insurer pays.',
    ),
  ),
  tow: maybe(mapping(shapeOf(CLAIM.TOW, units), 'Towing it away from where it stands.')),
  refunds: maybe(
    list(
      mapping(
        {
          what: words('What was paid ahead: premium, service contract, gap cover.'),
          ...shapeOf(CLAIM.PREPAID, units),
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
      shapeOf(CLAIM.LOST_VALUE, units),
      'What a buyer pays less though it is well repaired, and the claim for it.',
    ),
  ),
});

const policy = (units: Units) => ({
  recovered: maybe(
    mapping(
      {
        ...shapeOf(CLAIM.RECOVERY, units),
        for: maybe(oneOf(['owner first', 'in proportion'], 'How the insurer shares what it gets back.')),
      },
      'What your insurer may get back from the other side, your share of the bill with it.',
    ),
  ),
  surcharge: maybe(mapping(shapeOf(CLAIM.SURCHARGE, units), 'Dearer insurance afterwards.')),
  ...shapeOf(CLAIM.TOTAL_LOSS, units),
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
  gap: maybe(mapping(shapeOf(CLAIM.GAP, units), 'Gap cover: pays a lender what a total loss leaves owing.')),
});

/** A collision that is not settled yet. */
export const claimSchema = (units: Units) => {
  const { fault, value, damage_before, ...terms } = shapeOf(CLAIM.SETTLEMENT, units);
  return mapping(
    {
      what: words('What happened, in a few words.'),
      happened: maybe(date('The day it happened.')),
      pays: oneOf(['own', 'other', 'nobody'], "Whose insurer pays: your own, the other driver's, nobody's."),
      insurer: maybe(words('The insurer that pays.')),
      fault,
      place: z.union([words('The code of a listed place, such as US-VA.'), placeRule(units)]),
      value,
      comparables: maybe(
        list(
          mapping(
            {
              what: words('The vehicle, and where it was seen.'),
              ...shapeOf(CLAIM.COMPARABLE, units),
            },
            'A vehicle like it, offered or sold.',
          ),
          20,
        ),
      ),
      ...shapeByUnit(CLAIM.PER_DISTANCE, units),
      damage_before,
      estimate: estimate(units),
      ...terms,
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
};
