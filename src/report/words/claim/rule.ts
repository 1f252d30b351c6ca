import type { TotalLoss, Undecided } from '../../../engine/cashflow/contracts/settlement/totalLoss.ts';
import type { Evidence, Sourced } from '../../../engine/scenario/facts/fact.ts';
import type { ClaimFacts } from '../../../engine/scenario/inputs/claim.ts';
import {
  type LeftOut,
  type Operator,
  type PlaceRule,
  toBeChecked,
} from '../../../engine/scenario/places/placeRule.ts';
import { listed } from '../sentence.ts';

/** How well a row is known, as the page says it. */
const evidenceWords: Readonly<Record<Evidence, string>> = {
  read: "read in the law or the agency's text",
  secondary: 'from a chart that names the law',
  memory: 'from memory',
  stated: 'as written in the scenario',
};

/** "Iowa Code 321.52; read in the law"; what was not read there says "check this". */
export const sourceWords = (of: Sourced): string =>
  `${of.source} (${evidenceWords[of.evidence]})${toBeChecked(of) ? ': check this' : ''}`;

const LEFT_OUT: Readonly<Record<LeftOut, string>> = {
  paint: 'paint',
  electronics: 'electronics',
  towing: 'the tow',
  storage: 'storage',
  rental: 'the rental',
  'lost market value': 'lost market value',
  'hail damage': 'hail damage',
  'sales tax': 'sales tax on the repair',
};

const OPERATOR: Readonly<Record<Operator, string>> = {
  '>=': 'or more',
  '>': 'more than that, the line itself not counting',
  'not known': 'whether the line itself counts is not known',
};

/** The rule itself, in a sentence. */
export const testWords = ({ totalLoss: { test, leftOut, note } }: PlaceRule): string => {
  const out =
    leftOut.length === 0 ? '' : ` Not counted in the repair: ${listed(leftOut.map((l) => LEFT_OUT[l]))}.`;
  const more = note === null ? '' : ` ${note.charAt(0).toUpperCase()}${note.slice(1)}.`;
  switch (test.kind) {
    case 'insurer decides':
      return `The insurer decides when a repair is too dear; the law gives no figure.${out}${more}`;
    case 'percent':
      return `A total loss when the repair comes to ${test.percent}% of what it was worth (${OPERATOR[test.operator]}).${out}${more}`;
    case 'formula':
      return `A total loss when the repair and the wreck's value together come to what it was worth (${OPERATOR[test.operator]}).${out}${more}`;
  }
};

/** Why a rule leaves it open. */
const undecidedWords: Readonly<Record<Undecided, string>> = {
  'the insurer decides': 'the insurer decides',
  'exactly on the line, and whether that counts is not known':
    'it falls exactly on the line, and whether the line itself counts is not known',
  'no bid for the wreck': 'nobody has bid for the wreck yet',
  'the vehicle may be too old for the rule': 'it may be too old for the rule',
  'worth too little for the rule': 'it was worth too little for the rule',
};

/** How the place's test falls out. */
export const fallsWords = (result: TotalLoss): string =>
  result.status === 'undecided'
    ? `The rule leaves it open: ${undecidedWords[result.reason]}.`
    : result.status === 'total loss'
      ? 'That is a total loss.'
      : 'That is a repair; an insurer may still call it a total loss.';

/** How tax enters a settlement there. */
export const taxWords = ({ settlement }: PlaceRule): string => {
  switch (settlement?.tax) {
    case 'before salvage':
      return 'on the whole of what it was worth, the wreck comes off afterwards';
    case 'after salvage':
      return 'on what it was worth less the wreck you keep';
    case 'not paid':
      return 'none in a settlement';
    default:
      return 'how it is taken is not known';
  }
};

/** The order of payments with a lender. */
export const lenderWords = ({
  name,
  paidFirst,
  requiresRepair,
  cheque,
}: NonNullable<ClaimFacts['lender']>): string =>
  [
    `${name.charAt(0).toUpperCase()}${name.slice(1)} ${paidFirst === false ? 'is not named in the policy, so that you are paid' : 'is paid first'}.`,
    requiresRepair === true ? 'It wants the vehicle repaired.' : '',
    cheque === null
      ? 'What becomes of a cheque that names it too, nobody has asked yet.'
      : `A cheque that names it too is ${cheque}.`,
  ]
    .filter((s) => s !== '')
    .join(' ');
