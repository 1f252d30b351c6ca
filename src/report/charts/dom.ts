/** As much of a document as drawing a chart needs: a browser's and linkedom's both are one. */
export interface DrawingDocument {
  createElementNS(namespace: string, name: string): DrawnElement;
}

export interface DrawnElement {
  id: string;
  textContent: string | null;
  innerHTML: string;
  readonly outerHTML: string;
  getAttribute(name: string): string | null;
  setAttribute(name: string, value: string): void;
  removeAttribute(name: string): void;
  querySelectorAll(selector: string): Iterable<DrawnElement>;
  prepend(...children: DrawnElement[]): void;
  append(...children: DrawnElement[]): void;
  remove(): void;
}
