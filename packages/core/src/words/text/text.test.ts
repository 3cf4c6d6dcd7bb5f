import { describe, expect, it } from 'vitest';
import { fill, fillAll, listed } from './fill.js';
import { PAGE_COLUMNS, wrap } from './wrap.js';

describe('a sentence of the catalogue', () => {
  it('takes numbers in the unit their name says', () => {
    expect(
      fill('it fills {filledFraction} and reads {readingC}', {
        numbers: { filledFraction: 0.61, readingC: 143 },
      }),
    ).toBe('It fills 61 % and reads 143 °C (289 °F)');
    expect(fill('at {125C} or below', {}, { units: 'us' })).toBe('At 257 °F (125 °C) or below');
  });

  it('is left out when a number it needs is not known or is no number', () => {
    expect(fill('A pan {narrowerDiameterMm} wide.')).toBeUndefined();
    expect(
      fill('A pan {narrowerDiameterMm} wide.', { numbers: { narrowerDiameterMm: Number.NaN } }),
    ).toBeUndefined();
    expect(fillAll(['One.', 'Two {x}.', 'Three.'])).toBe('One. Three.');
  });

  it('falls back to what can be said', () => {
    expect(fill('Take {massG}. | Take some.')).toBe('Take some.');
    expect(fill('Take {massG}. | Take some.', { numbers: { massG: 40 } })).toBe('Take 40 g.');
  });

  it('speaks the words of the region', () => {
    expect(fill('{boiledSweets} and {glucoseSyrup}')).toBe('Boiled sweets and glucose syrup');
    expect(fill('{boiledSweets} and {glucoseSyrup}', {}, { region: 'us' })).toBe(
      'Hard candy and corn syrup',
    );
    expect(fill('{sweet}', {}, { units: 'us', region: 'world' })).toBe('Sweet');
  });
});

it('lists as a person does', () => {
  expect(listed(['a'])).toBe('a');
  expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
  expect(listed(['a', 'b'], 'or')).toBe('a or b');
});

describe('wrapping', () => {
  it('keeps to the page and hangs what follows', () => {
    const lines = wrap(`Watch       ${'the last degrees come fast '.repeat(8).trim()}`, 12);
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(PAGE_COLUMNS);
    for (const line of lines.slice(1)) expect(line).toMatch(/^ {12}\S/);
  });

  it('never parts a number from its unit, nor the thousands from the rest', () => {
    for (let lead = 50; lead < 80; lead += 1) {
      for (const line of wrap(`${'x'.repeat(lead)} weighs 1 172 g at 143 °C`, 2)) {
        expect(line).not.toMatch(/\d$(?<!172 g|143)|^ *(172|g|°C)/);
        expect(line).not.toMatch(/(^| )1$|1 172$|143$/);
      }
    }
  });

  it('leaves a table that fits as it is', () => {
    expect(wrap('  5.0 g  citric acid')).toEqual(['  5.0 g  citric acid']);
  });
});
