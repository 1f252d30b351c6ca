import { describe, expect, it } from 'vitest';
import { decisionOf, type File, shortForm } from '../support/file.ts';
import { read, render } from './page.ts';

const TITLE = 'Filled in, and worth a tenth of the answer';

/** Nothing left out: big bills come. */
const decided = (change: (file: File) => void = () => undefined) =>
  decisionOf((file) => {
    Reflect.deleteProperty(file, 'big_bills');
    change(file);
  });

/** The rows below the title, as words. */
const listed = (change?: (file: File) => void): string[][] => {
  const d = decided(change);
  const boxes = [...read(render(d)).querySelectorAll('#assumed .box')];
  const table = boxes.find((box) => box.getAttribute('aria-label')?.startsWith(TITLE));
  return [...(table?.querySelectorAll('tbody tr') ?? [])].map((row) =>
    [...row.querySelectorAll('th, td')].map((cell) => cell.textContent.trim()),
  );
};

describe('what was filled in and moves the answer by a tenth', () => {
  it('is listed with what it does, and that holds when it is typed into the file', () => {
    const row = listed().find(([what]) => what === 'energy economy, 2009 wagon');
    expect(row?.[1]).toBe('25.7 miles a gallon');
    const [, lower] = /^21\.4: keeping costs about (\$[\d,]+) less$/.exec(row?.[2] ?? '') ?? [];
    const typed = decided((file) => {
      file.vehicle.fuel = { economy: `${25.7 / 1.2} mpg` };
    });
    const apart = (typed.difference?.counted ?? 0) / 100;
    expect(Math.abs(apart - Number(lower?.replace(/[$,]/g, '')))).toBeLessThan(60);
  });

  it('has no number in it that the file gives', () => {
    const given = listed((file) => {
      file.vehicle.fuel = { economy: '25.7 mpg' };
    });
    expect(given.length).toBeGreaterThan(0);
    expect(given.map(([what]) => what)).not.toContain('energy economy, 2009 wagon');
    expect(given.map(([what]) => what)).not.toContain('price with all fees, 2021 hatchback');
    expect(shortForm().replacement.price_with_all_fees).toBe(17800);
  });
});
