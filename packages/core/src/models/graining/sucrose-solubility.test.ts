import { describe, expect, it } from 'vitest';
import { sucroseSolubility } from './sucrose-solubility.js';

describe('sucroseSolubility', () => {
  it('dissolves about two parts of sugar in one of water in a cold kitchen', () => {
    const { sucroseMassFraction, warnings } = sucroseSolubility(20);
    expect(sucroseMassFraction).toBeCloseTo(0.6672, 4);
    expect(warnings).toEqual([]);
  });

  it.each([-13, 100])('answers at its end of %i °C', (temperatureC) => {
    expect(sucroseSolubility(temperatureC).sucroseMassFraction).toBeGreaterThan(0.6);
  });

  it.each([-13.1, 100.1])('refuses %f °C', (temperatureC) => {
    expect(() => sucroseSolubility(temperatureC)).toThrow(
      expect.objectContaining({
        code: 'outside-range',
        parameter: 'temperatureC',
        received: temperatureC,
        limits: [-13, 100],
      }),
    );
  });

  it('refuses what is no number', () => {
    expect(() => sucroseSolubility(Number.NaN)).toThrow(
      expect.objectContaining({ code: 'not-a-number', parameter: 'temperatureC' }),
    );
  });

  it('knows the other polynomial, and that it is from memory', () => {
    const { sucroseMassFraction, warnings } = sucroseSolubility(100, { equation: 'charles' });
    expect(sucroseMassFraction).toBeCloseTo(0.8318, 4);
    expect(warnings).toMatchObject([{ code: 'shown-from-memory', subject: 'sucrose' }]);
    expect(() => sucroseSolubility(-1, { equation: 'charles' })).toThrow(
      expect.objectContaining({ code: 'outside-range', limits: [0, 100] }),
    );
  });

  it('refuses the name of no polynomial', () => {
    expect(() => sucroseSolubility(20, { equation: 'other' as 'charles' })).toThrow(
      expect.objectContaining({ code: 'unknown-name', parameter: 'equation', received: 'other' }),
    );
  });
});
