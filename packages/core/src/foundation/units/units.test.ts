import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../validity/model-range-error.js';
import * as everyConversion from './index.js';

// A plain object: a namespace looked into by name would hide from the bundler what is used.
const units = { ...everyConversion };

const PAIRS = [
  ['fahrenheitFromCelsius', 'celsiusFromFahrenheit', 150, 302],
  ['fahrenheitFromCelsius', 'celsiusFromFahrenheit', -40, -40],
  ['kelvinFromCelsius', 'celsiusFromKelvin', 25, 298.15],
  ['fahrenheitDifferenceFromKelvin', 'kelvinDifferenceFromFahrenheit', -5, -9],
  ['hpaFromPa', 'paFromHpa', 101_325, 1_013.25],
  ['mmHgFromPa', 'paFromMmHg', 133.322387415, 1],
  ['inHgFromPa', 'paFromInHg', 3_386.388640341, 1],
  ['ozFromG', 'gFromOz', 28.349523125, 1],
  ['lbFromG', 'gFromLb', 453.59237, 1],
  ['feetFromMetres', 'metresFromFeet', 1_609.344, 5_280],
  ['usFluidOuncesFromMl', 'mlFromUsFluidOunce', 29.5735295625, 1],
  ['usFluidDramsFromMl', 'mlFromUsFluidDram', 29.5735295625, 8],
  ['usTeaspoonsFromMl', 'mlFromUsTeaspoon', 29.5735295625, 6],
  ['usTablespoonsFromMl', 'mlFromUsTablespoon', 29.5735295625, 2],
  ['usCupsFromMl', 'mlFromUsCup', 236.5882365, 1],
] as const;

describe('conversions', () => {
  it.each(PAIRS)('%s and %s are each other backwards', (there, back, from, to) => {
    expect(units[there](from)).toBeCloseTo(to, 9);
    expect(units[back](to)).toBeCloseTo(from, 9);
  });

  it.each(Object.entries(units))('%s refuses what is no number', (_, convert) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(() => convert(value)).toThrow(ModelRangeError);
    }
  });

  it('knows nothing colder than absolute zero', () => {
    expect(units.celsiusFromKelvin(0)).toBe(-273.15);
    expect(units.celsiusFromFahrenheit(-459.67)).toBeCloseTo(-273.15, 9);
    expect(() => units.celsiusFromKelvin(-1)).toThrow(ModelRangeError);
    expect(() => units.fahrenheitFromCelsius(-274)).toThrow(ModelRangeError);
  });

  it('knows no negative pressure, though a difference may be negative', () => {
    expect(() => units.paFromMmHg(-1)).toThrow(ModelRangeError);
    expect(units.gFromOz(-1)).toBeCloseTo(-28.349523125, 9);
  });
});
