import { describe, expect, it } from 'vitest';
import { mixture } from '../mixture/mixture.js';
import { acidDose } from './acid-dose.js';
import { type SourAcid, sourness } from './sourness.js';
import { swapAcid } from './swap-acid.js';
import { titratableAcidity } from './titratable-acidity.js';

describe('titratableAcidity', () => {
  it.each([
    ['citric-acid', 1],
    ['malic-acid', 1.047],
    ['tartaric-acid', 1.172],
    ['lactic-acid', 1.407],
  ] as const)('finds as much acid in %s as in a gram of citric acid at %f g', (acid, massG) => {
    const { citricEquivalentG } = titratableAcidity({ [acid]: massG });
    expect(citricEquivalentG).toBeCloseTo(1, 3);
  });

  it('finds one proton of two in cream of tartar and none in a salt', () => {
    const tartaric = titratableAcidity({ 'tartaric-acid': 150.09 }).citricEquivalentG;
    const cream = titratableAcidity({ 'potassium-hydrogen-tartrate': 188.18 }).citricEquivalentG;
    expect(cream).toBeCloseTo(tartaric / 2, 9);
    expect(titratableAcidity({ 'sodium-citrate': 5, 'sodium-lactate': 5 }).citricEquivalentG).toBe(
      0,
    );
    expect(titratableAcidity({ 'sodium-bicarbonate': 84.01 }).citricEquivalentG).toBeCloseTo(
      -64.04,
      9,
    );
  });

  it('reads a mixture', () => {
    const sweet = mixture([
      { ingredient: 'sucrose', massG: 95 },
      { ingredient: 'citric-acid-monohydrate', massG: 2.1014 },
    ]);
    expect(titratableAcidity(sweet).citricEquivalentG).toBeCloseTo(1.921, 3);
  });
});

describe('sourness', () => {
  it('counts every acid as citric, give or take a sixth for all but that', () => {
    expect(sourness({ 'citric-acid': 5 })).toEqual({
      citricEquivalentG: 5,
      band: [5, 5],
      warnings: [],
    });
    const { citricEquivalentG, band } = sourness({ 'malic-acid': 8.5, 'tartaric-acid': 9 });
    expect(citricEquivalentG).toBeCloseTo(20, 9);
    expect(band[0]).toBeCloseTo(20 / 1.15, 9);
    expect(band[1]).toBeCloseTo(20 / 0.85, 9);
  });

  it('leaves out what nobody has judged, and says so', () => {
    const { citricEquivalentG, warnings } = sourness({
      'citric-acid': 3,
      'potassium-hydrogen-tartrate': 1,
      'sodium-citrate': 0,
    });
    expect(citricEquivalentG).toBe(3);
    expect(warnings).toEqual([
      {
        code: 'species-not-modelled',
        parameter: 'shareOfAcids',
        value: 0.25,
        limits: [0, 0],
        subject: 'potassium-hydrogen-tartrate',
      },
    ]);
  });
});

describe('swapAcid', () => {
  it('gives less malic acid for the tongue than for the burette', () => {
    const swap = { from: 'citric-acid', to: 'malic-acid', massG: 10 } as const;
    const { massG, band } = swapAcid({ ...swap, by: 'sourness' });
    expect(massG).toBeCloseTo(8.5, 12);
    expect(band[0]).toBeCloseTo(7.225, 12);
    expect(band[1]).toBeCloseTo(9.775, 12);
    const exact = swapAcid({ ...swap, by: 'titration' });
    expect(exact.massG).toBeCloseTo(10.469, 3);
    expect(exact.band).toEqual([exact.massG, exact.massG]);
  });

  it('knows an acid to be as sour as itself', () => {
    const same = { from: 'malic-acid', to: 'malic-acid', massG: 10, by: 'sourness' } as const;
    expect(swapAcid(same)).toEqual({ massG: 10, band: [10, 10] });
  });

  it('widens by both acids where neither is citric', () => {
    const { massG, band } = swapAcid({
      from: 'malic-acid',
      to: 'tartaric-acid',
      massG: 8.5,
      by: 'sourness',
    });
    expect(massG).toBeCloseTo(9, 12);
    expect(band[0]).toBeCloseTo((9 * 0.85) / 1.15, 9);
    expect(band[1]).toBeCloseTo((9 * 1.15) / 0.85, 9);
  });

  it('knows no other acid and no other way', () => {
    const swap = { from: 'citric-acid', to: 'malic-acid', massG: 1, by: 'sourness' } as const;
    const other = 'fumaric-acid' as SourAcid;
    expect(() => swapAcid({ ...swap, from: other })).toThrow(/Only citric/);
    expect(() => swapAcid({ ...swap, to: other })).toThrow(/Only citric/);
    expect(() => swapAcid({ ...swap, by: 'weight' as 'sourness' })).toThrow(
      /sourness or titration/,
    );
    expect(() => swapAcid({ ...swap, massG: -1 })).toThrow(/Mass g/);
  });
});

describe('acidDose', () => {
  it('is a gram in a hundred of citric acid, between a half and two', () => {
    expect(acidDose({ acid: 'citric-acid', finishedMassG: 500 })).toEqual({
      massG: 5,
      band: [2.5, 10],
    });
  });

  it('knows no other acid', () => {
    const dose = { acid: 'acetic-acid' as SourAcid, finishedMassG: 1 };
    expect(() => acidDose(dose)).toThrow(/Only citric/);
    expect(() => acidDose({ acid: 'malic-acid', finishedMassG: -1 })).toThrow(/Finished mass g/);
  });
});
