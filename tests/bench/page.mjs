/**
 * How quick the engine would answer in a page: what of it has to be loaded, and how long a browser takes, once warm, for the
 * first answer, for all break-evens and swings, and for the futures on two workers. Given another checkout's root, both are
 * measured in turn, round by round, and stand side by side. Prints; judges nothing.
 *
 *     node tests/bench/page.mjs [root of another checkout] [rounds]
 */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { chromium } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from '../../scripts/browser.mjs';
import { bundled, placeIn, sizeOf } from './page/bundle.mjs';
import { productModules } from './product.mjs';

const [other, rounds = '7'] = process.argv.slice(2);
const ROUNDS = Number(rounds);
const WARM_UP = 2;
/** The first answer is short: the middle one of so many is a round's. */
const IN_A_ROW = 7;
/** The demo with most to work out, and a short one. */
const DEMOS = ['parked-hatchback', 'short-form'];
const ADDRESS = 'http://page.invalid/';
const READING = ['yaml', 'zod'];
const TABLES = 'arquero';

/** @typedef {{ name: string, root: string }} Checkout */
/** @type {readonly Checkout[]} */
const CHECKOUTS = [
  { name: 'this one', root: process.cwd() },
  ...(other === undefined ? [] : [{ name: 'other', root: resolve(other) }]),
];

/** @param {readonly number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/**
 * A row of the table: the median of each checkout, and of the ratios of the first to the second round by round, which a
 * machine that is busy for a while moves less.
 *
 * @param {string} what
 * @param {readonly (readonly number[])[]} figures round by round, of each checkout
 */
const printRow = (what, figures) => {
  const [first = [], second] = figures;
  const columns = figures.map((ones) => median(ones).toFixed(1).padStart(10)).join('');
  const ratio = second && median(first.map((figure, i) => figure / (second[i] ?? Number.NaN)));
  console.log(
    `  ${what.padEnd(50)}${columns}${ratio === undefined ? '' : `${ratio.toFixed(2).padStart(8)} x`}`,
  );
};
const printHead = (/** @type {string} */ what) => {
  const names = CHECKOUTS.map(({ name }) => name.padStart(10)).join('');
  console.log(`\n${what.padEnd(52)}${names}`);
};

const printSizes = async () => {
  const sizes = await Promise.all(
    CHECKOUTS.map(async ({ root }) => {
      const size = async (/** @type {Parameters<typeof bundled>[2]} */ setting) =>
        sizeOf(await bundled(root, 'answer', setting));
      const alone = await size({ without: [...READING, TABLES] });
      const noDecimal = await size({ without: [...READING, TABLES, 'decimal.js'] });
      return {
        'engine alone': alone,
        '  of which decimal.js': {
          minified: alone.minified - noDecimal.minified,
          gzipped: alone.gzipped - noDecimal.gzipped,
        },
        'engine with yaml and zod, as far as it needs them': await size({}),
        'engine, charts and Plot': await size({ without: [...READING, TABLES], charts: true }),
        'worker alone': sizeOf(await bundled(root, 'worker', { without: READING })),
      };
    }),
  );
  for (const as of /** @type {const} */ (['minified', 'gzipped'])) {
    printHead(`kB, ${as === 'minified' ? 'minified' : 'minified and gzipped'}`);
    for (const what of /** @type {(keyof typeof sizes[number])[]} */ (Object.keys(sizes[0] ?? {})))
      printRow(
        what,
        sizes.map((one) => [one[what][as] / 1000]),
      );
  }
};

/** A checkout's engine in a page of its own, two workers called in. */
const opened = async (
  /** @type {import('playwright-core').Browser} */ browser,
  /** @type {string} */ root,
) => {
  const scripts = {
    'answer.js': await bundled(root, 'answer'),
    'worker.js': await bundled(root, 'worker'),
  };
  const page = await (await browser.newContext()).newPage();
  await page.route(`${ADDRESS}**`, (route) => {
    const name = new URL(route.request().url()).pathname.slice(1);
    const body = /** @type {Record<string, string>} */ (scripts)[name];
    return body === undefined
      ? route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bench</title>' })
      : route.fulfill({ contentType: 'text/javascript', body });
  });
  await page.goto(ADDRESS);
  await page.evaluate(`import('/answer.js').then((engine) => {
    globalThis.engine = engine;
    engine.callIn('/worker.js');
  })`);
  const { parse } = await productModules({ parse: placeIn(root, 'src/engine/scenario/file/parse.ts') });
  return {
    /** Complete, as JSON. @type {(name: string) => string} */
    scenario: (name) => {
      const text = readFileSync(join('scenarios', `${name}.yaml`), 'utf8');
      const { scenario, problems } = parse.parseScenario(text, { file: name, today: '2026-11-25' });
      if (!scenario) throw new Error(`${name}: ${JSON.stringify(problems)}`);
      return JSON.stringify(scenario);
    },
    /** @type {(does: 'firstAnswer' | 'wholeAnswer' | 'futures', json: string) => Promise<any>} */
    ask: (does, json) => page.evaluate(`globalThis.engine.${does}(${JSON.stringify(json)})`),
  };
};

/** @typedef {Awaited<ReturnType<typeof opened>>} Page */

/** One round of one demo in one page. */
const measured = async (/** @type {Page} */ { ask }, /** @type {string} */ json) => {
  // A page that has just been waiting for its turn is not warm.
  const firsts = [];
  for (let i = 0; i < IN_A_ROW; i += 1) firsts.push(await ask('firstAnswer', json));
  const first = median(firsts);
  const whole = await ask('wholeAnswer', json);
  const futures = await ask('futures', json);
  return {
    times: {
      'first answer': first,
      'break-evens and swings': whole.time - first,
      '16,384 futures on two workers': futures.time,
      '  of which what they say, on the page alone': futures.time - futures.drawing,
    },
    answer: `replacing less keeping ${whole.difference}, ${whole.tips} of ${whole.asked} numbers tip it, keeping cheaper in ${(100 * futures.keepingCheaper).toFixed(2)} of 100`,
  };
};

const executablePath = findBrowser();
if (executablePath === null) console.log('No browser found: sizes alone. npm test says how to get one.');
await printSizes();
if (executablePath !== null) {
  const browser = await chromium.launch({ executablePath, args: BROWSER_FLAGS });
  try {
    const pages = await Promise.all(CHECKOUTS.map(({ root }) => opened(browser, root)));
    console.log(`\nChromium ${browser.version()}, medians of ${ROUNDS} rounds after ${WARM_UP} to warm up`);
    for (const demo of DEMOS) {
      const texts = pages.map((page) => page.scenario(demo));
      /** @type {Awaited<ReturnType<typeof measured>>[][]} */
      const all = pages.map(() => []);
      for (let round = 0; round < WARM_UP + ROUNDS; round += 1)
        // Who goes first takes turns too.
        for (const [i, page] of round % 2 ? [...pages.entries()].reverse() : pages.entries()) {
          const one = await measured(page, texts[i] ?? '');
          if (round >= WARM_UP) all[i]?.push(one);
        }
      printHead(`${demo}, milliseconds`);
      for (const what of Object.keys(all[0]?.[0]?.times ?? {}))
        printRow(
          what,
          all.map((ones) => ones.map(({ times }) => times[/** @type {'first answer'} */ (what)])),
        );
      for (const [i, ones] of all.entries()) console.log(`  ${CHECKOUTS[i]?.name}: ${ones[0]?.answer}`);
    }
  } finally {
    await browser.close();
  }
}
