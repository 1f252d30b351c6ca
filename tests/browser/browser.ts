import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium } from 'playwright-core';

const PLACES = [
  process.env.CHROMIUM ?? '',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** A browser that stays off the network. CHROMIUM names one that is not where they usually are. */
export const launch = (): Promise<Browser> => {
  const executablePath = PLACES.find((place) => place !== '' && existsSync(place));
  if (!executablePath)
    throw new Error('No Chromium here. Install it, or name it: CHROMIUM=/path/to/chromium');
  return chromium.launch({
    executablePath,
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
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
