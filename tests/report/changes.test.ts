/** What changes on a date is told: on the page, on the terminal, in the list of costs; and not what is private. */
import { describe, expect, it } from 'vitest';
import { answerLines } from '../../src/report/answerLines.ts';
import { costsCsv } from '../../src/report/exports/costs.ts';
import { decisionOf, type File } from '../support/file.ts';
import { read, render } from './page.ts';

const dropped = (file: File): void => {
  Object.assign(file.vehicle, {
    insurance_a_year: 1200,
    changes: [{ from: '2027-07-10', insurance_a_year: 800, why: 'Odile drops collision cover' }],
  });
};
const told =
  'Counted with: yearly cost of insurance from 10 July 2027, 2009 wagon, $800 a year (Odile drops collision cover).';

describe('a bill that changes on a date', () => {
  it('is told where the money goes, and on the terminal', () => {
    const decision = decisionOf(dropped);
    expect(answerLines(decision)).toContain(told);
    expect(read(render(decision)).querySelector('#months')?.textContent).toContain(told);
    expect(answerLines(decisionOf()).join()).not.toContain('Counted with');
  });

  it('stands in the list of costs with its month, its reason and its place', () => {
    const lines = costsCsv(decisionOf(dropped)).split('\n');
    const found = lines.filter((line) =>
      line.includes('changed from month 8 on: Odile drops collision cover'),
    );
    expect(found.length).toBeGreaterThan(4);
    for (const line of found) expect(line).toContain('vehicle.changes[0].insurance_a_year');
  });

  it('keeps its words to itself where they are private', () => {
    const hidden = decisionOf((file) => {
      dropped(file);
      file.private = ['vehicle.changes.0.why'];
    });
    const written = [...answerLines(hidden), costsCsv(hidden), render(hidden)].join('\n');
    expect(written).not.toContain('Odile');
    expect(written).toContain('$800 a year (change 1)');
  });
});
