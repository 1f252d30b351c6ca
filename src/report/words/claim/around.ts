import type { Decision } from '../../../engine/answer/decision.ts';
import type { Quantity } from '../../../engine/scenario/inputs/scenario.ts';
import { day, type Formats } from '../../format.ts';
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
  /** Whether all of a line can be said: what is private is not among the numbers. */
  const all = (...keys: readonly string[]): boolean => keys.every((key) => told(key) !== null);
  const said = (key: string): string => {
    const quantity = told(key);
    return quantity === null ? '' : format.quantity(quantity);
  };
  const lines: { what: string; words: string }[] = [];
  const add = (what: string, words: string): void => void lines.push({ what, words });
  if (value('surcharge.aYear') > 0 && all('surcharge.years'))
    add(
      'Dearer insurance',
      `A claim on your own policy is counted at ${said('surcharge.aYear')} more for ${said('surcharge.years')}, ${format.round(value('surcharge.aYear') * value('surcharge.years'))} in all before prices rise, in every way that claims and stays insured. Making no claim saves it.`,
    );
  else if (facts.pays === 'own' && told('surcharge.aYear')?.value === 0)
    add(
      'Dearer insurance',
      'None is counted, because none was told. Ask what a claim adds, and for how many years.',
    );
  if (value('recovered') > 0)
    add(
      'Your share back',
      `There is a chance of ${said('recovered')} that the other side pays it back. It is counted half a year on, ${facts.recoveredFor === 'owner first' ? 'your share first' : 'in proportion to what each has borne'}. Release the other side on your own and it may be lost.`,
    );
  if (told('gap.notCovered') !== null || told('gap.limit') !== null)
    add(
      'Gap cover',
      `It pays the lender what a total loss leaves owing${told('gap.limit') ? `, up to ${said('gap.limit')}` : ''}${value('gap.notCovered') > 0 ? `, but not ${said('gap.notCovered')} of it (missed payments, late fees, a deductible it leaves out)` : ''}. It pays once, only after a total loss, and nothing to you: no repair, no down payment on another.`,
    );
  else if (facts.lender && facts.pays !== 'nobody')
    add('Gap cover', 'None was told. What a total loss leaves owing to the lender is then yours to pay.');
  const ahead = d.quantities
    .filter((q) => /^claim\.refunds\.\d+\.paid$/.test(q.key))
    .map((q) => q.label.replace(/^paid ahead, /, ''));
  if (ahead.length > 0)
    add(
      'Paid ahead',
      `What is unused of ${listed(ahead)} comes back when the vehicle goes${facts.lender ? ', to the lender first if more is owed than is paid' : ''}. Nobody sends it unasked: cancel in writing.`,
    );
  if (all('rental.aDay', 'rental.paidADay', 'rental.paidDays'))
    add(
      'A rental',
      facts.pays === 'nobody'
        ? `It costs ${said('rental.aDay')}, all of it yours.`
        : `It costs ${said('rental.aDay')}; they pay up to ${said('rental.paidADay')}, for at most ${said('rental.paidDays')}. What is beyond is yours.`,
    );
  if (all('storage.aDay', 'storage.days', 'storage.paidDays'))
    add(
      'Storage',
      facts.pays === 'nobody'
        ? `It costs ${said('storage.aDay')} where it stands, all of it yours.`
        : `It costs ${said('storage.aDay')} where it stands; they pay ${said('storage.paidDays')} of the ${said('storage.days')} counted here${facts.storagePaidUntil === '' ? '' : `, the last on ${day(facts.storagePaidUntil)}`}. Have it moved before.`,
    );
  if (all('tow.costs', 'tow.paid') && facts.pays !== 'nobody')
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
  if (all('lostValue.claimed', 'lostValue.paid'))
    add(
      'Lost market value',
      `A claim of its own for ${said('lostValue.claimed')}, counted at a chance of ${said('lostValue.paid')}, where it is kept and mended. Signing may end it.`,
    );
  if (told('childSeats.costs') !== null)
    add('Child seats', `New ones at ${said('childSeats.costs')} are counted in every way that needs them.`);
  if (told('otherLimit') !== null)
    add("Their policy's limit", `It pays ${said('otherLimit')} at most, the lost market value within it.`);
  return lines;
};
