import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { alive, echo, expectStop, focused, openBench, stop } from './bench-page.js';
import { closeSite, describeInBrowser, openContext, openSite, type Site } from './harness.js';

let site: Site;

/** The bench as the server drew it, with its scripts on the way until they are let through. */
async function openAsleep(): Promise<{
  readonly page: Page;
  readonly wake: () => Promise<void>;
  readonly close: () => Promise<void>;
}> {
  const context = await openContext(site, { serviceWorkers: 'block' });
  const page = await context.newPage();
  let letThrough = (): void => undefined;
  const awake = new Promise<void>((done) => {
    letThrough = done;
  });
  await page.route(/\/assets\/Bench\.[^/]*\.js$/, async (route) => {
    await awake;
    await route.continue();
  });
  await page.goto(`${site.address}bench/`, { waitUntil: 'commit' });
  await page.locator('#bench-region').waitFor();
  const wake = async (): Promise<void> => {
    expect(await page.locator('.bench').getAttribute('data-alive')).toBe('false');
    letThrough();
    await alive(page);
  };
  return { page, wake, close: () => context.close() };
}

describeInBrowser('the bench while it comes alive', () => {
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => closeSite(site));

  it('keeps what was typed, chosen and opened before, and the place of the hand', async () => {
    const { page, wake, close } = await openAsleep();
    await page.locator('#target-moisture').check();
    await page.locator('#l4-when').selectOption('start');
    await page.locator('#l1-amount').fill('½ lb');
    await page.locator('#answer-keeps > summary').click();
    await page.locator('#f-boiling').fill('95,8');
    await page.locator('#f-boiling').press('ArrowLeft');
    await wake();
    expect(await page.locator('#f-moisture').isVisible()).toBe(true);
    expect(await page.locator('#target-moisture').isChecked()).toBe(true);
    expect(await page.locator('#l4-when').inputValue()).toBe('start');
    expect(await page.locator('#l1-amount').inputValue()).toBe('½ lb');
    await expect.poll(() => echo(page, 'l1-amount')).toContain('= 227 g');
    expect(await page.locator('#f-boiling').inputValue()).toBe('95,8');
    expect(await echo(page, 'f-boiling')).toBe('95.8 °C · 204.4 °F');
    expect(await focused(page)).toBe('f-boiling');
    // The next letter goes where the last one left off.
    await page.keyboard.press('Backspace');
    expect(await page.locator('#f-boiling').inputValue()).toBe('958');
    await page.locator('#open-keeps-glass').waitFor();
    await close();
  });

  it('plans with what was typed before', async () => {
    const { page, wake, close } = await openAsleep();
    await page.locator('#f-printed').fill('150');
    expect(await stop(page)).toBe('143');
    await wake();
    await expectStop(page, '145');
    // It was a change like any other.
    await page.keyboard.press('Control+Z');
    await expectStop(page, '143');
    expect(await page.locator('#f-printed').inputValue()).toBe('148');
    await close();
  });

  it('plans nothing and draws nothing again until something is changed', async () => {
    const { page, close } = await openBench(site);
    const { plans, draws } = await page
      .locator('.bench')
      .evaluate(({ dataset }) => ({ plans: dataset.plans, draws: Number(dataset.draws) }));
    expect(plans).toBe('0');
    // The first, that every part is alive, and that the rest has come.
    expect(draws).toBe(3);
    expect(await page.locator('astro-slot .steps').count()).toBe(1);
    await close();
  });
});
