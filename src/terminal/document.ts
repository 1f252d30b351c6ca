import { parseHTML } from 'linkedom';
import type { DrawingDocument } from '../report/charts/dom.ts';

/** A fresh document for charts to be drawn in, outside a browser. */
export const newDocument = (): DrawingDocument =>
  parseHTML('<!doctype html><html><head></head><body></body></html>').document;
