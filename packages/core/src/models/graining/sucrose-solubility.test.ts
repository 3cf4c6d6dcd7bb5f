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
});
