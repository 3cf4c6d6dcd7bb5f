import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { echo, expectStop, fill, focused, openBench, stop } from './bench-page.js';
import { closeSite, describeInBrowser, openSite, type Site } from './harness.js';

let site: Site;

describeInBrowser('what people type on the bench', () => {
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => closeSite(site));

  describe('reads what people type', () => {
    it.each([
      ['f-boiling', '95,8', '95.8 °C · 204.4 °F'],
      ['f-boiling', '95.8', '95.8 °C · 204.4 °F'],
      ['f-printed', '300 F', '148.9 °C · 300 °F'],
      ['f-altitude', '5000 ft', '1524 m · 5000 ft'],
      ['f-humidity', '55 %', '55 %'],
      ['f-humidity', '55', '55 %'],
    ])('%s: %s', async (id, typed, understood) => {
      const { page, close } = await openBench(site);
      await fill(page, id, typed);
      await expect.poll(() => echo(page, id)).toBe(understood);
      // Nothing is rewritten under the cursor, nor when it leaves.
      expect(await page.locator(`#${id}`).inputValue()).toBe(typed);
      await page.locator('#batch-name').focus();
      expect(await page.locator(`#${id}`).inputValue()).toBe(typed);
      await close();
    });

    it.each([
      ['½ cup', '½ cup', /0.5 metric cups? = 106 g, between/],
      ['1 1/2 cups', '1 1/2 cups', /1.5 metric cups = 317 g/],
      ['1½ lb', '1½ lb', /= 680 g/],
      ['12 oz', '12 oz', /= 340 g/],
      ['2 cups', '2 cups', /2 metric cups = 423 g/],
    ])('an amount: %s', async (typed, kept, understood) => {
      const { page, close } = await openBench(site);
      await fill(page, 'l1-amount', typed);
      await expect.poll(() => echo(page, 'l1-amount')).toMatch(understood);
      expect(await page.locator('#l1-amount').inputValue()).toBe(kept);
      await close();
    });

    it('offers the other unit where a number is impossible in this one', async () => {
      const { page, close } = await openBench(site);
      await fill(page, 'f-printed', '300');
      await expect.poll(() => echo(page, 'f-printed')).toBe('300 °C? Probably 300 °F (148.9 °C).');
      await page.locator('.answer.old').waitFor();
      expect(await stop(page)).toBe('143');
      await page.getByRole('button', { name: 'Use °F' }).click();
      await expectStop(page, '144');
      expect(await page.locator('.answer.old').count()).toBe(0);
      expect(await focused(page)).toBe('f-printed');
      await close();
    });

    it('never takes a bare dram', async () => {
      const { page, close } = await openBench(site);
      await fill(page, 'l4-amount', '1 dram');
      await page.getByText('A dram is one of two things. Which?').first().waitFor();
      expect(await page.locator('#l4-amount').getAttribute('aria-invalid')).toBe('true');
      await page.getByRole('button', { name: 'dram of weight (1.77 g)' }).click();
      await expect.poll(() => echo(page, 'l4-amount')).toContain('1.8 g');
      await close();
    });

    it('keeps the last good plan in grey, with the reason, and undo puts the number back', async () => {
      const { page, close } = await openBench(site);
      await fill(page, 'f-printed', 'rather hot');
      await page.locator('.answer.old').getByText('does not begin with a number').waitFor();
      expect(await stop(page)).toBe('143');
      await page.keyboard.press('Control+Z');
      await expect.poll(() => page.locator('#f-printed').inputValue()).toBe('148');
      expect(await page.locator('.answer.old').count()).toBe(0);
      await close();
    });

    it('asks the one question of a shop name', async () => {
      const { page, close } = await openBench(site);
      await page.locator('#l2-ingredient').fill('glucose powder');
      await page
        .locator('#l2-ingredient-list')
        .getByRole('option', { name: 'glucose powder', exact: true })
        .click();
      await page.getByText('Does the label say glucose syrup, or dextrose?').waitFor();
      await page.getByLabel('dextrose (glucose powder)').check();
      await expect
        .poll(() => page.locator('#l2-ingredient').inputValue())
        .toBe('dextrose (glucose powder)');
      await close();
    });
  });

  describe('knows a kitchen by its readings', () => {
    it.each([
      ['all of it the air', '95.8', '', '143'],
      ['1 500 m is true', '95.8', '1500', '143'],
      ['1 500 m alone', '', '1500', '142.1'],
      ['the sea', '', '0', '148'],
    ])('%s', async (_, reading, altitude, expected) => {
      const { page, close } = await openBench(site);
      await fill(page, 'f-boiling', reading);
      await fill(page, 'f-altitude', altitude);
      await expectStop(page, expected);
      await close();
    });

    it('by the weather app with the altitude, and by the barometer', async () => {
      const { page, close } = await openBench(site);
      await page.getByText('Weather app, barometer').click();
      await fill(page, 'f-boiling', '');
      await fill(page, 'f-weather', '29.92');
      await page.getByRole('button', { name: 'Use inHg' }).click();
      await expectStop(page, '142');
      await fill(page, 'f-barometer', '1013');
      await expectStop(page, '148');
      expect(await page.locator('#f-weather').inputValue()).toBe('');
      await close();
    });
  });
});
