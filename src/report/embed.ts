import { type Html, raw } from './markup/html.ts';

const OPENING = '<pre id="scenario" tabindex="0">\n';
const CLOSING = '</pre>';
const MAKER = /<meta name="generator" content="stillworth [^"<>]*">/;

/** The mark by which a report of ours is known; `version` is the program's. */
export const generator = (version: string): string => `stillworth ${version.replace(/[^\w.+-]/g, '')}`;

/**
 * True for a file that this program wrote as a report. Looks only at the head, which no scenario reaches unescaped.
 */
export const isOurReport = (file: string): boolean =>
  MAKER.test(file.slice(0, 2000).split('</head>')[0] ?? '');

/**
 * The scenario as an inert, readable block from which exactly the same text comes back. It is text, not a script, so
 * no content policy has a say in it; carriage returns are written as references because a parser would drop them.
 */
export const embedScenario = (text: string): Html => {
  const safe = text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('\r', '&#13;')
    .replaceAll('\0', '&#0;');
  return raw(`${OPENING}${safe}${CLOSING}`);
};

/** The scenario a report was made from, character for character; null when the file is no report of ours. */
export const embeddedScenario = (file: string): string | null => {
  if (!isOurReport(file)) return null;
  const start = file.indexOf(OPENING);
  const end = file.indexOf(CLOSING, start);
  if (start < 0 || end < 0) return null;
  return file
    .slice(start + OPENING.length, end)
    .replaceAll('&#0;', '\0')
    .replaceAll('&#13;', '\r')
    .replaceAll('&gt;', '>')
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&');
};
