import { readdirSync, readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withChances } from '../report/chances.ts';
import { decision, facts } from '../report/fixture.ts';
import { render } from '../report/page.ts';
import { axeSource, launch, saved } from './browser.ts';

let browser: Browser;
let report: string;
let drawnReport: string;
let longNames: string;

beforeAll(async () => {
  browser = await launch();
  report = saved(render());
  drawnReport = saved(render(withChances));
  const long = 'Unzertrennliche-Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichenverordnung '
    .repeat(3)
    .trim();
  const solid = 'x'.repeat(200);
  longNames = saved(
    render({
      ...decision,
      facts: {
        ...facts,
        title: solid,
        vehicleName: long,
        replacementNames: [solid],
        jobs: facts.jobs.map((j) => ({ ...j, name: solid })),
      },
      options: decision.options.map((o) => ({ ...o, label: solid })),
      bestKeep: decision.bestKeep && { ...decision.bestKeep, label: long },
      quantities: decision.quantities.map((q) => ({ ...q, label: solid, source: solid })),
      breakEvens: decision.breakEvens.map((b) => ({ ...b, quantity: { ...b.quantity, label: solid } })),
      swings: decision.swings.map((s, i) => ({ ...s, quantity: { ...s.quantity, label: `${i}${solid}` } })),
      closed: [{ id: 'x', label: solid, why: solid }],
      notices: [{ kind: 'x', place: 'first', text: solid, cost: null }],
    }),
  );
});

afterAll(async () => {
  await browser.close();
});

interface Opening {
  readonly width?: number;
  readonly scheme?: 'light' | 'dark';
  readonly unfold?: boolean;
}

const open = async (url: string, { width = 1280, scheme = 'light', unfold = false }: Opening = {}) => {
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme: scheme });
  const asked: string[] = [];
  const said: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await page.goto(url);
  if (unfold) await page.evaluate('for (const d of document.querySelectorAll("details")) d.open = true');
  return { page, asked, said };
};

const violations = async (page: Page): Promise<string[]> => {
  await page.evaluate(axeSource());
  return page.evaluate(
    'axe.run().then((r) => r.violations.map((v) => [v.id, ...v.nodes.slice(0, 5).map((n) => n.html.slice(0, 80))].join(" | ")))',
  );
};

/** What sticks out of the page sideways; boxes that scroll by themselves may hold wider things. */
const sticksOut = (page: Page): Promise<string[]> =>
  page.evaluate(`(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.querySelectorAll('body *')]
      .filter((e) => !e.closest('.box') && e.getBoundingClientRect().right > width + 1)
      .map((e) => e.outerHTML.slice(0, 100)).slice(0, 5).concat('the page scrolls sideways');
  })()`);

describe('opened in a browser', () => {
  it('asks the network for nothing and complains of nothing', async () => {
    const { page, asked, said } = await open(report);
    expect(asked).toEqual([report]);
    expect(said).toEqual([]);
    await page.close();
  });

  it.each([
    ['light', 1280, false],
    ['dark', 794, false],
    ['light', 360, true],
  ] as const)('has no accessibility errors: %s, %d pixels, unfolded %s', async (scheme, width, unfold) => {
    const { page } = await open(report, { scheme, width, unfold });
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  it('never scrolls sideways at any width, all folds open, whatever things are called', async () => {
    for (const url of [report, longNames]) {
      const { page } = await open(url, { unfold: true });
      for (const width of [360, 390, 600, 794, 1024, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await sticksOut(page), `${width} pixels`).toEqual([]);
      }
      await page.close();
    }
  });

  it('can be tapped: links and folds are tall enough for a thumb', async () => {
    const { page } = await open(report, { width: 360 });
    const low: string[] = await page.evaluate(`[...document.querySelectorAll('nav a, summary')]
      .filter((e) => e.getBoundingClientRect().height > 0 && e.getBoundingClientRect().height < 44).map((e) => e.textContent)`);
    expect(low).toEqual([]);
    await page.close();
  });

  it('shows one drawing of each figure, never both', async () => {
    for (const width of [360, 1280]) {
      const { page } = await open(report, { width });
      const shown: number[] = await page.evaluate(`[...document.querySelectorAll('figure')]
        .map((f) => [...f.querySelectorAll('svg')].filter((s) => s.getBoundingClientRect().width > 0).length)`);
      expect(new Set(shown)).toEqual(new Set([1]));
      await page.close();
    }
  });

  it('keeps the words of a picture inside it', async () => {
    for (const width of [360, 1280]) {
      const { page } = await open(report, { width });
      const outside: string[] =
        await page.evaluate(`[...document.querySelectorAll('figure svg')].flatMap((svg) => {
        const box = svg.getBoundingClientRect();
        return box.width === 0 ? [] : [...svg.querySelectorAll('text')].filter((t) => {
          const r = t.getBoundingClientRect();
          return r.left < box.left - 4 || r.right > box.right + 4;
        }).map((t) => svg.closest('figure').id + ': ' + t.textContent);
      })`);
      expect(outside).toEqual([]);
      await page.close();
    }
  });

  it('has the answer on the first screen of a phone', async () => {
    const { page } = await open(report, { width: 390 });
    const bottom: number = await page.evaluate(
      `document.querySelector('.lead').getBoundingClientRect().bottom`,
    );
    expect(bottom).toBeLessThan(844);
    await page.close();
  });
});

const demos = new URL('../../reports/', import.meta.url);

describe('on paper', () => {
  /** Pages of A4 and of Letter. */
  const pagesOf = async (url: string): Promise<readonly [a4: number, letter: number]> => {
    const { page } = await open(url);
    const count = async (format: 'A4' | 'Letter'): Promise<number> =>
      (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    const pages = [await count('A4'), await count('Letter')] as const;
    await page.close();
    return pages;
  };

  it('takes no more than six pages of A4 for any demo, three more with a claim; one more of Letter', async () => {
    const files = readdirSync(demos).filter((name) => name.endsWith('.html'));
    expect(files.length).toBeGreaterThan(3);
    for (const name of files) {
      const url = new URL(name, demos);
      const [a4, letter] = await pagesOf(url.href);
      const most = readFileSync(url, 'utf8').includes('<section id="insurers-money"') ? 9 : 6;
      expect(a4, `${name} on A4`).toBeLessThanOrEqual(most);
      expect(letter, `${name} on Letter`).toBeLessThanOrEqual(most + 1);
    }
  });

  it('takes two to seven pages of either where every chapter has something to say', async () => {
    for (const pages of await pagesOf(drawnReport)) {
      expect(pages).toBeGreaterThanOrEqual(2);
      expect(pages).toBeLessThanOrEqual(7);
    }
  });

  it('leaves out what is folded or said beside it, and keeps findings, the card and the ledger by year', async () => {
    const { page } = await open(drawnReport);
    await page.emulateMedia({ media: 'print' });
    const shown = (selectors: readonly string[]): Promise<boolean[]> =>
      page.evaluate(
        `${JSON.stringify(selectors)}.map((s) => document.querySelector(s).getBoundingClientRect().height > 0)`,
      );
    const out = [
      'nav',
      '#fig-cumulative details',
      '#fig-hundred',
      '#fig-ways',
      '#fig-yearly svg',
      '.onscreen',
    ];
    const kept = [
      '#fig-yearly b',
      '#fig-cumulative svg',
      '#fig-density svg',
      '.card',
      '#arithmetic table.ledger',
    ];
    expect(await shown(out)).toEqual(out.map(() => false));
    expect(await shown(kept)).toEqual(kept.map(() => true));
    await page.close();
  });
});
