import type { Decision } from '../../engine/answer/decision.ts';
import type { Formats } from '../format.ts';

const CHANGE = /\.changes\.\d+\.\w+$/;

/**
 * What of the costs is another figure from a date on, known beforehand, and why; null where nothing is: "Counted with:
 * yearly cost of insurance from July 2027, 2009 wagon, $800 a year (the insurer drops collision cover)."
 */
export const changesSentence = (
  { quantities }: Pick<Decision, 'quantities'>,
  format: Formats,
): string | null => {
  const changes = quantities
    .filter(({ key }) => CHANGE.test(key))
    .map((q) => `${q.label}, ${format.quantity(q)}${q.note === '' ? '' : ` (${q.note})`}`);
  return changes.length === 0 ? null : `Counted with: ${changes.join('; ')}.`;
};
