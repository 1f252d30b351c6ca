import * as CLAIM from '../inputs/claimInputs.ts';
import type { Units } from '../inputs/units.ts';
import * as WORK from '../inputs/workInputs.ts';
import { list, mapping, maybe, num, numOr, oneOf, words, yesNo } from './fields.ts';
import { shapeOf } from './groupShape.ts';
import { by } from './runningSchema.ts';

/** What a line of an estimate may be for. */
const KINDS = [
  'parts',
  'labour',
  'paint',
  'supplement',
  'electronics',
  'towing',
  'storage',
  'rental',
  'hail damage',
  'other',
] as const;
const LEFT_OUT = [
  'paint',
  'electronics',
  'towing',
  'storage',
  'rental',
  'lost market value',
  'hail damage',
  'sales tax',
] as const;

/** A rule of a place that is not listed, written out. */
export const placeRule = (units: Units) =>
  mapping(
    {
      name: words('What the place is called.'),
      total_loss: numOr(
        CLAIM.OF_VALUE,
        units,
        { formula: 'formula', insurer: 'insurer decides' } as const,
        'From when it is a total loss: a percentage of value, formula (repair and salvage against value) or insurer (the insurer decides).',
      ),
      line_counts: maybe(yesNo('Whether a repair exactly on that line is a total loss already.')),
      left_out: maybe(list(oneOf(LEFT_OUT, 'What is left out of the repair cost held against the value.'))),
      may_be_kept: maybe(yesNo('Whether an owner may keep a total loss and rebuild it.')),
      never_again: maybe(num(CLAIM.OF_VALUE, units)),
      tax: maybe(
        oneOf(
          ['before salvage', 'after salvage', 'not paid'],
          'Tax in a total loss: on the whole value, on the value less the salvage kept, or none.',
        ),
      ),
      fees_paid: maybe(yesNo('Whether a total loss pays the fees of the papers too.')),
      trade_in_credit: maybe(
        oneOf(['full', 'none', 'no sales tax'], 'What of a trade-in lowers the tax on the next vehicle.'),
      ),
      fault: maybe(
        oneOf(
          ['in proportion', 'nothing from half', 'nothing above half', 'nothing if any'],
          'What is left of a claim on the other driver when part of the fault is yours.',
        ),
      ),
      source: maybe(words('Where this rule was read.')),
      notes: maybe(list(words('Something to know about this place.'), 10)),
    },
    'The rule of the place, where it is not listed. Left out: not known.',
  );

export const estimate = (units: Units) => {
  const { betterment, ...line } = shapeOf(CLAIM.LINE, units);
  const { tax, total } = shapeOf(CLAIM.ESTIMATE, units);
  return mapping(
    {
      lines: list(
        mapping(
          {
            what: words('The line, as it stands on the estimate.'),
            kind: oneOf(KINDS, 'What the line is for.'),
            ...line,
            part: maybe(
              oneOf(["maker's own", "other maker's", 'used', 'rebuilt'], 'What kind of part it counts with.'),
            ),
            betterment,
            taxed: maybe(yesNo('Whether tax is due on it: parts and paint yes, the rest no, unless told.')),
          },
          'A line of the estimate: an amount, or hours at a rate.',
        ),
      ),
      tax,
      tax_only_when_paid: maybe(yesNo('Whether the insurer pays that tax only once the work is done.')),
      total,
      supplement: maybe(
        mapping(shapeOf(CLAIM.SUPPLEMENT, units), 'More damage that shows once it is opened.'),
      ),
      ...shapeOf(CLAIM.SHOP, units),
    },
    'The estimate, line by line.',
  );
};

const planShape = (units: Units) => ({
  ...shapeOf(WORK.WORK_COST, units),
  by: by(),
  ...shapeOf(CLAIM.PLAN, units),
});

export const plan = (units: Units, description: string) =>
  mapping({ ...planShape(units), ...shapeOf(CLAIM.PLAN_DAYS, units) }, description);

export const rebuild = (units: Units) =>
  mapping(
    {
      ...planShape(units),
      ...shapeOf(CLAIM.REBUILD, units),
      insurance_quoted: maybe(yesNo('Whether an insurer has quoted that price for it.')),
      retitling_confirmed: maybe(yesNo('Whether the place has confirmed that it can be titled again.')),
      inspected: maybe(
        yesNo('Whether somebody qualified has looked at what carries it, airbags and wiring.'),
      ),
    },
    'Keeping it after a total loss and getting it back on the road.',
  );

type Extra = (typeof CLAIM.EXTRAS)[keyof typeof CLAIM.EXTRAS];

export const alsoNeeded = (units: Units) => {
  const extra = ({ numbers, help }: Extra) =>
    maybe(
      mapping(
        {
          ...shapeOf(numbers, units),
          in_estimate: yesNo('Whether a line of the estimate holds it already.'),
        },
        help,
      ),
    );
  return mapping(
    Object.fromEntries(Object.values(CLAIM.EXTRAS).map((one) => [one.key, extra(one)])) as Record<
      Extra['key'],
      ReturnType<typeof extra>
    >,
    'What else has to be done before it is safe, whoever repairs it.',
  );
};
