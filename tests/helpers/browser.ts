/** A browser for the tests that need one: Debian's Chromium, or what a build machine brings. On a build machine it must be there; elsewhere its tests are skipped and say so. */
import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];
const found = places.find((place) => place !== undefined && existsSync(place));

/** Whether the tests of a browser are run. */
export const browserIsThere = found !== undefined || process.env.CI !== undefined;
if (!browserIsThere)
  console.info(
    'No Chromium was found: tests that need a browser are skipped. Install one, or say where it is: CHROMIUM=/path',
  );

/** Starts it; the caller closes it. */
export function launch(): Promise<Browser> {
  if (found === undefined) throw new Error('No Chromium: apt-get install -y chromium, or CHROMIUM=/path/to/it');
  return chromium.launch({ executablePath: found, args: ['--no-sandbox'] });
}
