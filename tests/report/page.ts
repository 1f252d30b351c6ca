import { parseHTML } from 'linkedom';
import type { Decision } from '../../src/engine/answer/decision.ts';
import type { DrawingDocument } from '../../src/report/charts/dom.ts';
import { renderReport } from '../../src/report/render.ts';
import { decision, scenarioText } from './fixture.ts';

export const newDocument = (): DrawingDocument =>
  parseHTML('<!doctype html><html><body></body></html>').document as unknown as DrawingDocument;

export const render = (d: Decision = decision, text = scenarioText): string =>
  renderReport(d, { document: newDocument(), scenarioText: text });

interface ParsedElement {
  readonly textContent: string;
  readonly tagName: string;
  readonly id: string;
  getAttribute(name: string): string | null;
  querySelector(selector: string): ParsedElement | null;
  querySelectorAll(selector: string): Iterable<ParsedElement>;
}

/** The page as a reader's browser sees it. */
export const read = (page: string): ParsedElement =>
  parseHTML(page).document.documentElement as unknown as ParsedElement;

export const text = (page: string): string => read(page).querySelector('body')?.textContent ?? '';
