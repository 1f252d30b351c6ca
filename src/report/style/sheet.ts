import { base } from './base.ts';
import { card } from './card.ts';
import { figures } from './figures.ts';
import { first } from './first.ts';
import { margin } from './margin.ts';
import { paper } from './paper.ts';
import { tables } from './tables.ts';

/** Blank space says nothing to a browser; the file is smaller without it. */
const close = (css: string): string =>
  css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};,>]) ?/g, '$1')
    .replace(/: /g, ':')
    .replaceAll(';}', '}')
    .trim();

/** The page's whole look, in the order in which later rules lean on earlier ones. */
export const styleSheet: string = [base, first, margin, figures, tables, card, paper].map(close).join('\n');
