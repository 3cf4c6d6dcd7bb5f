import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aeratedDensity,
  airFromDensity,
  baumeFromBrix,
  brixFromBaume,
  brixFromDensity,
  brixFromRefractiveIndex,
  brixFromSpecificGravity,
  brixTemperatureCorrection,
  candyMassDensity,
  cavityFromPieceMass,
  densityFromBrix,
  drySolidsFromCommercialBaume,
  drySolidsFromGlucoseSyrupRefractiveIndex,
  drySolidsFromSucroseRefractometer,
  glucoseSyrupCommercialBaume,
  glucoseSyrupDensity,
  glucoseSyrupRefractiveIndex,
  ModelRangeError,
  pieceMassFromCavity,
  REFRACTOMETER_READS_C,
  refractiveIndexFromBrix,
  specificGravityFromBrix,
  sucroseRefractometerOverread,
  waterDensity,
} from 'vitrose';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const brix = number(0, 95);
const dextroseEquivalent = number(1, 100);
const isNumber = (x: number, low: number, high: number) => x >= low && x <= high;

/** Everything a reading of strength is turned into, and the way back. */
const SCALES = [
  [
    'specific gravity',
    (b: number) => specificGravityFromBrix(b).specificGravity,
    brixFromSpecificGravity,
  ],
  ['Baumé', (b: number) => baumeFromBrix(b).baume, brixFromBaume],
  [
    'refractive index',
    (b: number) => refractiveIndexFromBrix(b).refractiveIndex,
    brixFromRefractiveIndex,
  ],
] as const;

describe.each(SCALES)('%s', (_, forward, back) => {
  it('rises with every drop of sugar', () => {
    fc.assert(
      fc.property(brix, brix, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        expect(forward(Math.max(a, b))).toBeGreaterThan(forward(Math.min(a, b)));
      }),
    );
  });

  it('leads back within 0.005 °Bx', () => {
    fc.assert(
      fc.property(brix, (strength) => {
        expect(Math.abs(back(forward(strength)).brix - strength)).toBeLessThanOrEqual(0.005);
      }),
    );
  });

  it('refuses strengths nobody reads', () => {
    fc.assert(
      fc.property(fc.double(), (any) => {
        fc.pre(!isNumber(any, 0, 95));
        expect(() => forward(any)).toThrow(ModelRangeError);
      }),
    );
  });
});

describe('density of a solution', () => {
  const temperatureC = number(0, 150);

  it('leads back within 0.005 °Bx at any temperature', () => {
    fc.assert(
      fc.property(number(0, 100), temperatureC, (strength, t) => {
        const { densityKgPerM3 } = densityFromBrix({ brix: strength, temperatureC: t });
        const back = brixFromDensity({ densityKgPerM3, temperatureC: t });
        expect(Math.abs(back.brix - strength)).toBeLessThanOrEqual(0.005);
      }),
    );
  });

  it('is that of water without sugar', () => {
    fc.assert(
      fc.property(temperatureC, (t) => {
        expect(densityFromBrix({ brix: 0, temperatureC: t }).densityKgPerM3).toBeCloseTo(
          waterDensity(t).densityKgPerM3,
          9,
        );
      }),
    );
  });

  it('falls as water warms from 4 °C on', () => {
    fc.assert(
      fc.property(number(4.1, 150), number(4.1, 150), (a, b) => {
        fc.pre(Math.abs(a - b) > 0.01);
        expect(waterDensity(Math.max(a, b)).densityKgPerM3).toBeLessThan(
          waterDensity(Math.min(a, b)).densityKgPerM3,
        );
      }),
    );
  });
});

describe('the temperature of a refractometer', () => {
  it('takes off below 20 °C and adds above, more the further it is', () => {
    const [coldest, hottest] = REFRACTOMETER_READS_C;
    const prism = number(coldest, hottest);
    fc.assert(
      fc.property(brix, prism, prism, (strength, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const of = (temperatureC: number) => {
          const answer = brixTemperatureCorrection({ brix: strength, temperatureC });
          if ('reason' in answer) throw new Error(answer.reason);
          return answer.correctionBrix;
        };
        expect(of(Math.max(a, b))).toBeGreaterThan(of(Math.min(a, b)));
        expect(Math.sign(of(a))).toBe(Math.sign(a - 20));
      }),
    );
  });

  it('is never corrected for hot syrup', () => {
    fc.assert(
      fc.property(brix, number(30.01, 200), (strength, temperatureC) => {
        const answer = brixTemperatureCorrection({ brix: strength, temperatureC });
        expect(answer).toMatchObject({ kind: 'none', reason: 'too-hot-to-read' });
        expect(answer).not.toHaveProperty('correctionBrix');
        fc.pre(temperatureC > 60);
        expect(() =>
          glucoseSyrupRefractiveIndex({ drySolidsMassFraction: 0.5, temperatureC }),
        ).toThrow(ModelRangeError);
      }),
    );
  });
});

