import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { dissolvingTemperature } from './dissolving-temperature.js';
import { solubility } from './solubility.js';
import { sucroseSolubility } from './sucrose-solubility.js';

describe('solubility', () => {
  it('draws a straight line between two rows', () => {
    expect(solubility('xylitol', 35)).toEqual({ massFraction: 0.715, warnings: [] });
    expect(solubility('isomalt', 20)).toEqual({ massFraction: 0.25, warnings: [] });
    expect(solubility('isomalt', 50)).toEqual({ massFraction: 0.45, warnings: [] });
  });

  it('takes sucrose from its own curve', () => {
    expect(solubility('sucrose', 20)).toMatchObject({
      massFraction: sucroseSolubility(20).sucroseMassFraction,
    });
  });

  it.each([
    ['isomalt', 51],
    ['isomalt', 19.9],
    ['sucrose', 101],
    ['sucrose', -14],
    ['maltose', 97],
  ] as const)('has nothing for %s at %f °C', (species, temperatureC) => {
    expect(solubility(species, temperatureC)).toEqual({ kind: 'none', reason: 'beyond-the-data' });
  });

  it.each(['glycerol', 'citric-acid', 'polydextrose'] as const)(
    'knows nothing of %s',
    (species) => {
      expect(solubility(species, 20)).toEqual({ kind: 'none', reason: 'no-data' });
      expect(dissolvingTemperature(species, { massFraction: 0.5 })).toEqual({
        kind: 'none',
        reason: 'no-data',
      });
    },
  );

  it('says which rows are from memory', () => {
    const recalled = solubility('glucose', 35);
    expect(recalled).toMatchObject({
      massFraction: 0.5825,
      warnings: [
        {
          code: 'shown-from-memory',
          parameter: 'solubleMassFraction',
          value: 0.5825,
          limits: [0.546, 0.619],
          subject: 'glucose',
        },
      ],
    });
    expect(solubility('lactose', 35)).toMatchObject({ warnings: [] });
  });

  it.each([-61, 201, Number.NaN])('refuses %f °C', (temperatureC) => {
    expect(() => solubility('xylitol', temperatureC)).toThrow(
      expect.objectContaining({ parameter: 'temperatureC', limits: [-60, 200] }),
    );
  });
});

describe('dissolvingTemperature', () => {
  it('is where the solution is saturated', () => {
    for (const [species, massFraction] of [
      ['sucrose', 0.75],
      ['lactose', 0.3],
      ['erythritol', 0.6],
    ] as const) {
      const found = dissolvingTemperature(species, { massFraction });
      if (isNone(found)) throw new Error(found.reason);
      expect(found.atOrBelow).toBe(false);
      expect(solubility(species, found.dissolvesAtC)).toMatchObject({
        massFraction: expect.closeTo(massFraction, 5),
      });
    }
  });

  it('says where the rows begin above it', () => {
    expect(dissolvingTemperature('sucrose', { massFraction: 0.5 })).toEqual({
      dissolvesAtC: -13,
      atOrBelow: true,
      warnings: [],
    });
    expect(dissolvingTemperature('lactose', { massFraction: 0.1 })).toEqual({
      dissolvesAtC: 0,
      atOrBelow: true,
      warnings: [],
    });
  });

  it('has no answer for isomalt, with two rows', () => {
    expect(dissolvingTemperature('isomalt', { massFraction: 0.3 })).toEqual({
      kind: 'none',
      reason: 'too-few-points',
    });
  });

  it.each(['sucrose', 'maltose'] as const)('has no answer for nearly dry %s', (species) => {
    expect(dissolvingTemperature(species, { massFraction: 0.9 })).toEqual({
      kind: 'none',
      reason: 'beyond-the-data',
    });
  });

  it.each([-0.1, 70])('refuses a share of %f', (massFraction) => {
    expect(() => dissolvingTemperature('sucrose', { massFraction })).toThrow(
      expect.objectContaining({ parameter: 'massFraction', limits: [0, 1] }),
    );
  });
});
