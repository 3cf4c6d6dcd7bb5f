import { describe, expect, it } from 'vitest';
import { type AmountPlace, readAmount } from '../../site/src/bench/state/read/amount.js';

const sugar: AmountPlace = {
  units: 'metric',
  region: 'world',
  ingredient: 'sucrose',
  unit: 'g',
  shareOf: 'of the dry solids',
  weighThis: false,
};

function massOf(text: string, place: Partial<AmountPlace> = {}): number | undefined {
  const reading = readAmount(text, { ...sugar, ...place });
  return reading.kind === 'read' && reading.value.kind === 'mass' ? reading.value.massG : undefined;
}

describe('a weight', () => {
  it.each([
    ['232', 232],
    ['232 g', 232],
    ['232,5 grams', 232.5],
    ['½', 0.5],
    ['1,500', 1500],
    ['1 lb 4 oz', 566.99],
    ['1 pound 4 ounces', 566.99],
    ['2 avoirdupois drams', 3.5437],
  ])('%s', (text, massG) => {
    expect(massOf(text)).toBeCloseTo(massG, 2);
  });

  it('is never nought, below nought or a lorry load', () => {
    for (const text of ['0', '-3', '200 000 000', '1e9']) expect(massOf(text)).toBeUndefined();
  });

  it('takes the unit beside the field where none is typed', () => {
    const ounces = readAmount('12', { ...sugar, unit: 'oz' });
    expect(ounces).toMatchObject({ value: { kind: 'measure', quantity: 12, unit: 'oz' } });
    expect(massOf('12 g', { unit: 'oz' })).toBe(12);
  });
});

describe('a measure', () => {
  it('keeps the cook’s own words', () => {
    expect(readAmount('½ cup sugar', sugar)).toMatchObject({
      value: { kind: 'measure', quantity: 0.5, unit: 'metric-cup', written: '½ cup sugar' },
    });
  });

  it('goes by the region and offers the other cup', () => {
    expect(readAmount('2 cups', { ...sugar, region: 'us' })).toEqual({
      kind: 'read',
      value: { kind: 'measure', quantity: 2, unit: 'us-cup', written: '2 cups' },
      echo: '2 US cups = 400 g, between 380 g and 440 g.',
      offers: [{ label: 'Use cup 250', text: '2 cup 250' }],
    });
  });

  it.each([
    ['12 oz', 'oz'],
    ['6 fl. oz.', 'us-fluid-ounce'],
    ['1 tbsp', 'metric-tablespoon'],
    ['1 US tbsp', 'us-tablespoon'],
    ['2 tsp.', 'metric-teaspoon'],
    ['½ fluid dram', 'us-fluid-dram'],
    ['10 drops', 'drop'],
    ['250 ml', 'ml'],
    ['2 lbs', 'lb'],
  ])('%s', (text, unit) => {
    expect(readAmount(text, { ...sugar, ingredient: 'water' })).toMatchObject({
      kind: 'read',
      value: { unit },
    });
  });

  it('reads every offer it makes, and gets that unit', () => {
    for (const region of ['world', 'us'] as const) {
      for (const word of ['cup', 'tbsp', 'tsp']) {
        const first = readAmount(`2 ${word}`, { ...sugar, region });
        const offers = first.kind === 'read' ? first.offers : [];
        expect(offers.length).toBeGreaterThan(0);
        for (const { text } of offers) {
          const second = readAmount(text, { ...sugar, region });
          expect(second).toMatchObject({ kind: 'read', offers: [] });
        }
      }
    }
  });

  it('of what nobody has weighed asks for grams', () => {
    expect(readAmount('1 tsp', { ...sugar, ingredient: 'sucralose' })).toMatchObject({
      kind: 'unread',
      reason: 'Nobody has weighed this by the spoon or cup. Give grams.',
    });
  });

  it('of an acid is a poor one, and is said to be', () => {
    const acid = readAmount('1 tsp', { ...sugar, ingredient: 'citric-acid', weighThis: true });
    expect(acid).toMatchObject({ kind: 'read', echo: expect.stringContaining('weigh this one') });
  });
});

describe('a bare dram', () => {
  it.each(['1 dram', '½ drams', '2 dr', '1 Dram of cinnamon oil'])('is never taken: %s', (text) => {
    const reading = readAmount(text, { ...sugar, ingredient: 'flavour-oil' });
    expect(reading).toMatchObject({
      kind: 'unread',
      offers: [{ label: 'fluid dram (3.70 ml)' }, { label: 'dram of weight (1.77 g)' }],
    });
    const offers = reading.kind === 'unread' ? reading.offers : [];
    const kinds = offers.map(({ text: offered }) =>
      readAmount(offered, { ...sugar, ingredient: 'flavour-oil' }),
    );
    expect(kinds).toMatchObject([
      { kind: 'read', value: { kind: 'measure', unit: 'us-fluid-dram' } },
      { kind: 'read', value: { kind: 'mass' } },
    ]);
  });
});

describe('a share', () => {
  it('is in per cent', () => {
    expect(readAmount('55 %', sugar)).toMatchObject({
      value: { kind: 'share', share: 0.55 },
      echo: '55 % of the dry solids.',
    });
    expect(readAmount('55', { ...sugar, unit: '%' })).toMatchObject({ value: { share: 0.55 } });
    expect(readAmount('120 %', sugar)).toMatchObject({ kind: 'unread' });
  });
});

it('says what it does not know, shortly', () => {
  const reading = readAmount(`3 ${'x'.repeat(500)}`, sugar);
  expect(reading.kind === 'unread' && reading.reason.length).toBeLessThan(120);
  expect(readAmount('some', sugar)).toMatchObject({ kind: 'unread' });
  expect(readAmount('', sugar)).toEqual({ kind: 'empty' });
});