describe('glucose syrup', () => {
  const solids = number(0.001, 0.85);

  it('is denser the lower its dextrose equivalent and the drier, inside a band of 1 %', () => {
    fc.assert(
      fc.property(dextroseEquivalent, dextroseEquivalent, solids, solids, (d1, d2, s1, s2) => {
        fc.pre(Math.abs(d1 - d2) > 0.01 && Math.abs(s1 - s2) > 0.001);
        const of = (de: number, drySolidsMassFraction: number) =>
          glucoseSyrupDensity({ dextroseEquivalent: de, drySolidsMassFraction, temperatureC: 60 });
        const { densityKgPerM3, band } = of(d1, s1);
        expect((band[1] - band[0]) / densityKgPerM3).toBeCloseTo(0.01, 9);
        expect(of(Math.min(d1, d2), s1).densityKgPerM3).toBeGreaterThan(
          of(Math.max(d1, d2), s1).densityKgPerM3,
        );
        expect(of(d1, Math.max(s1, s2)).densityKgPerM3).toBeGreaterThan(
          of(d1, Math.min(s1, s2)).densityKgPerM3,
        );
        const drum = (drySolidsMassFraction: number) =>
          glucoseSyrupCommercialBaume({ dextroseEquivalent: d1, drySolidsMassFraction });
        const [thin, thick] = [drum(Math.min(s1, s2)), drum(Math.max(s1, s2))];
        expect(thick.commercialBaume).toBeGreaterThan(thin.commercialBaume);
        expect(thin.band[0]).toBeLessThan(thin.commercialBaume);
        expect(thin.band[1]).toBeGreaterThan(thin.commercialBaume);
      }),
    );
  });

  it('is found back by its refraction within 0.005 points, and bends less light when warm', () => {
    fc.assert(
      fc.property(solids, number(10, 60), (drySolidsMassFraction, temperatureC) => {
        const of = (t: number) =>
          glucoseSyrupRefractiveIndex({ drySolidsMassFraction, temperatureC: t }).refractiveIndex;
        const back = drySolidsFromGlucoseSyrupRefractiveIndex({
          refractiveIndex: of(temperatureC),
          temperatureC,
        });
        expect(
          Math.abs(back.drySolidsMassFraction - drySolidsMassFraction) * 100,
        ).toBeLessThanOrEqual(0.005);
        if (temperatureC < 59) expect(of(temperatureC + 1)).toBeLessThan(of(temperatureC));
      }),
    );
  });

  it('is found back behind an over-read, less of it the nearer to dextrose', () => {
    fc.assert(
      fc.property(number(0.05, 0.849), dextroseEquivalent, dextroseEquivalent, (s, d1, d2) => {
        const of = (de: number) =>
          sucroseRefractometerOverread({ drySolidsMassFraction: s, dextroseEquivalent: de });
        const { overreadBrix, band } = of(d1);
        const back = drySolidsFromSucroseRefractometer({
          brix: 100 * s + overreadBrix,
          dextroseEquivalent: d1,
        });
        expect(Math.abs(back.drySolidsMassFraction - s) * 100).toBeLessThanOrEqual(0.005);
        expect(band[0]).toBeGreaterThanOrEqual(0);
        expect(band[1]).toBeGreaterThanOrEqual(overreadBrix);
        fc.pre(Math.abs(d1 - d2) > 0.01);
        expect(of(Math.min(d1, d2)).overreadBrix).toBeGreaterThan(
          of(Math.max(d1, d2)).overreadBrix,
        );
      }),
    );
  });

  it('holds more solids the more degrees the drum shows and the higher its figure', () => {
    const degrees = number(42, 44);
    const figure = number(36, 63);
    fc.assert(
      fc.property(degrees, degrees, figure, figure, (b1, b2, d1, d2) => {
        fc.pre(Math.abs(b1 - b2) > 1e-6 && Math.abs(d1 - d2) > 1e-6);
        const of = (commercialBaume: number, de: number) =>
          drySolidsFromCommercialBaume({ commercialBaume, dextroseEquivalent: de })
            .drySolidsMassFraction;
        expect(of(Math.max(b1, b2), d1)).toBeGreaterThan(of(Math.min(b1, b2), d1));
        expect(of(b1, Math.max(d1, d2))).toBeGreaterThan(of(b1, Math.min(d1, d2)));
      }),
    );
  });
});

describe('a cavity and its piece', () => {
  const weighedPiece = fc
    .record({ volumeMl: number(1, 50), density: number(0.5, 1.55) })
    .map(({ volumeMl, density }) => ({ volumeMl, massG: density * volumeMl }));

  it('lead back to each other, by estimate and by a weighed piece', () => {
    fc.assert(
      fc.property(number(0.1, 100), fc.option(weighedPiece, { nil: undefined }), (ml, piece) => {
        const { massG, band, cooledMl } = pieceMassFromCavity({
          cavityMl: ml,
          weighedPiece: piece,
        });
        expect(cavityFromPieceMass({ massG, weighedPiece: piece }).cavityMl).toBeCloseTo(ml, 9);
        expect(massG).toBeGreaterThan(band[0]);
        expect(massG).toBeLessThan(band[1]);
        expect(cooledMl).toBeLessThan(ml);
        fc.pre(piece !== undefined);
        const { densityGPerMl } = candyMassDensity({ state: 'hot', weighedPiece: piece });
        expect(massG).toBeCloseTo(ml * densityGPerMl, 9);
      }),
    );
  });

  it('with air in it weighs less, and tells how much air', () => {
    fc.assert(
      fc.property(number(0.2, 1.6), number(0, 0.89), (clear, airVolumeFraction) => {
        const { densityGPerMl } = aeratedDensity({ densityGPerMl: clear, airVolumeFraction });
        expect(densityGPerMl).toBeLessThanOrEqual(clear);
        const back = airFromDensity({ densityGPerMl, airFreeGPerMl: clear });
        expect(back.airVolumeFraction).toBeCloseTo(airVolumeFraction, 9);
      }),
    );
  });
});
