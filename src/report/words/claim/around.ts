import type { Decision } from '../../../engine/decision/decision.ts';
import type { Quantity } from '../../../engine/scenario/scenario.ts';
import type { Formats } from '../../format.ts';
import { listed } from '../sentence.ts';

/** Money that comes and goes around a settlement, as far as the scenario tells of it; each with what to mind. */
export const aroundTheClaim = (
  d: Decision,
  format: Formats,
): { readonly what: string; readonly words: string }[] => {
  const facts = d.facts.claim;
  if (facts === null) return [];
  const told = (key: string): Quantity | null => d.quantities.find((q) => q.key === `claim.${key}`) ?? null;
  const value = (key: string): number => told(key)?.value ?? 0;
  const said = (key: string): string => {
    const quantity = told(key);
    return quantity === null ? '' : format.quantity(quantity);
  };
  const lines: { what: string; words: string }[] = [];
  const add = (what: string, words: string): void => void lines.push({ what, words });
  if (value('surcharge.aYear') > 0)
    add(
      'Dearer insurance',
      `A claim on your own policy adds ${said('surcharge.aYear')} a year for ${said('surcharge.years')}, with the yearly bill. It is counted in every way that claims and stays insured.`,
    );
  if (value('recovered') > 0)
    add(
      'Your share back',
      `There is a chance of ${said('recovered')} that the other side pays it back. It is counted half a year on, ${facts.recoveredFor === 'owner first' ? 'your share first' : 'in proportion to what each has borne'}.`,
    );
  if (told('gap.notCovered') !== null || told('gap.limit') !== null)
    add(
      'Gap cover',
      `It pays the lender what a total loss leaves owing${told('gap.limit') ? `, up to ${said('gap.limit')}` : ''}${value('gap.notCovered') > 0 ? `, but not ${said('gap.notCovered')} of it (missed payments, late fees, a deductible it leaves out)` : ''}. It has no part in a repair.`,
    );
  const ahead = d.quantities
    .filter((q) => /^claim\.refunds\.\d+\.paid$/.test(q.key))
    .map((q) => q.label.replace(/^paid ahead, /, ''));
  if (ahead.length > 0)
    add(
      'Paid ahead',
      `What is unused of ${listed(ahead)} comes back when the vehicle goes${facts.lender ? ', to the lender first if more is owed than is paid' : ''}. Nobody sends it unasked: cancel in writing.`,
    );
  if (told('rental.aDay') !== null)
    add(
      'A rental',
      facts.pays === 'nobody'
        ? `It costs ${said('rental.aDay')} a day.`
        : `It costs ${said('rental.aDay')} a day; they pay up to ${said('rental.paidADay')} a day for ${said('rental.paidDays')}. What is beyond is yours.`,
    );
  if (told('storage.aDay') !== null)
    add(
      'Storage',
      facts.pays === 'nobody'
        ? `It costs ${said('storage.aDay')} a day where it stands.`
        : `It costs ${said('storage.aDay')} a day where it stands; they pay ${said('storage.paidDays')} of ${said('storage.days')}. Have it moved before.`,
    );
  if (told('tow.costs') !== null && facts.pays !== 'nobody')
    add('The tow', `It costs ${said('tow.costs')}; they pay up to ${said('tow.paid')}.`);
  if (facts.estimate.taxOnlyWhenPaid || facts.taxOnlyWhenBought)
    add(
      'Tax',
      `It is paid only once it has been spent: ${listed([
        ...(facts.estimate.taxOnlyWhenPaid
          ? ['on the repair when the work is done and the bill is shown']
          : []),
        ...(facts.taxOnlyWhenBought ? ['on another vehicle when one is bought'] : []),
      ])}.`,
    );
  if (value('estimate.shopHour') > 0)
    add(
      "The shop's hours",
      `The shop asks ${said('estimate.shopHour')}; what that is above the estimate's rate is yours, unless they agree beforehand.`,
    );
  if (told('otherLimit') !== null)
    add("Their policy's limit", `It pays ${said('otherLimit')} at most, the lost market value within it.`);
  return lines;
};
