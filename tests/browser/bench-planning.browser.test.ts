import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { echo, expectStop, fill, focused, openBench } from './bench-page.js';
import { closeSite, describeInBrowser, openSite, type Site } from './harness.js';

let site: Site;

/** Chooses by typing the name, and adds a line. */
async function addByKeyboard(page: Page, name: string, amount: string): Promise<void> {
  expect(await focused(page)).toBe('new-ingredient');
  await page.keyboard.type(name);
  await page.locator('#new-ingredient-list [role=option]').first().waitFor();
  await page.keyboard.press('Enter');
  expect(await focused(page)).toBe('new-amount');
  await page.keyboard.type(amount);
  await page.keyboard.press('Enter');
}

/** Tab until a field is reached; a keyboard has no other way. */
async function tabTo(page: Page, id: string, most = 90): Promise<void> {
  for (let presses = 0; presses < most; presses += 1) {
    if ((await focused(page)) === id) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to #${id}.`);
}

describeInBrowser('planning on the bench', () => {
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => closeSite(site));

  it('plans the lemon drops from an empty table by keyboard alone', async () => {
    const { page, errors, close } = await openBench(site);
    await tabTo(page, 'batch-name');
    await page.getByRole('button', { name: 'Clear table' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.line:not(.new)').count()).toBe(0);
    await page.getByText('Add sugar, a syrup or a sugar alcohol.').waitFor();
    await addByKeyboard(page, 'sugar', '232');
    await addByKeyboard(page, 'dried glu', '155 g');
    await addByKeyboard(page, 'water', '116');
    await addByKeyboard(page, 'citric', '5');
    expect(await page.locator('#l4-when').inputValue()).toBe('off-heat');
    await tabTo(page, 'target-stage');
    await page.keyboard.press('ArrowRight');
    await tabTo(page, 'f-printed');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('148');
    await expectStop(page, '148');
    await tabTo(page, 'f-boiling');
    await page.keyboard.type('95,8');
    await expectStop(page, '143');
    await tabTo(page, 'f-altitude');
    await page.keyboard.type('1500');
    expect(await echo(page, 'f-altitude')).toBe('1500 m · 4921 ft');
    await expectStop(page, '143');
    await tabTo(page, 'f-count');
    await page.keyboard.type('60');
    await tabTo(page, 'f-cavity');
    await page.keyboard.type('4');
    await expect
      .poll(() => page.locator('#answer-makes summary').textContent())
      .toContain('66 pieces');
    // The focus is where the hand left it.
    expect(await focused(page)).toBe('f-cavity');
    expect(errors).toEqual([]);
    await close();
  });

  it('plans them by pointer alone', async () => {
    const { page, close } = await openBench(site);
    await page.getByRole('button', { name: 'Clear table' }).click();
    for (const [name, option, amount] of [
      ['sugar', 'sugar', '232'],
      ['dried', 'dried glucose syrup', '155'],
      ['water', 'water', '116'],
    ] as const) {
      await page.locator('#new-ingredient').click();
      await page.locator('#new-ingredient').fill(name);
      await page
        .locator('#new-ingredient-list')
        .getByRole('option', { name: option, exact: true })
        .click();
      await page.locator('#new-amount').fill(amount);
      await page.getByRole('button', { name: 'Add', exact: true }).click();
    }
    await page.getByLabel('a printed temperature').click();
    await fill(page, 'f-printed', '148');
    await fill(page, 'f-boiling', '95.8');
    await expectStop(page, '143');
    await close();
  });

  it('takes a remedy, says so, and undo takes it back', async () => {
    const { page, close } = await openBench(site);
    await page.getByRole('button', { name: /^Take a pan/ }).click();
    await expect.poll(() => page.locator('#f-diameter').inputValue()).toBe('11.7');
    await expect.poll(() => page.locator('#live').textContent()).toContain('Undo takes it back');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('#f-diameter').inputValue()).toBe('16');
    await close();
  });

  it('shows the difference for four seconds and says the new stop', async () => {
    const { page, close } = await openBench(site);
    await fill(page, 'f-printed', '146');
    await expect.poll(() => page.locator('.difference').textContent()).toBe('−2');
    await expect
      .poll(() => page.locator('#live').textContent())
      .toMatch(/^Stop at 141 °C, between/);
    await expect.poll(() => page.locator('.difference').textContent(), { timeout: 6_000 }).toBe('');
    await close();
  });

  it('opens a number to its band, equation, grade and source', async () => {
    const { page, strangers, close } = await openBench(site);
    await page.locator('#answer-keeps > summary').click();
    await page.locator('#open-keeps-glass > summary').click();
    const opened = page.locator('#open-keeps-glass');
    await opened.locator('.sources li').first().waitFor();
    const text = await opened.textContent();
    expect(text).toContain('Nine times in ten between');
    expect(text).toContain('Tg,dry');
    expect(text).toContain('from memory');
    expect(text).toContain('Roos');
    expect(strangers).toEqual([]);
    await close();
  });

  it('speaks °F, ounces and corn syrup', async () => {
    const { page, close } = await openBench(site);
    await page.getByLabel('°F, ounces').check();
    await page.getByLabel('Hard candy', { exact: true }).check();
    await expectStop(page, '289');
    expect(await page.locator('#l2-ingredient').inputValue()).toBe('corn syrup solids');
    expect(await page.locator('#l1-amount').inputValue()).toBe('8.18');
    expect(await page.locator('#l1-unit').inputValue()).toBe('oz');
    await fill(page, 'f-printed', '300');
    await expectStop(page, '291');
    // The choice at the foot of every page is the same choice.
    await page.locator('region-choice select').selectOption('world');
    await expect
      .poll(() => page.locator('#l2-ingredient').inputValue())
      .toBe('dried glucose syrup');
    await expectStop(page, '144');
    await close();
  });

  it('goes by per cent at a fixed total', async () => {
    const { page, close } = await openBench(site);
    await page.getByLabel('Per cent of dry solids').check();
    await expect.poll(() => page.locator('#l1-unit').inputValue()).toBe('%');
    await fill(page, 'l1-amount', '50');
    await expect.poll(() => page.locator('#l2-amount').inputValue()).toBe('50');
    await page.getByLabel('By weight or measure').check();
    await expect.poll(() => page.locator('#l1-unit').inputValue()).toBe('g');
    await close();
  });

  it('shows the batch and six lines as code', async () => {
    const { page, close } = await openBench(site);
    await page.locator('.code > summary').click();
    await expect
      .poll(() => page.locator('#code-batch').textContent())
      .toContain('"vitrose.batch/1"');
    const program = (await page.locator('#code-program').textContent()) ?? '';
    expect(program.split('\n')).toHaveLength(6);
    await close();
  });
});
