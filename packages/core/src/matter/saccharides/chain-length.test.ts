import { describe, expect, it } from 'vitest';
import {
  degreeOfPolymerisationFromMolarMass,
  dextroseEquivalentFromMolarMass,
  dextroseEquivalentOfChain,
  meanDegreeOfPolymerisation,
  molarMassFromDegreeOfPolymerisation,
} from './chain-length.js';
import type { Conversion } from './types.js';

describe('a chain of glucose units', () => {
  it.each([
    [1, 180.156],
    [2, 342.297],
    [3, 504.437],
  ])('of %d weighs %f g/mol', (units, massGPerMol) => {
    const { molarMassGPerMol } = molarMassFromDegreeOfPolymerisation(units);
    expect(molarMassGPerMol).toBeCloseTo(massGPerMol, 3);
    expect(
      degreeOfPolymerisationFromMolarMass(molarMassGPerMol).degreeOfPolymerisation,
    ).toBeCloseTo(units, 9);
  });

  it('has no fewer units than one and no more than a hundred and twenty', () => {
    for (const received of [0.99, 121, Number.NaN]) {
      for (const of of [molarMassFromDegreeOfPolymerisation, dextroseEquivalentOfChain]) {
        expect(() => of(received)).toThrow(
          expect.objectContaining({ parameter: 'degreeOfPolymerisation', received }),
        );
      }
    }
    for (const received of [180, 18_016, Number.NaN]) {
      for (const of of [degreeOfPolymerisationFromMolarMass, dextroseEquivalentFromMolarMass]) {
        expect(() => of(received)).toThrow(
          expect.objectContaining({ parameter: 'molarMassGPerMol', received }),
        );
      }
    }
  });
});

describe('dextroseEquivalentFromMolarMass', () => {
  it('is 42 for the mean of a usual syrup and 100 for glucose, by either digit of its mass', () => {
    expect(dextroseEquivalentFromMolarMass(18_015.6 / 42).dextroseEquivalent).toBeCloseTo(42, 12);
    expect(dextroseEquivalentFromMolarMass(180.156).dextroseEquivalent).toBeCloseTo(100, 12);
    const { molarMassGPerMol } = molarMassFromDegreeOfPolymerisation(1);
    expect(dextroseEquivalentFromMolarMass(molarMassGPerMol).dextroseEquivalent).toBe(100);
  });

  it('warns below the printed syrups', () => {
    expect(dextroseEquivalentFromMolarMass(18_015.6 / 30).warnings).toEqual([]);
    expect(dextroseEquivalentFromMolarMass(18_015.6 / 20).warnings).toEqual([
      expect.objectContaining({ parameter: 'dextroseEquivalent', limits: [30, 100] }),
    ]);
  });
});

describe('meanDegreeOfPolymerisation', () => {
  it('is longer where the cut is known', () => {
    const byLabel = meanDegreeOfPolymerisation({ dextroseEquivalent: 42 });
    const byCut = meanDegreeOfPolymerisation({ dextroseEquivalent: 42, conversion: 'acid' });
    expect(byLabel.degreeOfPolymerisation).toBeCloseTo(2.534, 3);
    expect(byLabel.molarMassGPerMol).toBeCloseTo(428.943, 3);
    expect(byCut.degreeOfPolymerisation).toBeCloseTo(2.686, 3);
    expect(byCut.molarMassGPerMol).toBeCloseTo(453.47, 2);
  });

  it('warns once below the printed syrups', () => {
    for (const conversion of ['acid', undefined] as const) {
      const { warnings } = meanDegreeOfPolymerisation({ dextroseEquivalent: 25, conversion });
      expect(warnings.map(({ parameter }) => parameter)).toEqual(['dextroseEquivalent']);
    }
  });

  it.each<readonly [Conversion | undefined, number, readonly [number, number]]>([
    ['acid', 64, [20, 63]],
    ['enzyme', 44, [45, 97]],
    ['high-maltose', 51, [40, 50]],
    [undefined, 101, [1, 100]],
    [undefined, 0, [1, 100]],
  ])('names what %s reaches', (conversion, dextroseEquivalent, limits) => {
    expect(() => meanDegreeOfPolymerisation({ dextroseEquivalent, conversion })).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter: 'dextroseEquivalent', limits }),
    );
  });
});
