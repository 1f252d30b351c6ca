import * as Plot from '@observablehq/plot';
import { plain } from '../markup/html.ts';
import type { DrawingDocument, DrawnElement } from './dom.ts';

/** What a chart hands over to be drawn. */
export type Drawing = Plot.PlotOptions;

/** Where a chart is drawn and what is said in its place. */
export interface Telling {
  readonly document: DrawingDocument;
  /** Unique within the page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

const SVG = 'http://www.w3.org/2000/svg';

/** Coordinates to a tenth of a pixel: nobody sees more, and the file is a third smaller. Words are left alone. */
const tenths = (markup: string): string =>
  markup.replace(/<[^>]*>/g, (tag) =>
    tag.replace(/-?\d+\.\d{2,}/g, (n) => String(Math.round(Number(n) * 10) / 10)),
  );

/** Diagonal lines in the second course's colour: told apart from a filled bar without any colour. */
const hatching = (document: DrawingDocument, id: string): DrawnElement => {
  const holder = document.createElementNS(SVG, 'defs');
  holder.innerHTML =
    `<pattern id="hatch-${id}" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">` +
    '<rect width="5" height="5" fill="var(--replace-wash)"></rect><rect width="2" height="5" fill="var(--replace)"></rect></pattern>';
  return holder;
};

/**
 * Plot's drawing made fit for a page: one image with a name and a description, no labels on nameless groups, no style
 * sheet of its own, and ids that depend on the chart alone, never on how many were drawn before it.
 */
export const draw = (options: Plot.PlotOptions, { document, id, title, description }: Telling): string => {
  const svg = Plot.plot({ ...options, document, className: 'plot' }) as unknown as DrawnElement;
  for (const group of [...svg.querySelectorAll('g[aria-label]')]) group.removeAttribute('aria-label');
  for (const style of [...svg.querySelectorAll('style')]) style.remove();
  const name = document.createElementNS(SVG, 'title');
  name.id = `name-${id}`;
  name.textContent = title;
  const words = document.createElementNS(SVG, 'desc');
  words.id = `told-${id}`;
  words.textContent = description;
  svg.prepend(name, words);
  if (svg.innerHTML.includes('url(#hatch)')) svg.append(hatching(document, id));
  svg.setAttribute('role', 'img');
  svg.setAttribute('aria-labelledby', `name-${id}`);
  svg.setAttribute('aria-describedby', `told-${id}`);
  for (const attribute of ['fill', 'font-family', 'font-size', 'text-anchor'])
    if (svg.getAttribute(attribute) === null) svg.removeAttribute(attribute);
  return renumbered(tenths(plain(svg.outerHTML)).replaceAll('url(#hatch)', `url(#hatch-${id})`), id);
};

const renumbered = (markup: string, id: string): string => {
  const seen = new Map<string, string>();
  return markup.replace(/plot-[a-z]+-\d+/g, (found) => {
    if (!seen.has(found)) seen.set(found, `${id}-${seen.size + 1}`);
    return seen.get(found) as string;
  });
};
