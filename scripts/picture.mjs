/** Takes the README's picture: a demo's report as a browser shows it, from its top to the end of its first figure. */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from './browser.mjs';

const REPORT = 'reports/wagon-weekend.html';
const PICTURE = 'reports/picture.png';

const executablePath = findBrowser();
if (executablePath === null) throw new Error('No browser found: npm test says how to get one.');
const browser = await chromium.launch({ executablePath, args: BROWSER_FLAGS });
try {
  const page = await browser.newPage({ viewport: { width: 1060, height: 800 }, colorScheme: 'light' });
  await page.goto(pathToFileURL(resolve(REPORT)).href);
  const { y = 0, height = 0 } = (await page.locator('figure').first().boundingBox()) ?? {};
  const clip = { x: 0, y: 0, width: 1060, height: Math.round(y + height) + 32 };
  await page.screenshot({ path: PICTURE, clip, fullPage: true });
} finally {
  await browser.close();
}
console.log(`Wrote ${PICTURE}`);
