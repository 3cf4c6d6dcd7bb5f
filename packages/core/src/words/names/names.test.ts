import { describe, expect, it } from 'vitest';
import { SHOP_NAMES } from '../../job/batch/shop-names.js';
import { INGREDIENT_IDS } from '../../matter/ingredients/index.js';
import { ingredientName } from './ingredients.js';
import { notTheSameAs } from './not-the-same.js';
import { placeOf } from './places.js';
import { shopName } from './shop-names.js';
import { SHOP_NOTES } from './shop-notes.js';
import { speciesName } from './species.js';
import { unitName } from './units.js';

describe('ingredients', () => {
  it('are called as the region calls them', () => {
    expect(ingredientName('glucose-syrup')).toBe('glucose syrup');
    expect(ingredientName('glucose-syrup', { region: 'us' })).toBe('corn syrup');
    expect(ingredientName('sodium-bicarbonate', { units: 'us' })).toBe('baking soda');
  });

  it('of one’s own keep their name', () => {
    expect(ingredientName('my-grandmother-syrup')).toBe('my grandmother syrup');
    expect(ingredientName('constructor')).toBe('constructor');
  });

  it('have names of their own: no two share one', () => {
    for (const region of ['world', 'us'] as const) {
      const names = INGREDIENT_IDS.map((id) => ingredientName(id, { region }));
      expect(new Set(names).size).toBe(names.length);
    }
  });
});

describe('shop names', () => {
  it('ask the one question that decides', () => {
    expect(shopName(' Glucose Powder ')).toMatchObject({
      candidates: ['dried-glucose-syrup', 'dextrose-monohydrate'],
      question: 'Does the label say glucose syrup, or dextrose?',
    });
  });

  it('take light corn syrup as DE 42 at 78 % solids', () => {
    expect(shopName('light corn syrup')?.taken).toEqual({
      ingredient: 'glucose-syrup',
      dextroseEquivalent: 42,
      drySolidsMassFraction: 0.78,
    });
  });

  it('of both regions are known', () => {
    expect(shopName('bicarbonate of soda')?.candidates).toEqual(['sodium-bicarbonate']);
    expect(shopName('baking soda')?.candidates).toEqual(['sodium-bicarbonate']);
    expect(shopName("confectioners' sugar")?.note).toContain('starch');
    expect(shopName('granulated sugar')).toEqual({
      candidates: ['sucrose'],
      question: undefined,
      taken: undefined,
      note: undefined,
    });
    expect(shopName('gravel')).toBeUndefined();
    expect(shopName('constructor')).toBeUndefined();
  });

  it('lead to ingredients that exist, and a question has something to decide or to ask for', () => {
    const names = [...SHOP_NOTES.flatMap((note) => note.names), ...Object.keys(SHOP_NAMES)];
    for (const name of names) {
      const entry = shopName(name);
      expect(entry, name).toBeDefined();
      for (const id of entry?.candidates ?? []) expect(INGREDIENT_IDS).toContain(id);
      expect(
        (entry?.candidates.length ?? 0) > 1 && entry?.question === undefined,
        `${name} leaves a choice without a question`,
      ).toBe(false);
      if (entry?.taken !== undefined) expect(entry.candidates).toContain(entry.taken.ingredient);
    }
  });
});

it('tells apart what people take for one another', () => {
  expect(notTheSameAs('dextrose-monohydrate').join(' ')).toContain(
    'glucose syrup holds long chains',
  );
  expect(notTheSameAs('isomalt').join(' ')).toContain('isomaltulose');
  expect(notTheSameAs('cream-of-tartar').join(' ')).toContain('first boil');
  expect(notTheSameAs('sodium-bicarbonate').join(' ')).toContain('baking powder');
  expect(notTheSameAs('sucrose').join(' ')).toContain('starch');
  expect(notTheSameAs('salt')).toEqual([]);
});

it('names the fields of a wrap and of a powder', () => {
  expect(placeOf('/wrap/sealFactor').field).toBe('how well it is sealed');
  expect(placeOf('/wrap/areaCm2').field).toBe('the area of the film');
  expect(placeOf('/hob')).toEqual({ place: 'the hob', field: 'the hob', key: 'hob' });
  expect(placeOf('/formula/2/makeUpWaterFor').field).toBe('the water for a powder');
});

it('names species and measures', () => {
  expect(speciesName('syrup-solids')).toBe('starch syrup solids');
  expect(speciesName('sodium-chloride')).toBe('salt');
  expect(unitName('us-cup', 2)).toBe('US cups');
  expect(unitName('us-cup', 0.5)).toBe('US cup');
});
