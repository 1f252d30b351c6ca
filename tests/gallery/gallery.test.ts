import { readdirSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { draw } from '../../src/report/charts/draw.ts';
import { formatsFor } from '../../src/report/format.ts';
import { facts } from '../report/fixture.ts';
import { newDocument, read } from '../report/page.ts';
import { gallery } from './gallery.ts';

const format = formatsFor(facts);
const names = Object.keys(gallery);
const drawn = (name: string, width: number): string =>
  draw((gallery[name] as (typeof gallery)[string])({ width, format }), {
    document: newDocument(),
    id: name,
    title: `The ${name} chart`,
    description: 'What it shows, in words.',
  });

/** One element a line, so that a change of one mark is a change of one line. */
const lines = (svg: string): string => `${svg.replace(/></g, '>\n<')}\n`;

describe('every chart', () => {
  beforeEach(() => {
    vi.spyOn(console, 'warn').mockImplementation((...said) => {
      throw new Error(`a chart warned: ${said.join(' ')}`);
    });
  });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('hangs in the gallery', () => {
    const charts = readdirSync(new URL('../../src/report/charts/', import.meta.url)).map((f) =>
      f.replace('.ts', ''),
    );
    expect(charts.filter((f) => !['dom', 'draw', 'look'].includes(f)).toSorted()).toEqual(names.toSorted());
  });

  it.each(names)('%s is drawn as it was', async (name) => {
    await expect(lines(drawn(name, 540))).toMatchFileSnapshot(`./${name}.svg`);
  });

  it.each(names)('%s is drawn narrow for a phone, its words no smaller', (name) => {
    const svg = read(drawn(name, 324));
    expect(svg.querySelector('svg')?.getAttribute('viewBox') ?? drawn(name, 324)).toContain('0 0 324 ');
  });

  it.each(names)('%s has marks, and a name and description of its own', (name) => {
    const svg = drawn(name, 540);
    expect(svg.match(/<(rect|path|line|circle)\b/g)?.length).toBeGreaterThan(3);
    expect(svg).toContain(`role="img"`);
    expect(svg).toContain(`<title id="name-${name}">The ${name} chart</title>`);
    expect(svg).toContain(`<desc id="told-${name}">What it shows, in words.</desc>`);
    expect(svg).not.toMatch(/NaN|undefined|<style|plot-[a-z]+-\d/);
  });

  it.each(names)('%s is the same however many were drawn before it', (name) => {
    expect(drawn(name, 540)).toBe(drawn(name, 540));
  });
});

describe('what the drawings show', () => {
  const bars = (name: string): number[][] =>
    [...drawn(name, 540).matchAll(/<rect height="([\d.]+)" y="([\d.]+)" width="([\d.]+)" x="([\d.]+)"/g)].map(
      (m) => m.slice(1).map(Number),
    );

  it('bars start at zero: their lengths are in proportion to their amounts', () => {
    const [keep = [], replace = []] = bars('ways');
    expect((replace[2] ?? 0) / (keep[2] ?? 1)).toBeCloseTo(22 / 20, 2);
  });

  it('a hundred futures are a hundred marks, each side countable and of its own shape', () => {
    const svg = drawn('hundred', 324);
    expect(svg.match(/<circle/g)).toHaveLength(82);
    expect(svg.match(/<path d="M-[^"]*" transform="translate/g)).toHaveLength(18);
  });

  it('the spread is hatched on one side of even and filled on the other, areas in proportion to shares', () => {
    const [first = 1, second = 0] = [...drawn('density', 540).matchAll(/<rect height="([\d.]+)" width/g)].map(
      (m) => Number(m[1]),
    );
    expect(second / first).toBeCloseTo(0.3 / 0.2, 1);
    expect(drawn('density', 540)).toContain('url(#hatch-density)');
  });

  it('a bar that tips the answer is cut at the tipping line: hatched before it, filled after', () => {
    const svg = drawn('swings', 540);
    const [filled = [], , hatched = []] = bars('swings');
    expect(svg).toContain('url(#hatch-swings)');
    expect((hatched[3] ?? 0) + (hatched[2] ?? 0)).toBeCloseTo(filled[3] ?? 0, 0);
  });

  it('colour never speaks alone: the second course is dashed or hatched wherever it is drawn', () => {
    for (const name of names) {
      const svg = drawn(name, 540);
      if (/stroke="var\(--replace\)"/.test(svg))
        expect(svg, name).toMatch(/stroke-dasharray="7 4"|url\(#hatch|<circle/);
    }
  });
});
