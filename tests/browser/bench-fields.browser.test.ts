/// <reference lib="dom" />
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  type Bench,
  echo,
  expectStop,
  fill,
  focused,
  fragmentOf,
  openBench,
  stop,
} from './bench-page.js';
import { axeSource, closeSite, describeInBrowser, openSite, type Site } from './harness.js';
import { lookOver } from './look-over.js';

let site: Site;
let axe: string;

/** Everything of these fields, as somebody says it and as the file holds it. */
const SAID = [
  ['f-readsIn', '40', '/thermometer/readsInS', 40],
  ['f-hob-kind', 'induction', '/hob/kind', 'induction'],
  ['f-power', '2,2 kW', '/hob/powerW', 2200],
  ['f-storeHumidity', '70', '/store/relativeHumidity', 0.7],
  ['f-wrap', 'metallised-pp-laminate', '/wrap/film', 'metallised-pp-laminate'],
  ['f-wrapArea', '48', '/wrap/areaCm2', 48],
  ['f-seal', '3', '/wrap/sealFactor', 3],
  ['f-stirred', 'yes', '/handling/stirredAfterBoil', true],
  ['f-vacuum', '200 mbar', '/cook/underVacuumPa', 20_000],
  ['l4-when', 'start', '/formula/3/when', 'start'],
  ['f-alkalinity', '4', '/water/alkalinityMmolPerL', 4],
] as const;

async function say(page: Page, id: string, value: string): Promise<void> {
  const box = page.locator(`#${id}`);
  const isList = await box.evaluate((one) => one instanceof HTMLSelectElement);
  await (isList ? box.selectOption(value) : box.fill(value));
}

/** What the plan says, once it has stopped changing. */
async function told(page: Page): Promise<string> {
  const texts = () => page.locator('.answer, .panels').allTextContents();
  let before = await texts();
  for (;;) {
    await page.waitForTimeout(400);
    const now = await texts();
    if (now.join() === before.join()) return now.join('\n');
    before = now;
  }
}

async function openAll(page: Page): Promise<void> {
  await page.locator('.things details.more > summary').click();
  await page.locator('section.clock').scrollIntoViewIfNeeded();
  await page.waitForFunction(() => document.querySelector('.panels > section') !== null);
}

function at(document: unknown, path: string): unknown {
  return path
    .split('/')
    .slice(1)
    .reduce<unknown>((held, key) => (held as Record<string, unknown> | undefined)?.[key], document);
}

async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ]);
  return readFileSync(await download.path(), 'utf8');
}

async function close({ errors, strangers, close: shut }: Bench): Promise<void> {
  expect([...errors, ...strangers]).toEqual([]);
  await shut();
}

