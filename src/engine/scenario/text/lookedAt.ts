import { parseDocument } from 'yaml';

/** A number typed for a look, beside the file: its place there, and a figure as a file would hold it. */
export interface LookedAt {
  readonly path: string;
  readonly figure: string;
  /** It is nobody's to guess, but chosen. */
  readonly chosen: boolean;
  /** What the file itself comes to, in words. */
  readonly instead: string;
}

/** A figure that is a number is written as one. */
const written = (figure: string): string | number => {
  const number = Number(figure);
  return figure.trim() !== '' && Number.isFinite(number) ? number : figure;
};

/**
 * The text of a scenario with other figures in it, each saying that it was only looked at; all else is as it was. Null
 * where nothing can be written at such a place.
 */
export const textLookedAt = (text: string, looks: readonly LookedAt[]): string | null => {
  const doc = parseDocument(text);
  try {
    for (const { path, figure, chosen, instead } of looks) {
      const steps = path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
      const said = {
        value: written(figure),
        ...(chosen ? {} : { how: 'guess' }),
        note: `only a look: otherwise ${instead}`,
      };
      doc.setIn(steps, doc.createNode(said, { flow: true }));
    }
  } catch {
    return null;
  }
  return doc.toString({ lineWidth: 0 });
};
