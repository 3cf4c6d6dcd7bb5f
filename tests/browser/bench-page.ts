/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openContext, type Site } from './harness.js';
import { type Watched, watchPage } from './watch-page.js';

/** A page of the bench that has come alive, and what it did that it should not have done. */
export type Bench = Watched & {
  readonly page: Page;
  readonly close: () => Promise<void>;
};

/** The text of an example batch. */
export function batchText(name: string): string {
  return readFileSync(new URL(`../../examples/batches/${name}.json`, import.meta.url), 'utf8');
}

/** How a batch travels in an address. */
export function fragmentOf(text: string, version = 1): string {
  return `#b${version}.${deflateRawSync(Buffer.from(text)).toString('base64url')}`;
}

/** Opens the bench as a fresh reader. */
export async function openBench(
  site: Site,
  options: BrowserContextOptions = {},
  hash = '',
): Promise<Bench> {
  const context = await openContext(site, { serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  const watched = watchPage(page, new URL(site.address).origin);
  await page.goto(`${site.address}bench/${hash}`);
  await alive(page);
  return { ...watched, page, close: () => context.close() };
}

/** The parts of the page come alive one after another. */
export async function alive(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('.bench[data-alive=true]') !== null);
}

/** Types a text into a field in place of what was there. */
export async function fill(page: Page, id: string, text: string): Promise<void> {
  await page.locator(`#${id}`).fill(text);
}

/** What stands under a field. */
export async function echo(page: Page, id: string): Promise<string> {
  return (await page.locator(`#${id}-echo`).textContent()) ?? '';
}

/** The large number. */
export async function stop(page: Page): Promise<string> {
  return (await page.locator('#stop-reading').textContent()) ?? '';
}

/** Waits for the large number to be this. */
export async function expectStop(page: Page, reading: string): Promise<void> {
  await expect.poll(() => stop(page)).toBe(reading);
}

/** The id of what has the focus. */
export async function focused(page: Page): Promise<string | undefined> {
  return page.evaluate(() => document.activeElement?.id);
}

/** Pages of a printed sheet, for each kind of paper. */
export async function printedPages(page: Page): Promise<readonly number[]> {
  const counts: number[] = [];
  for (const format of ['A4', 'Letter'] as const) {
    const pdf = await page.pdf({ format });
    counts.push(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0);
  }
  return counts;
}
