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
import { CHROMIUM_FLAGS, findChromium, HOW_TO_GET_CHROMIUM } from '../tools/chromium.mjs';

/** The built site, served, and a browser to look at it with. */
export type Site = {
  /** With the base path and a slash at its end. */
  readonly address: string;
  readonly browser: Browser;
  readonly stop: () => Promise<void>;
};

/**
 * A block of tests that need a browser. Without one they are skipped, with a line that says how to
 * get it; where `CI` is set they fail instead, so that nothing passes unseen.
 */
export function describeInBrowser(title: string, tests: () => void): void {
  const found = findChromium();
  if (found === undefined && process.env.CI !== undefined) {
    throw new Error(`CI is set and no browser was found. ${HOW_TO_GET_CHROMIUM}`);
  }
  if (found === undefined) {
    console.log(`Skipped: ${title}. ${HOW_TO_GET_CHROMIUM}`);
  }
  describe.skipIf(found === undefined)(title, tests);
}

/** Serves the built site on a free port and starts the browser. */
export async function openSite(): Promise<Site> {
  const { address, stop } = await serveSite();
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_FLAGS,
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
