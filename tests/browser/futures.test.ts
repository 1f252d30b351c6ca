import { existsSync, readFileSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from './browser.ts';

/** Nothing listens there: every request of the page is answered from the built files. */
const HERE = 'http://stillworth.invalid/';
const SCENARIOS = ['wagon-weekend', 'knife-edge'];
const POINTS = 32;

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
});

interface Library {
  readonly SCRAMBLES: number;
  readonly parseScenario: (text: string, context: object) => { readonly scenario: never };
  readonly simulateScramble: (scenario: never, setting: object) => never;
  readonly decide: (scenario: never, version: string, draws: readonly never[]) => object;
}

/** What the library says of a scenario, drawn with few futures; runs as it stands in Node and in a page. */
const chancesFrom = (library: Library, text: string, points: number): string => {
  const { scenario } = library.parseScenario(text, { file: 'x.yaml', today: '2026-11-25' });
  const draws = Array.from({ length: library.SCRAMBLES }, (_, scramble) =>
    library.simulateScramble(scenario, { seed: 7, scramble, from: 0, to: points }),
  );
  const { chances, walkAway } = library.decide(scenario, 'x', draws) as Record<string, unknown>;
  // Engines differ in the last digits of a power; what is printed has far fewer.
  return JSON.stringify({ chances, walkAway }, (_key, value) =>
    typeof value === 'number' ? (Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(6))) : value,
  );
};

const type = (path: string): string => (extname(path) === '.js' ? 'text/javascript' : 'text/html');

describe('drawn futures', () => {
  it('give the same figures in a page as in Node, from the same seed', async () => {
    const library = (await import(resolve('dist/index.js'))) as Library;
    const page = await browser.newPage();
    await page.route('**/*', (route) => {
      const path = new URL(route.request().url()).pathname;
      const file = resolve(`dist${path}`);
      return path === '/'
        ? route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>x</title>' })
        : existsSync(file)
          ? route.fulfill({ contentType: type(path), body: readFileSync(file, 'utf8') })
          : route.abort();
    });
    await page.goto(HERE);
    for (const name of SCENARIOS) {
      const text = readFileSync(`scenarios/${name}.yaml`, 'utf8');
      const there = await page.evaluate(
        `import('${HERE}index.js').then((library) => (${chancesFrom})(library, ${JSON.stringify(text)}, ${POINTS}))`,
      );
      const here = chancesFrom(library, text, POINTS);
      expect(here.length).toBeGreaterThan(5000);
      const [a, b] = [here, String(there)].map((all) => all.split(','));
      // Told apart place by place: two long lines side by side say nothing.
      expect(a?.filter((figure, i) => figure !== b?.[i])).toEqual([]);
      expect(a?.length).toBe(b?.length);
    }
  });
});
