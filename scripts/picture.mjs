/** Takes the README's picture: the first screen of a demo's report, as a browser shows it. */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from './browser.mjs';

const REPORT = 'reports/short-form.html';
const PICTURE = 'reports/picture.png';

const executablePath = findBrowser();
if (executablePath === null) throw new Error('No browser found: npm test says how to get one.');
const browser = await chromium.launch({ executablePath, args: BROWSER_FLAGS });
try {
  const page = await browser.newPage({ viewport: { width: 1120, height: 1000 }, colorScheme: 'light' });
  await page.goto(pathToFileURL(resolve(REPORT)).href);
  await page.screenshot({ path: PICTURE });
} finally {
  await browser.close();
}
console.log(`Wrote ${PICTURE}`);
