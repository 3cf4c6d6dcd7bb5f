import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { closeSite, describeInBrowser, openContext, openSite, type Site } from './harness.js';
import { watchPage } from './watch-page.js';

const SCRIPT_BUDGET_BYTES = 30_000;

const answer = async (page: Page): Promise<string> =>
  (await page.locator('.front-answer').textContent()) ?? '';

/** The island has come alive: its markup is no longer waiting for a script. */
async function alive(page: Page): Promise<void> {
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null);
}

describeInBrowser('the front page', () => {
  let site: Site;
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => closeSite(site));

  async function open(options = {}): Promise<{ page: Page; close: () => Promise<void> }> {
    const context = await openContext(site, { serviceWorkers: 'block', ...options });
    const page = await context.newPage();
    await page.goto(site.address, { waitUntil: 'load' });
    return { page, close: () => context.close() };
  }

  it('shows its worked example with scripts off', async () => {
    const { page, close } = await open({ javaScriptEnabled: false });
    expect(await answer(page)).toMatch(/Stop at\s+143/);
    expect(await page.locator('.front-no-scripts').isVisible()).toBe(true);
    expect(await page.locator('.front-rule svg').isVisible()).toBe(true);
    await close();
  });

  it('works out another kitchen and another sweet', async () => {
    const { page, close } = await open();
    await alive(page);
    await page.getByLabel('My boiling water reads').fill('99,5');
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+147/);
    await page.getByLabel('and I’m making').selectOption('fondant');
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+11\d/);
    await close();
  });

  it('reads °F where only °F can be meant, and says what it understood', async () => {
    const { page, close } = await open();
    await alive(page);
    await page.getByLabel('My boiling water reads').fill('204.4 F');
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+143/);
    expect(await page.locator('#front-problem').textContent()).toContain('95.8 °C');
    await close();
  });

  it('keeps the last good answer, greyed, while an entry cannot be read', async () => {
    const { page, close } = await open();
    await alive(page);
    await page.getByLabel('My boiling water reads').fill('hot');
    await expect.poll(() => page.locator('#front-problem').textContent()).not.toBe('');
    expect(await answer(page)).toMatch(/Stop at\s+143/);
    expect(await page.locator('.front-answer').getAttribute('data-stale')).toBe('true');
    await close();
  });

  it('keeps the region on the device and speaks °F in it', async () => {
    const { page, close } = await open();
    await alive(page);
    await page.getByLabel('Words and units').selectOption('us');
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+289/);
    await page.reload({ waitUntil: 'load' });
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+289/);
    await close();
  });

  it('moves nothing while it loads', async () => {
    for (const width of [320, 1_280]) {
      const context = await openContext(site, {
        serviceWorkers: 'block',
        viewport: { width, height: 800 },
      });
      const page = await context.newPage();
      await page.addInitScript(() => {
        const shifts: number[] = [];
        Object.assign(window, { shifts });
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) {
            shifts.push((entry as PerformanceEntry & { readonly value: number }).value);
          }
        }).observe({ type: 'layout-shift', buffered: true });
      });
      await page.goto(site.address, { waitUntil: 'networkidle' });
      await alive(page);
      await page.waitForTimeout(300);
      const shifts = await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts);
      expect(shifts.reduce((sum, shift) => sum + shift, 0)).toBe(0);
      await context.close();
    }
  });

  it(`sends less than ${SCRIPT_BUDGET_BYTES / 1_000} kB of script`, async () => {
    const { page, close } = await open();
    await page.waitForLoadState('networkidle');
    const scripts = await page.evaluate(() =>
      (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
        .filter(({ name }) => new URL(name).pathname.endsWith('.js'))
        .map(({ name, encodedBodySize }) => ({ name, bytes: encodedBodySize })),
    );
    const bytes = scripts.reduce((sum, script) => sum + script.bytes, 0);
    console.log(
      `front page: ${(bytes / 1_000).toFixed(1)} kB of script in ${scripts.length} files`,
    );
    expect(scripts.length).toBeGreaterThan(0);
    expect(bytes).toBeLessThanOrEqual(SCRIPT_BUDGET_BYTES);
    await close();
  });

  it('works with the network off after one visit', async () => {
    const context = await openContext(site);
    const page = await context.newPage();
    const watched = watchPage(page, new URL(site.address).origin);
    await page.goto(site.address, { waitUntil: 'networkidle' });
    await page.evaluate(() => navigator.serviceWorker.ready);
    await context.setOffline(true);
    await page.goto(site.address, { waitUntil: 'load' });
    await alive(page);
    await page.getByLabel('My boiling water reads').fill('100');
    await expect.poll(() => answer(page)).toMatch(/Stop at\s+148/);
    expect(watched.errors).toEqual([]);
    await context.close();
  });

  it('offers no newer version on a first visit', async () => {
    const context = await openContext(site);
    const page = await context.newPage();
    await page.goto(site.address, { waitUntil: 'networkidle' });
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.goto(`${site.address}404.html`, { waitUntil: 'networkidle' });
    expect(await page.locator('new-version').isVisible()).toBe(false);
    await context.close();
  });

  it('answers an address that is not there with a page and a 404', async () => {
    const { page, close } = await open();
    const response = await page.goto(`${site.address}nowhere/at-all`);
    expect(response?.status()).toBe(404);
    expect(await page.locator('h1').textContent()).toBe('There is no such page');
    await close();
  });
});
