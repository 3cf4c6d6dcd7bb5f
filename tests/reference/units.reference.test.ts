import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import * as vitrose from 'vitrose';

/** Ten digits: both sides hold the defined factor, so all that may differ is the last bits. */
const RELATIVE = 1e-10;

const mathjs = (value: number, from: string, to: string) => unit(value, from).toNumber(to);

/** Millimetres of mercury by their definition: mercury at 0 °C under standard gravity. */
const ofMercury = (height: string) =>
  unit('13595.1 kg/m^3').multiply(unit('9.80665 m/s^2')).multiply(unit(height)).toNumber('Pa');

/** A sixteenth of a US gallon, which is 231 cubic inches. */
const cupMl = mathjs(231, 'in^3', 'ml') / 16;

/** There, back, and what one of the kitchen's units is by the other implementation. */
const PAIRS = {
  foot: [vitrose.metresFromFeet, vitrose.feetFromMetres, mathjs(1, 'ft', 'm')],
  ounce: [vitrose.gFromOz, vitrose.ozFromG, mathjs(1, 'oz', 'g')],
  pound: [vitrose.gFromLb, vitrose.lbFromG, mathjs(1, 'lb', 'g')],
  hectopascal: [vitrose.paFromHpa, vitrose.hpaFromPa, mathjs(1, 'hPa', 'Pa')],
  'millimetre of mercury': [vitrose.paFromMmHg, vitrose.mmHgFromPa, ofMercury('1 mm')],
  'inch of mercury': [vitrose.paFromInHg, vitrose.inHgFromPa, ofMercury('1 inch')],
  cup: [vitrose.mlFromUsCup, vitrose.usCupsFromMl, cupMl],
  // In mathjs a tablespoon is 15 ml and a teaspoon 5: metric spoons. The US ones divide the cup.
  'US tablespoon': [vitrose.mlFromUsTablespoon, vitrose.usTablespoonsFromMl, cupMl / 16],
  'US teaspoon': [vitrose.mlFromUsTeaspoon, vitrose.usTeaspoonsFromMl, cupMl / 48],
  'fluid ounce': [vitrose.mlFromUsFluidOunce, vitrose.usFluidOuncesFromMl, mathjs(1, 'floz', 'ml')],
  'fluid dram': [
    vitrose.mlFromUsFluidDram,
    vitrose.usFluidDramsFromMl,
    mathjs(1, 'fluiddram', 'ml'),
  ],
} as const;

describe('a second implementation of units', () => {
  it.each(Object.entries(PAIRS))('knows the %s as we do, there and back', (_name, pair) => {
    const [there, back, one] = pair;
    for (const count of [0.25, 1, 12, 29.921_26, 1_013.25]) {
      expect(Math.abs(there(count) / (count * one) - 1)).toBeLessThan(RELATIVE);
      expect(Math.abs(back(count * one) / count - 1)).toBeLessThan(RELATIVE);
    }
  });

  it('divides the cup as we do', () => {
    expect(mathjs(1, 'cup', 'ml')).toBeCloseTo(cupMl, 9);
    expect(vitrose.mlFromUsCup(1)).toBeCloseTo(mathjs(8, 'floz', 'ml'), 9);
  });

  it.each([-40, 32, 212, 238, 300])('reads %i °F as we do', (fahrenheit) => {
    const celsius = mathjs(fahrenheit, 'degF', 'degC');
    expect(vitrose.celsiusFromFahrenheit(fahrenheit)).toBeCloseTo(celsius, 10);
    expect(vitrose.fahrenheitFromCelsius(celsius)).toBeCloseTo(fahrenheit, 10);
    expect(vitrose.kelvinFromCelsius(celsius)).toBeCloseTo(mathjs(fahrenheit, 'degF', 'K'), 10);
    expect(vitrose.celsiusFromKelvin(mathjs(fahrenheit, 'degF', 'K'))).toBeCloseTo(celsius, 10);
  });

  it.each([1, -9, 20])('adds no 32 to a difference of %i °F', (differenceF) => {
    const kelvin = mathjs(32 + differenceF, 'degF', 'K') - mathjs(32, 'degF', 'K');
    expect(vitrose.kelvinDifferenceFromFahrenheit(differenceF)).toBeCloseTo(kelvin, 10);
    expect(vitrose.fahrenheitDifferenceFromKelvin(kelvin)).toBeCloseTo(differenceF, 10);
  });

  it('has the same air at the sea', () => {
    expect(vitrose.SEA_LEVEL_PRESSURE_PA).toBe(mathjs(1, 'atm', 'Pa'));
    // 14.696 psi, as pressure cookers print it.
    expect(mathjs(vitrose.SEA_LEVEL_PRESSURE_PA, 'Pa', 'psi')).toBeCloseTo(14.696, 3);
  });

  it('has a coarser millimetre of mercury, so ours is checked by its definition', () => {
    expect(mathjs(760, 'mmHg', 'Pa')).toBeCloseTo(101_324.72, 2);
    expect(vitrose.paFromMmHg(760)).toBeCloseTo(101_325.014, 2);
  });
});
