import { practicePanSpreadTable, practiceThermometersTable } from '@vitrose/evidence';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fahrenheitDifferenceFromKelvin,
  kelvinDifferenceFromFahrenheit,
  ModelRangeError,
  readingSpread,
  stemCorrection,
  thermometerLag,
  thermometerReading,
  trueFromReading,
} from 'vitrose';

const trueC = fc.double({ min: 0, max: 200, noNaN: true });
const boil = fc.record({
  boilingWaterReadingC: fc.double({ min: 85, max: 108, noNaN: true }),
  waterBoilsAtC: fc.double({ min: 85, max: 101, noNaN: true }),
});
const ice = fc.record({ iceWaterReadingC: fc.double({ min: -8, max: 8, noNaN: true }) });
const checks = fc.oneof(
  fc.constant({}),
  boil,
  ice,
  fc.tuple(boil, ice).map(([one, other]) => ({ ...one, ...other })),
);

it('reads back what it showed', () => {
  fc.assert(
    fc.property(trueC, checks, (temperatureC, seen) => {
      const shown = thermometerReading({ trueC: temperatureC, ...seen });
      const back = trueFromReading({ readingC: shown.readingC, ...seen });
      expect(back.trueC).toBeCloseTo(temperatureC, 9);
      expect(back.correction).toBe(shown.correction);
    }),
  );
});

it('shows in ice and in steam what it was seen to show there', () => {
  fc.assert(
    fc.property(boil, ice, (steam, cold) => {
      const both = { ...steam, ...cold };
      const inSteam = thermometerReading({ trueC: steam.waterBoilsAtC, ...both });
      expect(inSteam.readingC).toBeCloseTo(steam.boilingWaterReadingC, 9);
      const inIce = thermometerReading({ trueC: 0, ...both });
      expect(inIce.readingC).toBeCloseTo(cold.iceWaterReadingC, 9);
      const once = thermometerReading({ trueC: steam.waterBoilsAtC, ...steam });
      expect(once.readingC).toBeCloseTo(steam.boilingWaterReadingC, 9);
      expect(once.band[1] - once.band[0]).toBeCloseTo(0, 9);
    }),
  );
});

it('shifts after one check, stretches after two, believes after none', () => {
  fc.assert(
    fc.property(trueC, boil, ice, (temperatureC, steam, cold) => {
      const of = (seen: object) => thermometerReading({ trueC: temperatureC, ...seen }).correction;
      expect([of({}), of(steam), of(cold), of({ ...steam, ...cold })]).toEqual([
        'none',
        'shift',
        'shift',
        'scale',
      ]);
    }),
  );
});

it('holds the stretched reading inside the band of the shifted one', () => {
  fc.assert(
    fc.property(trueC, boil, (temperatureC, steam) => {
      const { band } = thermometerReading({ trueC: temperatureC, ...steam });
      const stretched = thermometerReading({ trueC: temperatureC, ...steam, iceWaterReadingC: 0 });
      expect(band[0]).toBeLessThanOrEqual(stretched.readingC + 1e-9);
      expect(band[1]).toBeGreaterThanOrEqual(stretched.readingC - 1e-9);
    }),
  );
});

it('is less sure the further it is from the only check', () => {
  fc.assert(
    fc.property(boil, fc.double({ min: 0, max: 50, noNaN: true }), (steam, away) => {
      const width = (further: number) => {
        const from = steam.waterBoilsAtC;
        const { band } = thermometerReading({ trueC: from + further, ...steam });
        return band[1] - band[0];
      };
      expect(width(away + 1)).toBeGreaterThan(width(away));
      // A degree either way at 150 °C, before what a stretched scale would add.
      expect(width(50)).toBeGreaterThanOrEqual(2 - 1e-9);
    }),
  );
});

it('refuses checks that make no scale', () => {
  fc.assert(
    fc.property(trueC, fc.double({ min: 50, max: 110, noNaN: true }), (temperatureC, same) => {
      const checked = { boilingWaterReadingC: same, waterBoilsAtC: 95, iceWaterReadingC: same };
      expect(() => thermometerReading({ trueC: temperatureC, ...checked })).toThrow(
        ModelRangeError,
      );
    }),
  );
});

