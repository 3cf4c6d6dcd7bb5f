import { describe, expect, it } from 'vitest';
import {
  formatFraction,
  formatLength,
  formatMass,
  formatMoisture,
  formatPressure,
  formatVolume,
} from './amounts.js';
import { formatByKey } from './by-key.js';
import { countInWords, formatNumber, roundTo } from './number.js';
import { formatDifference, formatTemperature } from './temperature.js';

describe('temperatures', () => {
  it('stand in both units, the reader’s own first', () => {
    expect(formatTemperature(143.1)).toBe('143 °C · 289 °F');
    expect(formatTemperature(143.1, { units: 'us' })).toBe('290 °F · 143 °C');
    expect(formatTemperature(95.83, { decimals: 1 })).toBe('95.8 °C · 204.4 °F');
  });

  it('agree with themselves: the second is the first as shown, in the other unit', () => {
    for (let tenths = 900; tenths < 1800; tenths += 1) {
      const shown = /^(\d+) °C · (\d+) °F$/.exec(formatTemperature(tenths / 10));
      expect(Number(shown?.[2])).toBe(Math.round(Number(shown?.[1]) * 1.8 + 32));
    }
  });

  it('never have 32 added to a difference', () => {
    expect(formatDifference(5)).toBe('5 °C');
    expect(formatDifference(5, { units: 'us' })).toBe('9 °F');
    expect(formatDifference(-2.6)).toBe('−2.6 °C');
  });
});

it('shows how fast it climbs in the degrees of the reader, a minute at a time', () => {
  expect(formatByKey('rateKPerMin', 14.7, {})).toBe('15 °C a minute');
  expect(formatByKey('rateKPerMin', 14.7, { units: 'us' })).toBe('26 °F a minute');
  expect(formatByKey('rateKPerMin', 1.25, {})).toBe('1.3 °C a minute');
  expect(formatByKey('rateKPerMin', 2.5, { locale: 'de' })).toBe('2,5 °C a minute');
  // A minute alone is not a rate, and a rate is not a temperature.
  expect(formatByKey('atMin', 14.7, {})).toBe('15 minutes');
  expect(formatByKey('lagK', 14.7, {})).toBe('15 °C');
});

it('shows the film of a wrap as an area', () => {
  expect(formatByKey('areaCm2', 29.6, {})).toBe('30 cm²');
});

describe('masses', () => {
  it('are whole from ten grams on and have tenths below', () => {
    expect(formatMass(1172.3)).toBe('1 172 g');
    expect(formatMass(10.4)).toBe('10 g');
    expect(formatMass(9.96)).toBe('10 g');
    expect(formatMass(5)).toBe('5.0 g');
  });

  it('are never nought for a pinch', () => {
    expect(formatMass(0.042)).toBe('0.04 g');
  });

  it('have ounces beside them for a reader who thinks in them, where ounces can say it', () => {
    expect(formatMass(232, { units: 'us' })).toBe('232 g (8.2 oz)');
    expect(formatMass(1172.3, { units: 'us' })).toBe('1 172 g (2 lb 9.4 oz)');
    expect(formatMass(453.5, { units: 'us' })).toBe('454 g (1 lb 0 oz)');
    expect(formatMass(5, { units: 'us' })).toBe('5.0 g');
  });
});

describe('water left', () => {
  it('is never finer than a tenth of a per cent', () => {
    for (let fraction = 0; fraction < 0.1; fraction += 0.000_37) {
      expect(formatMoisture(fraction)).toMatch(/^(under )?\d+(\.\d)? %$/);
    }
  });

  it('is under half a per cent when it is under half a per cent', () => {
    expect(formatMoisture(0.0049)).toBe('under 0.5 %');
    expect(formatMoisture(0.0052)).toBe('0.5 %');
    expect(formatMoisture(0.03)).toBe('3 %');
    expect(formatByKey('moistureMassFraction', 0.0042, {})).toBe('under 0.5 %');
  });
});

it('shows fractions as per cent, whole from ten on, and never a trace as nothing', () => {
  expect(formatFraction(0.333)).toBe('33 %');
  expect(formatFraction(0.0127)).toBe('1.3 %');
  expect(formatFraction(0.000_02)).toBe('under 0.1 %');
  expect(formatFraction(0)).toBe('0 %');
  expect(formatByKey('drySolidsMassFraction', 0.9958, {})).toBe('99.6 %');
});

it('shows pressure, volume and length as kitchens read them', () => {
  expect(formatPressure(84_556)).toBe('846 hPa');
  expect(formatPressure(84_556, { units: 'us' })).toBe('24.97 inHg');
  expect(formatVolume(1500, { units: 'us' })).toBe('1 500 ml (1.6 qt)');
  expect(formatLength(117)).toBe('11.7 cm');
  expect(formatLength(13.4)).toBe('13 mm');
});

it('follows the customs of a locale where one is given', () => {
  expect(formatNumber(1234.5, 1)).toBe('1 234.5');
  expect(formatNumber(1234.5, 1, { locale: 'de' })).toBe('1.234,5');
  expect(formatTemperature(95.83, { decimals: 1, locale: 'fr' })).toBe('95,8 °C · 204,4 °F');
});

it('rounds halves away from zero and keeps no minus at nought', () => {
  expect(roundTo(1.005, 2)).toBe(1.01);
  expect(roundTo(-2.5, 0)).toBe(-3);
  expect(formatNumber(-0.04, 1)).toBe('0');
});

it('counts in words up to twelve', () => {
  expect([0, 1, 12, 13].map((count) => countInWords(count))).toEqual(['no', 'one', 'twelve', '13']);
});
