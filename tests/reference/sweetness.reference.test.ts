import {
  sweetnessFactsheet2008Table as factSheet,
  sweetnessFructoseTemperatureTable as fructoseTable,
  sweetnessReview2014Table as review,
  sweetnessGlucoseSyrupDeTable as syrupTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { type IngredientId, mixture, relativeSweetness } from 'vitrose';

/** Printed names that are not those of an ingredient. */
const renamed: Readonly<Record<string, IngredientId>> = {
  hfcs: 'high-fructose-syrup',
  hsh: 'hydrogenated-starch-hydrolysate',
};
const unknown = ['lactulose', 'leucrose', 'maltulose', 'trehalulose'];

function bandOf(species: string): readonly [number, number] {
  const ingredient = renamed[species] ?? (species as IngredientId);
  return relativeSweetness(mixture([{ ingredient, massG: 100 }])).band;
}

const syrup = (dextroseEquivalent: number) =>
  relativeSweetness(mixture([{ ingredient: 'glucose-syrup', massG: 100, dextroseEquivalent }]));

describe(`relativeSweetness against ${review.id}: ${review.source.title}`, () => {
  const rows = review.rows.filter((row) => !unknown.includes(row.species));

  it('has a value for 17 of the 21 printed sweeteners', () => {
    expect(review.rows).toHaveLength(21);
    expect(rows).toHaveLength(17);
  });

  it.each(rows)('meets $species, $sweetnessLow to $sweetnessHigh', (row) => {
    const [low, high] = bandOf(row.species);
    expect(low).toBeLessThanOrEqual(row.sweetnessHigh);
    expect(high).toBeGreaterThanOrEqual(row.sweetnessLow);
  });
});

describe(`relativeSweetness against ${factSheet.id}: ${factSheet.source.title}`, () => {
  it('has a value for all eight', () => {
    expect(factSheet.rows).toHaveLength(8);
  });

  it.each(factSheet.rows)('meets $species, $sweetnessLow to $sweetnessHigh', (row) => {
    const [low, high] = bandOf(row.species);
    expect(low).toBeLessThanOrEqual(row.sweetnessHigh);
    expect(high).toBeGreaterThanOrEqual(row.sweetnessLow);
  });
});

describe(`relativeSweetness against ${syrupTable.id}: ${syrupTable.source.title}`, () => {
  it.each(syrupTable.rows)('meets DE $dextroseEquivalent, $low to $high', (row) => {
    const { band } = syrup(row.dextroseEquivalent);
    expect(band[0]).toBeLessThanOrEqual(row.high);
    expect(band[1]).toBeGreaterThanOrEqual(row.low);
  });

  it('lies within 0.029 of the middles of the bands in the mean', () => {
    const squares = syrupTable.rows.map(
      (row) => (syrup(row.dextroseEquivalent).relativeSweetness - (row.low + row.high) / 2) ** 2,
    );
    const mean = squares.reduce((sum, square) => sum + square, 0) / squares.length;
    expect(Math.sqrt(mean)).toBeLessThanOrEqual(0.029);
  });
});

describe(`relativeSweetness against ${fructoseTable.id}: ${fructoseTable.source.title}`, () => {
  it.each(fructoseTable.rows)('gives fructose $relativeSweetness at $temperatureC °C', (row) => {
    const fructose = mixture([{ ingredient: 'fructose', massG: 100 }]);
    const { relativeSweetness: value } = relativeSweetness(fructose, {
      tastingTemperatureC: row.temperatureC,
    });
    expect(Math.abs(value - row.relativeSweetness)).toBeLessThanOrEqual(0.01);
  });
});
