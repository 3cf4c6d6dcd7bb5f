import { afterAll, beforeAll, expect, it } from 'vitest';
import { builtPages } from './built-pages.js';
import {
  axeSource,
  closeSite,
  describeInBrowser,
  openContext,
  openSite,
  type Site,
} from './harness.js';
import { lookOver } from './look-over.js';
import { watchPage } from './watch-page.js';

/** Each page at both widths, in both schemes. */
const LOOKS = [
  { width: 1_280, height: 800, colorScheme: 'light' },
  { width: 1_280, height: 800, colorScheme: 'dark' },
  { width: 320, height: 640, colorScheme: 'dark' },
  { width: 320, height: 640, colorScheme: 'light' },
] as const;

/** So many that a run stays short, so few that two cores keep up. */
const AT_ONCE = 3;

describeInBrowser('every built page', () => {
  let site: Site;
  let axe: string;
  beforeAll(async () => {
    [site, axe] = await Promise.all([openSite(), axeSource()]);
  });
  afterAll(() => closeSite(site));

  it('is there to be looked at', () => {
    expect(builtPages()).toEqual(expect.arrayContaining(['', '404.html', 'evidence/', 'bench/']));
  });

  it('asks nobody else, breaks no policy, is clean by axe, with ids once, labels once, and nothing sideways', async () => {
    const left = [...builtPages()];
    const wrong: string[] = [];
    const look = async (): Promise<void> => {
      const context = await openContext(site, { serviceWorkers: 'block', reducedMotion: 'reduce' });
      const page = await context.newPage();
      const watched = watchPage(page, new URL(site.address).origin);
      for (let path = left.pop(); path !== undefined; path = left.pop()) {
        const { width, height, colorScheme } = LOOKS[0];
        await page.setViewportSize({ width, height });
        await page.emulateMedia({ colorScheme });
        await page.goto(site.address + path, { waitUntil: 'load' });
        for (const view of LOOKS) {
          await page.setViewportSize({ width: view.width, height: view.height });
          await page.emulateMedia({ colorScheme: view.colorScheme });
          const found = await lookOver(page, axe);
          wrong.push(...found.map((line) => `/${path} ${view.width} ${view.colorScheme}: ${line}`));
        }
      }
      wrong.push(...watched.errors, ...watched.strangers.map((url) => `asked for ${url}`));
      await context.close();
    };
    await Promise.all(Array.from({ length: AT_ONCE }, look));
    expect(wrong).toEqual([]);
  }, 900_000);

  it('links only to pages that are there', async () => {
    const pages = new Set(builtPages());
    expect(pages.size).toBeGreaterThan(100);
    const base = new URL(site.address).pathname;
    const context = await openContext(site, { serviceWorkers: 'block', javaScriptEnabled: false });
    const page = await context.newPage();
    const dead: string[] = [];
    for (const path of pages) {
      await page.goto(site.address + path, { waitUntil: 'domcontentloaded' });
      const targets = await page
        .locator('a[href]')
        .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href));
      for (const target of new Set(targets)) {
        const { origin, pathname } = new URL(target);
        if (origin !== new URL(site.address).origin) continue;
        const inside = decodeURIComponent(pathname.slice(base.length));
        const known = pages.has(inside) || pages.has(`${inside}/`);
        if (!pathname.startsWith(base) || !known) dead.push(`/${path} → ${pathname}`);
      }
    }
    await context.close();
    expect(dead).toEqual([]);
  }, 300_000);
});
