import { describe, expect, it } from 'vitest';
import { base } from '../../src/report/style/base.ts';
import { paper } from '../../src/report/style/paper.ts';

type Inks = Readonly<Record<string, string>>;

const inks = (css: string): Inks =>
  Object.fromEntries(
    [...css.matchAll(/--([\w-]+): (#[0-9a-f]{3,6})/g)].map((m) => [m[1] as string, m[2] as string]),
  );

const [light = '', dark = ''] = base.split('@media (prefers-color-scheme: dark)');
const pages: readonly (readonly [string, Inks])[] = [
  ['light', inks(light)],
  ['dark', inks(dark)],
  ['paper', inks(paper)],
];

/** Relative luminance by WCAG 2.2, "relative luminance". */
const luminance = (hex: string): number => {
  const full = hex.length === 4 ? hex.replace(/[0-9a-f]/g, '$&$&') : hex;
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((i) => Number.parseInt(full.slice(i, i + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** Contrast ratio by WCAG 2.2, "contrast ratio". */
const contrast = (a: string, b: string): number => {
  const [x, y] = [luminance(a), luminance(b)];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
};

describe.each(pages)('inks on a %s page', (_, ink) => {
  const of = (name: string): string => ink[name] ?? '';

  it.each(['ink', 'soft', 'keep', 'replace', 'care'])(
    'words in %s have 4.5 to 1 (WCAG 2.2, 1.4.3)',
    (name) => {
      expect(contrast(of(name), of('paper'))).toBeGreaterThanOrEqual(4.5);
    },
  );

  it('marks and the rules that mean something have 3 to 1 (WCAG 2.2, 1.4.11)', () => {
    expect(contrast(of('rule'), of('paper'))).toBeGreaterThanOrEqual(3);
    expect(contrast(of('replace'), of('replace-wash'))).toBeGreaterThanOrEqual(3);
  });

  it('the two ways differ in lightness too, for a grey printer', () => {
    expect(contrast(of('keep'), of('replace'))).toBeGreaterThan(1.08);
  });
});

describe('contrast', () => {
  it('agrees with the extremes and a known pair (WCAG 2.2: black on white is 21 to 1)', () => {
    expect(contrast('#000', '#fff')).toBe(21);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
  });
});
