import { type Document, isAlias, isMap, isScalar, parseDocument } from 'yaml';
import { redactScenario } from './redact.ts';

/** How futures were drawn where that is not what the file says. */
export interface DrawnOtherwise {
  readonly seed?: number;
  /** So many were asked for; 0: none. */
  readonly futures?: number;
}

/**
 * A scenario's text as a report carries it: without what is private, and with the day of the decision and whatever was
 * drawn otherwise written down, so that it gives the same figures on any other day and without being told anything. A
 * file that says all of that and keeps nothing private comes back untouched, comments and all.
 *
 * @param date ISO day the decision was taken on
 * @param drawn seed and futures, each only if it is not the file's own
 */
export const scenarioToPassOn = (text: string, date: string, drawn: DrawnOtherwise = {}): string =>
  dated(drawnAs(redactScenario(text), drawn), date);

const dated = (text: string, date: string): string => {
  const doc = parseDocument(text);
  if (!isMap(doc.contents) || doc.has('date')) return text;
  return withFirst(text, doc, 'date', date, date, 'the day this was worked out');
};

const drawnAs = (text: string, drawn: DrawnOtherwise): string => {
  const told = Object.entries(drawn).filter(([, value]) => value !== undefined);
  const doc = parseDocument(text);
  if (told.length === 0 || !isMap(doc.contents)) return text;
  const written: unknown = doc.get('chance', true);
  const map = isAlias(written) ? written.resolve(doc)?.clone() : written;
  if (!isMap(map)) {
    const plain = `{ ${told.map(([key, value]) => `${key}: ${value}`).join(', ')} }`;
    if (!doc.has('chance'))
      return withFirst(text, doc, 'chance', Object.fromEntries(told), plain, 'drawn so');
    doc.set('chance', Object.fromEntries(told));
    return doc.toString({ lineWidth: 0 });
  }
  for (const [key, value] of told) map.set(key, value);
  if (isAlias(written)) {
    delete map.anchor;
    doc.set('chance', map);
  }
  return doc.toString({ lineWidth: 0 });
};

/** A line before the first key, in its column, so that nothing the household wrote is written anew. */
const withFirst = (
  text: string,
  doc: Document,
  key: string,
  value: unknown,
  plain: string,
  why: string,
): string => {
  const [first] = isMap(doc.contents) ? doc.contents.items : [];
  const start = isScalar(first?.key) ? first.key.range?.[0] : undefined;
  if (!isMap(doc.contents) || doc.contents.flow || start === undefined) {
    doc.set(key, value);
    return doc.toString({ lineWidth: 0 });
  }
  const indent = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  return `${text.slice(0, start)}${key}: ${plain} # ${why}\n${indent}${text.slice(start)}`;
};
