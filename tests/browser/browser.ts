import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { BROWSER_FLAGS, findBrowser } from '../../scripts/browser.mjs';

/** A browser that stays off the network. */
export const launch = (): Promise<Browser> => {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('No browser found: npm test installs one, or says how.');
  return chromium.launch({ executablePath, args: BROWSER_FLAGS });
};

/** The page as a file of its own, as somebody would open it. */
export const saved = (page: string): string => {
  const file = join(mkdtempSync(join(tmpdir(), 'report-')), 'report.html');
  writeFileSync(file, page);
  return pathToFileURL(file).href;
};

/** axe-core's own source: run in the page, past the page's policy, as an extension would. */
export const axeSource = (): string =>
  readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
