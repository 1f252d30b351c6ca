import { unsafeToLeave } from '../danger/dangers.ts';
import { asYesNo } from '../schema/fields.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { listedDangers, waitsIn } from './workRules.ts';

const yesNoAt = (raw: Raw, at: Path, key: string): boolean | null => asYesNo(raw.at([...at, key]));

/** How far it may be driven, as written; null where nothing that can be read is. */
const driven = (raw: Raw, at: Path): 'yes' | 'to_the_shop' | 'no' | null => {
  const said = raw.at([...at, 'may_be_driven']);
  const plain = asYesNo(said);
  if (plain !== null) return plain ? 'yes' : 'no';
  return typeof said === 'string' && said.trim().toLowerCase() === 'to_the_shop' ? 'to_the_shop' : null;
};

/** It is said not to be driven meanwhile, so nothing is left that could be unsafe. */
const standsMeanwhile = (raw: Raw, at: Path): boolean => {
  const said = driven(raw, at);
  return said === null ? yesNoAt(raw, at, 'immobilises') === true : said !== 'yes';
};

/**
 * A job that is put off, by waiting or by a patch, and reads as if that could be unsafe: is it safe to drive until then?
 * Never answered for the household, and a yes takes a reason.
 */
export const dangerAsked = (raw: Raw): Finding[] =>
  raw.each(['work_needed']).flatMap((at): Finding[] => {
    const job = raw.at([...at, 'job']);
    const putOff = waitsIn(raw, at) && !standsMeanwhile(raw, at) ? 'can_wait' : 'patch';
    if (putOff === 'patch' && !raw.has([...at, 'patch'])) return [];
    const unsafe = typeof job === 'string' ? unsafeToLeave(job, listedDangers(raw, at)) : null;
    if (unsafe === null) return [];
    if (!raw.has([...at, 'safety'])) {
      const told =
        unsafe.words.length > 0
          ? `it speaks of ${unsafe.what} ("${unsafe.words.map(showValue).join('", "')}")`
          : `its dangers name ${unsafe.what}`;
      return [
        {
          kind: 'unsafe',
          path: [...at, putOff],
          message: `Left undone this may be unsafe: ${told}. Is it safe to drive until then?`,
          remedy:
            'Say "safety: yes", or "safety: no" with "why:"; or "dangers: []" where there is none. The words are a table in the README (common practice, no source).',
        },
      ];
    }
    if (yesNoAt(raw, at, 'safety') !== false || raw.has([...at, 'why'])) return [];
    return [
      {
        kind: 'missing',
        path: [...at, 'why'],
        message: `Why it is safe to drive until then is missing: the job speaks of ${unsafe.what}.`,
        remedy: 'Write "why:" in a few words; it stands beside the work in the report.',
      },
    ];
  });

/** What is said of driving it agrees with itself. */
export const drivenFits = (raw: Raw): Finding[] =>
  raw.each(['work_needed']).flatMap((at): Finding[] => {
    const said = driven(raw, at);
    const problem = (kind: Finding['kind'], message: string, remedy: string): Finding[] => [
      { kind, path: [...at, 'may_be_driven'], value: raw.at([...at, 'may_be_driven']), message, remedy },
    ];
    if (said === 'yes' && yesNoAt(raw, at, 'safety') === true)
      return problem(
        'unsafe',
        'What is unsafe to drive may not be driven.',
        'Write "no", or "to_the_shop"; or take "safety: yes" out if driving without the work is safe.',
      );
    if (said !== null && said !== 'no' && yesNoAt(raw, at, 'immobilises') === true)
      return problem(
        'contradiction',
        'What cannot move until this is done may not be driven.',
        'Write "no", or take "immobilises: yes" out.',
      );
    if (said === 'yes' && waitsIn(raw, at) === false)
      return problem(
        'contradiction',
        'What cannot wait is not driven on with.',
        'Write "to_the_shop" or "no", or say in "can_wait:" how long it can.',
      );
    return [];
  });

/** Own hands and only qualified work: one says no where the other says yes. */
export const ownHandsFit = (raw: Raw): Finding[] =>
  raw.each(['work_needed']).flatMap((at): Finding[] => {
    const own = yesNoAt(raw, at, 'own_hands');
    if (own === null || own !== yesNoAt(raw, at, 'qualified_only')) return [];
    return [
      {
        kind: 'contradiction',
        path: [...at, 'own_hands'],
        value: raw.at([...at, 'own_hands']),
        message: own
          ? 'Own hands may do it, yet only qualified work will do.'
          : 'Own hands may not do it, yet other than qualified work will do.',
        remedy: 'Keep one of "own_hands:" and "qualified_only:".',
      },
    ];
  });
