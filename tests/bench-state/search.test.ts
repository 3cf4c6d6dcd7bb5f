import { describe, expect, it } from 'vitest';
import { INGREDIENT_IDS } from 'vitrose';
import { ingredientName, shopName } from 'vitrose/words';
import { isStarchSyrup, newLine, usualWhen } from '../../site/src/bench/state/new-line.js';
import { searchIngredients } from '../../site/src/bench/state/search.js';
import { SHOP_NAMES_TO_SEARCH } from '../../site/src/words/bench-later.js';

const world = { region: 'world' } as const;
const us = { region: 'us' } as const;

describe('the search for ingredients', () => {
  it('finds every ingredient by its name in both regions', () => {
    for (const region of [world, us]) {
      for (const id of INGREDIENT_IDS) {
        const found = searchIngredients(ingredientName(id, region), region);
        expect(found.some(({ candidates }) => candidates.includes(id))).toBe(true);
      }
    }
  });

  it('knows the word of the other region', () => {
    expect(searchIngredients('corn syrup', world)[0]?.candidates).toContain('glucose-syrup');
    expect(searchIngredients('glucose syr', us).flatMap(({ candidates }) => candidates)).toContain(
      'glucose-syrup',
    );
  });

  it('puts the plain thing first', () => {
    expect(searchIngredients('sugar', world)[0]?.label).toBe('sugar');
    expect(searchIngredients('cit', world)[0]?.label).toBe('citric acid');
    expect(searchIngredients('wat', world)[0]?.label).toBe('water');
  });

  it('lists everything where nothing is typed, and nothing where nothing fits', () => {
    expect(searchIngredients('', world)).toHaveLength(INGREDIENT_IDS.length);
    expect(searchIngredients('gravel', world)).toEqual([]);
    expect(searchIngredients('__proto__', world)).toEqual([]);
  });

  it('never offers one label twice', () => {
    for (const typed of ['s', 'su', 'gl', 'dext', 'iso', 'oil', 'a']) {
      const labels = searchIngredients(typed, world).map(({ label }) => label);
      expect(new Set(labels).size).toBe(labels.length);
    }
  });

  it('asks the one question of a shop name', () => {
    const [powder] = searchIngredients('glucose powder', world).filter(
      ({ label }) => label === 'glucose powder',
    );
    expect(powder?.question).toBe('Does the label say glucose syrup, or dextrose?');
    expect(powder?.candidates).toEqual(['dried-glucose-syrup', 'dextrose-monohydrate']);
  });

  it.each(SHOP_NAMES_TO_SEARCH)('the library knows what %s means', (name) => {
    expect(shopName(name)).toBeDefined();
  });
});

describe('a new line', () => {
  it('goes in when it usually does', () => {
    expect(usualWhen('sucrose')).toBe('start');
    expect(usualWhen('citric-acid')).toBe('off-heat');
    expect(usualWhen('flavour-oil')).toBe('off-heat');
    expect(usualWhen('cream-of-tartar')).toBe('first-boil');
  });

  it('of corn syrup carries what its packet usually says', () => {
    const [found] = searchIngredients('light corn syrup', us);
    if (found === undefined) throw new Error('not found');
    expect(newLine(found, 'glucose-syrup', { kind: 'mass', massG: 100 })).toEqual({
      ingredient: 'glucose-syrup',
      dextroseEquivalent: 42,
      drySolidsMassFraction: 0.78,
      massG: 100,
    });
  });

  it('asks for a DE of starch syrups only', () => {
    expect(isStarchSyrup('glucose-syrup')).toBe(true);
    expect(isStarchSyrup('sucrose')).toBe(false);
    expect(isStarchSyrup('toString')).toBe(false);
  });
});