it('runs behind a rise, ahead of a fall, and not at all when nothing moves', () => {
  const readsInS = fc.double({ min: 0.1, max: 600, noNaN: true });
  fc.assert(
    fc.property(readsInS, fc.double({ min: -200, max: 200, noNaN: true }), (seconds, rise) => {
      const { behindK } = thermometerLag({ readsInS: seconds, riseKPerMin: rise });
      expect(behindK).toBeCloseTo(rise * (seconds / 240), 9);
    }),
  );
});

it('adds to a cold column and takes from a hot one', () => {
  const degrees = fc.double({ min: 0, max: 200, noNaN: true });
  fc.assert(
    fc.property(degrees, degrees, degrees, (readingC, stemC, exposedK) => {
      const spirit = stemCorrection({ readingC, stemC, exposedK, liquid: 'spirit' }).correctionK;
      const mercury = stemCorrection({ readingC, stemC, exposedK, liquid: 'mercury' }).correctionK;
      expect(spirit * (readingC - stemC)).toBeGreaterThanOrEqual(0);
      expect(Math.abs(mercury)).toBeLessThanOrEqual(Math.abs(spirit));
    }),
  );
});

describe(`readingSpread against ${practicePanSpreadTable.id}`, () => {
  const ids = [
    'not-immersed-to-mark',
    'in-foam-or-steam',
    'on-the-base',
    'near-the-wall',
    'slow-instrument',
    'too-shallow',
    'not-calibrated',
  ];
  const rows = practicePanSpreadTable.rows.map((row, at) => ({ ...row, id: ids[at] ?? '' }));

  it('knows every cause of the table', () => {
    expect(rows).toHaveLength(ids.length);
  });

  it.each(rows)('finds "$cause" in the spread its worst error makes', ({ id, lowF, highF }) => {
    const worstF = Math.abs(lowF) > Math.abs(highF) ? lowF : highF;
    const wrongC = 145 + kelvinDifferenceFromFahrenheit(worstF);
    const { likelyCauses } = readingSpread([145, wrongC]);
    const found = likelyCauses.find((cause) => cause.id === id);
    expect(found?.alone).toBe(true);
    const ends = (found?.errorK ?? [0, 0]).map(fahrenheitDifferenceFromKelvin);
    expect(ends[0]).toBeCloseTo(Math.min(lowF, highF), 9);
    expect(ends[1]).toBeCloseTo(Math.max(lowF, highF), 9);
  });

  it('lists a cause alone only where its error is just that large', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1, max: 20, noNaN: true }), (spreadK) => {
        const { likelyCauses } = readingSpread([140, 140 + spreadK]);
        for (const { errorK, alone } of likelyCauses) {
          const [low, high] = errorK;
          const least = low <= 0 && high >= 0 ? 0 : Math.min(Math.abs(low), Math.abs(high));
          const most = Math.max(Math.abs(low), Math.abs(high));
          expect(alone).toBe(spreadK >= least - 1e-6 && spreadK <= most + 1e-6);
        }
      }),
    );
  });

  it('reads the spread whatever the order of the readings', () => {
    const readings = fc.array(fc.double({ min: 100, max: 180, noNaN: true }), {
      minLength: 2,
      maxLength: 6,
    });
    fc.assert(
      fc.property(readings, (list) => {
        expect(readingSpread([...list].reverse())).toEqual(readingSpread(list));
      }),
    );
  });
});

describe(`thermometerLag against ${practiceThermometersTable.id}`, () => {
  it('puts an oven dial 3.8 °F behind a rise of 10 °F a minute, a thermocouple 0.2', () => {
    const behindF = (readsInS: number, riseF: number) =>
      fahrenheitDifferenceFromKelvin(
        thermometerLag({ readsInS, riseKPerMin: kelvinDifferenceFromFahrenheit(riseF) }).behindK,
      );
    const dial = practiceThermometersTable.rows.find(
      (row) => row.kind === 'dial oven-safe bimetal',
    );
    const middle = ((dial?.readsInLowS ?? 0) + (dial?.readsInHighS ?? 0)) / 2;
    expect(behindF(middle, 10)).toBeCloseTo(3.75, 9);
    expect(behindF(middle, 20)).toBeCloseTo(7.5, 9);
    const couple = practiceThermometersTable.rows.find((row) => row.kind === 'thermocouple');
    expect(behindF(couple?.readsInHighS ?? 0, 10)).toBeCloseTo(0.2, 1);
  });
});
