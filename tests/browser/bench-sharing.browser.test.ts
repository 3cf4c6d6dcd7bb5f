import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { alive, batchText, expectStop, fill, fragmentOf, openBench } from './bench-page.js';
import { closeSite, describeInBrowser, openSite, type Site } from './harness.js';

let site: Site;

describeInBrowser('sharing from the bench', () => {
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => closeSite(site));

  describe('a link', () => {
    it('holds the recipe and not the kitchen', async () => {
      const { page, close } = await openBench(site);
      await page.getByRole('button', { name: 'Copy a link to the recipe' }).click();
      await expect.poll(() => page.locator('#share-link').inputValue()).toContain('#b1.');
      const link = await page.locator('#share-link').inputValue();
      const other = await openBench(site, {}, new URL(link).hash);
      await other.page.getByText('Opened: Harbour lemon drops.').waitFor();
      await expectStop(other.page, '148');
      expect(await other.page.locator('#f-altitude').inputValue()).toBe('');
      expect(await other.page.locator('#f-diameter').inputValue()).toBe('');
      await other.close();
      await close();
    });

    it('is computed in the kitchen of whoever opens it, and says so', async () => {
      const { page, close } = await openBench(site);
      await page.getByRole('button', { name: 'Clear table' }).click();
      await fill(page, 'f-altitude', '2400');
      await page.waitForFunction(() => localStorage.getItem('vitrose.kitchen') !== null);
      await page.goto('about:blank');
      await page.goto(`${site.address}bench/${fragmentOf(batchText('harbour-lemon-drops'))}`);
      await page.getByText('It is computed in your kitchen.').waitFor();
      expect(await page.locator('#f-altitude').inputValue()).toBe('2400');
      await expectStop(page, '138');
      await page.getByRole('button', { name: 'See it in the kitchen it came with' }).click();
      await expectStop(page, '143');
      // The kitchen on the device is still the reader's.
      await page.waitForTimeout(600);
      expect(await page.evaluate(() => localStorage.getItem('vitrose.kitchen'))).toContain('2400');
      await close();
    });

    it.each([
      ['a bomb', fragmentOf('0'.repeat(9_000_000)), /more than any recipe/],
      ['of a newer version', fragmentOf('{}', 2), /newer version/],
      ['cut on its way', fragmentOf(batchText('harbour-lemon-drops')).slice(0, 90), /damaged/],
      ['too long', `#b1.${'A'.repeat(20_000)}`, /longer than any recipe/],
      [
        'with keys of the machine',
        fragmentOf(
          '{"format":"vitrose.batch/1","__proto__":{"polluted":true},"formula":[],"cook":{"toSeaLevelC":148}}',
        ),
        /cannot be used/,
      ],
      ['that is no batch', fragmentOf('[1,2,3]'), /./],
    ])('%s is refused in words and leaves the table alone', async (_, hash, reason) => {
      const { page, errors, close } = await openBench(site, {}, hash);
      const note = page.locator('.arrival.bad');
      await note.waitFor();
      expect(await note.textContent()).toMatch(reason);
      await expectStop(page, '143');
      expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
      expect(errors).toEqual([]);
      await close();
    });

    it('with a script in its names shows the letters and runs nothing', async () => {
      const evil = '<img src=x onerror="window.hit=1"><script>window.hit=1</script>';
      const batch = { ...JSON.parse(batchText('harbour-lemon-drops')), name: evil, note: evil };
      const { page, errors, close } = await openBench(site, {}, fragmentOf(JSON.stringify(batch)));
      await page.locator('.arrival').waitFor();
      expect(await page.locator('#batch-name').inputValue()).toBe(evil);
      expect(await page.evaluate(() => 'hit' in window)).toBe(false);
      expect(await page.locator('.bench img').count()).toBe(0);
      expect(errors).toEqual([]);
      await close();
    });
  });

  it('saves a file that it opens again', async () => {
    const { page, close } = await openBench(site);
    await fill(page, 'f-printed', '150');
    await expectStop(page, '145');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save', exact: true }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('harbour-lemon-drops.json');
    const path = await download.path();
    await page.getByRole('button', { name: 'Clear table' }).click();
    await page.locator('#open-file').setInputFiles(path);
    await expect.poll(() => page.locator('.line:not(.new)').count()).toBe(4);
    await expectStop(page, '145');
    await close();
  });

  it('keeps the recipe and the kitchen over a reload', async () => {
    const { page, close } = await openBench(site);
    await fill(page, 'f-altitude', '300');
    await fill(page, 'f-boiling', '');
    await fill(page, 'l1-amount', '250');
    await page.waitForFunction(
      () => localStorage.getItem('vitrose.recipe')?.includes('250') === true,
    );
    await page.reload();
    await alive(page);
    await expect.poll(() => page.locator('#f-altitude').inputValue()).toBe('300');
    expect(await page.locator('#l1-amount').inputValue()).toBe('250');
    await close();
  });
});
