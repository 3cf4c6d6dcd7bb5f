import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
} from 'playwright-core';
import { describe } from 'vitest';
import { serveSite } from '../../site/scripts/serve.mjs';

/** The built site, served, and a browser to look at it with. */
export type Site = {
  /** With the base path and a slash at its end. */
  readonly address: string;
  readonly browser: Browser;
  readonly stop: () => Promise<void>;
};

/** Where Chromium and Chrome are found on Linux, macOS and Windows. */
const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The browser to use: the one that is named, or the first that is there. */
export function findChromium(): string | undefined {
  return process.env.CHROMIUM_PATH ?? USUAL_PLACES.find((place) => existsSync(place));
}

/**
 * A block of tests that need a browser. Without one they are skipped, with a line that says how to
 * get it; where `CI` is set they fail instead, so that nothing passes unseen.
 */
export function describeInBrowser(title: string, tests: () => void): void {
  const found = findChromium();
  if (found === undefined && process.env.CI !== undefined) {
    throw new Error(
      'CI is set and no Chromium was found. Install it, or name it in CHROMIUM_PATH.',
    );
  }
  if (found === undefined) {
    console.log(`Skipped: ${title}. Install Chromium or Chrome, or name one in CHROMIUM_PATH.`);
  }
  describe.skipIf(found === undefined)(title, tests);
}

/** Serves the built site on a free port and starts the browser. */
export async function openSite(): Promise<Site> {
  const { address, stop } = await serveSite();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: FLAGS,
    ...(executablePath === undefined ? {} : { executablePath }),
  });
  return { address, browser, stop };
}

/** Closes both. */
export async function closeSite(site: Site | undefined): Promise<void> {
  await site?.browser.close();
  await site?.stop();
}

/** A fresh reader: nothing kept, nothing visited. */
export async function openContext(
  { browser }: Site,
  options: BrowserContextOptions = {},
): Promise<BrowserContext> {
  return browser.newContext(options);
}

/** The source of axe, to be evaluated: the site's own policy blocks a script from elsewhere. */
export async function axeSource(): Promise<string> {
  return readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
}