describeInBrowser('hob, thermometer, store, wrap, handling, water and vacuum', () => {
  beforeAll(async () => {
    site = await openSite();
    axe = await axeSource();
  });
  afterAll(() => closeSite(site));

  it('each change what the plan says, are saved and opened, and the recipe leaves the kitchen', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await openAll(page);
    let before = await told(page);
    for (const [id, value] of SAID) {
      await say(page, id, value);
      const after = await told(page);
      expect(after, id).not.toBe(before);
      expect(await page.locator('.answer.old').count(), id).toBe(0);
      before = after;
    }

    const text = await saved(page);
    for (const [, , path, value] of SAID) expect(at(JSON.parse(text), path), path).toBe(value);
    const other = await openBench(site, {}, fragmentOf(text));
    await other.page.locator('.arrival').waitFor();
    for (const [id, value] of SAID) {
      const meant = { 'f-power': '2200', 'f-vacuum': '200' }[id as string] ?? value;
      expect(await other.page.locator(`#${id}`).inputValue(), id).toBe(meant);
    }
    await close(other);

    await page.getByRole('button', { name: 'Copy a link to the recipe' }).click();
    await expect.poll(() => page.locator('#share-link').inputValue()).toContain('#b1.');
    const { hash } = new URL(await page.locator('#share-link').inputValue());
    const reader = await openBench(site, {}, hash);
    await reader.page.locator('.arrival').waitFor();
    const recipe = JSON.parse(await saved(reader.page));
    for (const part of ['kitchen', 'thermometer', 'hob', 'pan', 'room', 'water', 'mould']) {
      expect(part in recipe, part).toBe(false);
    }
    for (const [, , path, value] of SAID.filter(([, , path]) =>
      /store|wrap|handling|cook/.test(path),
    )) {
      expect(at(recipe, path), path).toBe(value);
    }
    await close(reader);
    await close(bench);
  });

  it('keep the kitchen on the device and not with the recipe', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await openAll(page);
    await page.getByRole('button', { name: 'Clear table' }).click();
    for (const [id, value] of SAID.filter(([id]) => id !== 'l4-when')) await say(page, id, value);
    await page.waitForFunction(
      () => localStorage.getItem('vitrose.kitchen')?.includes('alkalinity') === true,
    );
    const kept = JSON.parse(
      (await page.evaluate(() => localStorage.getItem('vitrose.kitchen'))) ?? '',
    );
    expect(kept).toMatchObject({
      hob: { kind: 'induction', powerW: 2200 },
      thermometer: { readsInS: 40 },
      water: { alkalinityMmolPerL: 4 },
    });
    for (const part of ['wrap', 'handling', 'store']) expect(part in kept, part).toBe(false);
    await close(bench);
  });

  describe('what cannot be', () => {
    it.each([
      ['f-readsIn', '0', /0 s is out of reach/],
      ['f-power', 'full', /does not begin with a number/],
      ['f-power', '', /needs a number/],
      ['f-storeHumidity', '140', /out of reach/],
      ['f-wrapArea', '60 m', /‘m’ is no unit for this. Known: cm², in²/],
      ['f-seal', '0.5', /0.5 is out of reach: from 1 to 10/],
      ['f-alkalinity', '120', /120 mmol\/L\? Probably 120 mg\/L CaCO₃/],
      ['f-vacuum', '-200', /−200|-200/],
    ] as const)(
      '%s: ‘%s’ keeps the last good plan in grey, with the reason',
      async (id, text, reason) => {
        const bench = await openBench(site);
        const { page } = bench;
        await openAll(page);
        await say(page, 'f-hob-kind', 'gas');
        await say(page, 'f-wrap', 'pet');
        const good = await page.locator(`#${id}`).inputValue();
        await fill(page, id, text);
        await page.locator('.answer.old .trouble', { hasText: reason }).waitFor();
        expect(await echo(page, id)).toMatch(reason);
        expect(await page.locator(`#${id}`).getAttribute('aria-invalid')).toBe('true');
        expect(await stop(page)).toBe('143');
        await page.locator(`#${id}`).press('Control+Z');
        await expect.poll(() => page.locator(`#${id}`).inputValue()).toBe(good);
        await expect.poll(() => page.locator('.answer.old').count()).toBe(0);
        await close(bench);
      },
    );

    it('goes with its field', async () => {
      const bench = await openBench(site);
      const { page } = bench;
      await say(page, 'f-hob-kind', 'gas');
      await fill(page, 'f-power', 'full');
      await page.locator('.answer.old').waitFor();
      await say(page, 'f-hob-kind', 'timed');
      await page.locator('#f-kettle').waitFor();
      await expect.poll(() => page.locator('.answer.old').count()).toBe(0);
      await fill(page, 'f-printed', 'hot');
      await page.locator('.answer.old').waitFor();
      await page.locator('#target-stage').check();
      await expect.poll(() => page.locator('.answer.old').count()).toBe(0);
      await close(bench);
    });

    it('is asked about where another unit is likely', async () => {
      const bench = await openBench(site);
      const { page } = bench;
      await say(page, 'f-hob-kind', 'gas');
      await fill(page, 'f-power', '2.2');
      await page.getByRole('button', { name: 'Use 2.2 kW' }).click();
      await expect.poll(() => echo(page, 'f-power')).toBe('2200 W');
      expect(await focused(page)).toBe('f-power');
      await fill(page, 'f-power', '');
      await page.locator('.answer.old').waitFor();
      await close(bench);
    });
  });

  it('say what the kettle test comes to', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await say(page, 'f-hob-kind', 'timed');
    await fill(page, 'f-kettle', '2');
    await page.getByText(/About 1[34]\d0 W into the water/).waitFor();
    await fill(page, 'f-kettle', '8');
    await page.getByText(/About 3\d0 W into the water/).waitFor();
    await close(bench);
  });

  it('are all said by the keyboard', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    const keys = async (...all: readonly string[]): Promise<void> => {
      for (const key of all) await page.keyboard.press(key);
    };
    await page.locator('#f-scaleEnd').focus();
    await keys('Tab');
    expect(await focused(page)).toBe('f-readsIn');
    await keys('Control+A');
    await page.keyboard.type('2 min');
    await expect.poll(() => echo(page, 'f-readsIn')).toBe('120 s');
    await keys('Tab');
    expect(await focused(page)).toBe('f-hob-kind');
    await keys('End', 'Tab');
    await expect.poll(() => focused(page)).toBe('f-power');
    expect(await page.locator('#f-hob-kind').inputValue()).toBe('induction');
    await keys('ArrowUp');
    await expect.poll(() => page.locator('#f-power').inputValue()).toBe('1900');
    await page.locator('#f-days').focus();
    await keys('Tab', 'Enter', 'Tab');
    expect(await focused(page)).toBe('f-wrap');
    await keys('ArrowDown', 'ArrowDown', 'ArrowDown', 'Tab');
    expect(await page.locator('#f-wrap').inputValue()).toBe('oriented-pp');
    const passed: (string | undefined)[] = [];
    for (let at = 0; at < 5; at += 1) {
      passed.push(await focused(page));
      await keys('Tab');
    }
    expect(passed).toEqual(['f-wrapArea', 'f-seal', 'f-stirred', 'f-alkalinity', 'f-vacuum']);
    await close(bench);
  });

  it('show both ways out beside an altitude that differs from the reading', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    const advice = page.locator('.kitchen .advice');
    expect(await advice.count()).toBe(0);
    await fill(page, 'f-altitude', '300');
    await advice.getByText('Your reading and your altitude do not agree').waitFor();
    expect(await advice.getByRole('button').count()).toBe(2);
    await advice.getByRole('button').first().click();
    await expect.poll(() => page.locator('#f-altitude').inputValue()).toBe('');
    expect(await page.locator('#f-boiling').inputValue()).toBe('95.8');
    expect(await focused(page)).toBe('kitchen-told');
    await expect.poll(() => advice.count()).toBe(0);
    await page.keyboard.press('Control+Z');
    await expect.poll(() => page.locator('#f-altitude').inputValue()).toBe('300');
    await advice.getByRole('button').nth(1).click();
    await expect.poll(() => page.locator('#f-boiling').inputValue()).toBe('');
    await expectStop(page, '147');
    await expect.poll(() => advice.count()).toBe(0);
    // What the weather can do is no contradiction.
    await fill(page, 'f-altitude', '1500');
    await fill(page, 'f-boiling', '95.6');
    await expectStop(page, '143');
    expect(await advice.count()).toBe(0);
    await close(bench);
  });

  it('swap liquid for dried syrup, say so, and say why where it cannot be', async () => {
    const bench = await openBench(site);
    const { page } = bench;
    await page.locator('#l2-swap').click();
    await expect.poll(() => page.locator('#live').textContent()).toMatch(/Swapped for liquid/);
    await expect.poll(() => page.locator('#l2-swap').textContent()).toMatch(/dried/);
    await expectStop(page, '143');
    await page.locator('#l2-swap').press('Control+Z');
    await expect.poll(() => page.locator('#l2-amount').inputValue()).toBe('155');

    await fill(page, 'l3-amount', '5');
    await page.locator('#l2-swap').click();
    const reason = page.locator('.swap [role=alert]');
    await expect
      .poll(() => reason.textContent())
      .toBe('The recipe has less water than the syrup brings.');
    await fill(page, 'l3-amount', '116');
    await expect.poll(() => reason.count()).toBe(0);
    await page.locator('#l2-swap').click();
    await expect.poll(() => page.locator('#l2-swap').textContent()).toMatch(/dried/);
    await close(bench);
  });

  describe.each([320, 1280])('at %i px', (width) => {
    it.each(['light', 'dark'] as const)(
      'in %s are clean and fit, with everything said',
      async (colorScheme) => {
        const bench = await openBench(site, { viewport: { width, height: 800 }, colorScheme });
        const { page } = bench;
        await openAll(page);
        await fill(page, 'f-altitude', '300');
        for (const [id, value] of SAID) await say(page, id, value);
        await fill(page, 'f-alkalinity', '120');
        await page.locator('.kitchen .advice').waitFor();
        expect(await lookOver(page, axe)).toEqual([]);
        await close(bench);
      },
    );
  });
});
