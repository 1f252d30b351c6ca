import { parseHTML } from 'linkedom';

/** A fresh document for charts to be drawn in, outside a browser. */
export const newDocument = (): Document =>
  parseHTML('<!doctype html><html><head></head><body></body></html>').document;
