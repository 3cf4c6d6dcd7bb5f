/// <reference lib="dom" />
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  type Bench,
  batchText,
  fill,
  focused,
  fragmentOf,
  openBench,
  printedPages,
  stop,
} from './bench-page.js';
import {
  axeSource,
  closeSite,
  describeInBrowser,
  openContext,
  openSite,
  type Site,
} from './harness.js';
import { lookOver } from './look-over.js';

let axe: string;
let site: Site;

/** The panels wake up as they come near. */
async function near(page: Page): Promise<void> {
  await page.locator('section.clock').scrollIntoViewIfNeeded();
  await page.waitForFunction(() => document.querySelector('.panels > section') !== null);
}

async function close({ errors, strangers, close: shut }: Bench): Promise<void> {
  expect([...errors, ...strangers]).toEqual([]);
  await shut();
}

describeInBrowser('what the answer rests on', () => {
  beforeAll(async () => {
    site = await openSite();
    axe = await axeSource();
  });
  afterAll(() => closeSite(site));

  it('shows the clock, the windows, keeping, acid, label and jar of the worked example', async () => {
    const bench = await openBench(site);
    await near(bench.page);
    for (const id of ['clock', 'windows', 'keeping', 'acid', 'beside', 'label', 'jar']) {
      expect(await bench.page.locator(`section.${id}`).count(), id).toBe(1);
    }
    expect(await bench.page.locator('section.clock').textContent()).toMatch(/\d+ min/);
    expect(await bench.page.locator('section.keeping').textContent()).toMatch(/Graining/);
    await close(bench);
  });

  it('lays acid at the first boil beside, changes nothing, and takes it with one press', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await near(page);
    const before = await stop(page);
    await page.locator('#f-acid-time-first-boil').check();
    const hard = page.locator('.compared tr', { hasText: 'Stays hard' });
    const [here = 0, there = 0] = (await hard.locator('td').allTextContents()).map((text) =>
      Number(/\d+/.exec(text)?.[0]),
    );
    expect(there).toBeLessThan(here - 10);
    expect(await stop(page)).toBe(before);
    // What differs has a mark to see and a word to hear; what does not, has neither.
    expect(await hard.locator('svg.mark').isVisible()).toBe(true);
    expect(await hard.textContent()).toContain('(differs)');
    expect(await page.locator('.compared tr:not(.differs) svg.mark').count()).toBe(0);
    // The switch goes back as it came, and the list with it.
    await page.locator('#f-acid-time-off-heat').check();
    await expect.poll(() => page.locator('.compared').count()).toBe(0);
    expect(await page.locator('#f-beside').inputValue()).toBe('');
    await page.locator('#f-beside').selectOption('acid-first');
    expect(await page.locator('#f-acid-time-first-boil').isChecked()).toBe(true);
    await page.locator('#take-beside').click();
    // The hand stays where it was, and what stood there before is beside.
    expect(await focused(page)).toBe('f-beside');
    await expect.poll(() => page.locator('#f-beside').inputValue()).toBe('before');
    await expect
      .poll(() => page.locator('#answer-watch').textContent())
      .toMatch(/Acid in the boil/);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => page.locator('#answer-watch').textContent()).not.toMatch(/Acid in/);
    await close(bench);
  });

  it('shows what it costs to do without xylitol, and does it', async () => {
    const bench = await openBench(site, {}, fragmentOf(batchText('isomalt-with-xylitol')));
    const { page } = bench;
    await near(page);
    // The button stands with the caution.
    await page.locator('.top-cautions #without-xylitol').click();
    await expect.poll(() => page.locator('.compared tbody tr').count()).toBeGreaterThan(5);
    expect(await focused(page)).toBe('f-beside');
    await expect.poll(() => page.locator('.compared').isVisible()).toBe(true);
    expect(await page.locator('#jar-label').textContent()).toMatch(/can kill a dog/);
    await page.locator('#take-beside').click();
    await expect.poll(() => page.locator('#jar-label').textContent()).not.toMatch(/dog/);
    await expect.poll(() => page.locator('#without-xylitol').count()).toBe(0);
    expect(await page.locator('.top-cautions').textContent()).not.toMatch(/dog/);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => page.locator('#jar-label').textContent()).toMatch(/can kill a dog/);
    expect(await page.locator('#without-xylitol').count()).toBe(1);
    await close(bench);
  });

  it('prints a label by the rules of either place', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await near(page);
    expect(await page.locator('.food-label').textContent()).not.toMatch(/added sugars/i);
    await page.locator('#f-label-rules-us').check();
    await expect.poll(() => page.locator('.food-label').textContent()).toMatch(/added sugars/i);
    expect(await page.locator('.food-label').textContent()).not.toMatch(/kJ/);
    expect(await page.locator('section.label').textContent()).toMatch(/check with your authority/i);
    await close(bench);
  });

  it('prints the card on one page, and the jar label alone when that is asked for', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await near(page);
    expect(await printedPages(page)).toEqual([1, 1]);
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.locator('#print-jar').click();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('#jar-label').isVisible()).toBe(true);
    expect(await page.locator('.card').isVisible()).toBe(false);
    expect(await page.locator('section.clock').isVisible()).toBe(false);
    expect(await page.locator('#print-jar').isVisible()).toBe(false);
    expect(await printedPages(page)).toEqual([1, 1]);
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.card').isVisible()).toBe(true);
    await close(bench);
  });

  it('takes hob, wrap, handling and water, and the plan follows', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await near(page);
    const minutes = async (): Promise<number> =>
      Number(
        /about (\d+) min/.exec((await page.locator('section.clock').textContent()) ?? '')?.[1],
      );
    const kettle = await minutes();
    await page.locator('#f-hob-kind').selectOption('induction');
    await fill(page, 'f-power', '2,5 kW');
    await expect.poll(minutes).toBeLessThan(kettle);
    await page.locator('.things details.more > summary').click();
    await page.locator('#f-wrap').selectOption('oriented-pp');
    await expect.poll(() => page.locator('section.keeping').textContent()).toMatch(/days/);
    await page.locator('#f-wrap').selectOption('none');
    await expect.poll(() => page.locator('#answer-watch').textContent()).toMatch(/sticky/i);
    await page.locator('#f-stirred').selectOption('yes');
    await fill(page, 'f-alkalinity', '4');
    await fill(page, 'f-power', '0');
    await expect
      .poll(() => page.locator('section.clock').textContent())
      .toMatch(/never gets there/);
    await close(bench);
  });

  it('swaps dried syrup for liquid with its water, and back with one undo', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    const before = await page.locator('#l2-amount').inputValue();
    await page.locator('#l2-swap').click();
    await expect.poll(() => page.locator('#l2-amount').inputValue()).not.toBe(before);
    expect(await page.locator('#l2-swap').textContent()).toMatch(/dried/);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => page.locator('#l2-amount').inputValue()).toBe(before);
    await close(bench);
  });

  it('draws its figures as wide as their place, with letters one can read', async () => {
    for (const width of [320, 768, 1_280]) {
      const bench = await openBench(site, { viewport: { width, height: 800 } });
      const { page } = bench;
      await near(page);
      const scales = await page.evaluate(() =>
        [...document.querySelectorAll<SVGSVGElement>('.panels svg.vf-drawing')].map(
          (drawing) => drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width,
        ),
      );
      expect(scales).toHaveLength(3);
      expect(Math.min(...scales)).toBeGreaterThan(0.85);
      await close(bench);
    }
  });

  it('shows another kitchen beside, only to see', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await near(page);
    await page.locator('#f-beside').selectOption('sea-level');
    await page.locator('.compared').waitFor();
    expect(await page.locator('.compared tr', { hasText: 'Stop at' }).textContent()).toMatch(/148/);
    expect(await page.locator('#take-beside').count()).toBe(0);
    await close(bench);
  });

  it('stands on the page with scripts off', async () => {
    const context = await openContext(site, { serviceWorkers: 'block', javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${site.address}bench/`);
    for (const id of ['clock', 'windows', 'keeping', 'acid', 'beside', 'label', 'jar']) {
      expect(await page.locator(`section.${id}`).isVisible(), id).toBe(true);
    }
    expect(await page.locator('.food-label tbody tr').count()).toBeGreaterThan(4);
    await context.close();
  });

  it('tells what differs in forced colours too', async () => {
    const bench = await openBench(site, { forcedColors: 'active' });
    const { page } = bench;
    await near(page);
    await page.locator('#f-beside').selectOption('acid-first');
    const mark = page.locator('.compared svg.mark').first();
    await mark.waitFor();
    const [stroke, text] = await mark.evaluate((drawn) => [
      getComputedStyle(drawn).stroke,
      getComputedStyle(drawn.closest('td') ?? drawn).color,
    ]);
    expect(stroke).toBe(text);
    await close(bench);
  });

  it.each([
    [320, 'light'],
    [1_280, 'dark'],
  ] as const)('is clean and fits at %d px, %s', async (width, colorScheme) => {
    const bench = await openBench(
      site,
      { viewport: { width, height: 800 }, colorScheme },
      fragmentOf(batchText('isomalt-with-xylitol')),
    );
    const { page } = bench;
    await near(page);
    await page.locator('.things details.more > summary').click();
    await page.locator('#f-wrap').selectOption('waxed-paper');
    await page.locator('#f-beside').selectOption('without-xylitol');
    await page.locator('.compared').waitFor();
    expect(await lookOver(page, axe)).toEqual([]);
    await close(bench);
  });
});
