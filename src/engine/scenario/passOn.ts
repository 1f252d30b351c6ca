import { isMap, isScalar, parseDocument } from 'yaml';
import { redactScenario } from './redact.ts';

/**
 * A scenario's text as a report carries it: without what is private, and with the day of the decision written down, so
 * that it gives the same figures on any other day. A file that says its day and keeps nothing private comes back
 * untouched, comments and all.
 *
 * @param date ISO day the decision was taken on
 * @param isPrivate asked for the dotted path of every value
 */
export const scenarioToPassOn = (text: string, date: string, isPrivate: (path: string) => boolean): string =>
  dated(redactScenario(text, isPrivate), date);

const dated = (text: string, date: string): string => {
  const doc = parseDocument(text);
  if (!isMap(doc.contents) || doc.has('date')) return text;
  const [first] = doc.contents.items;
  const start = isScalar(first?.key) ? first.key.range?.[0] : undefined;
  if (doc.contents.flow || start === undefined) {
    doc.set('date', date);
    return doc.toString({ lineWidth: 0 });
  }
  // The line goes before the first key, in its column, so that nothing the household wrote is written anew.
  const indent = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  return `${text.slice(0, start)}date: ${date} # the day this was worked out\n${indent}${text.slice(start)}`;
};
