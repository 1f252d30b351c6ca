import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The names a Chromium-like browser goes by on a search path. */
const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'msedge'];

/** Where they stand on systems that keep programs off the search path. */
const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

/**
 * The path of a browser on this machine: STILLWORTH_BROWSER if set, else the first that is found; null for none.
 * @returns {string | null}
 */
export const findBrowser = () => {
  const told = process.env.STILLWORTH_BROWSER;
  if (told) return existsSync(told) ? told : null;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = folders.flatMap((folder) =>
    NAMES.flatMap((name) => [join(folder, name), join(folder, `${name}.exe`)]),
  );
  return [...onPath, ...PLACES].find((path) => existsSync(path)) ?? null;
};

/** What keeps a headless browser off the network and fit to run as root in a container. */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--host-resolver-rules=MAP * ~NOTFOUND',
];
