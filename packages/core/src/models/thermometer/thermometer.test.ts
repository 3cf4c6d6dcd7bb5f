import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { thermometerReading, trueFromReading } from './correction.js';
import { thermometerLag } from './lag.js';
import { readingSpread } from './reading-spread.js';
import { stemCorrection } from './stem.js';

describe('thermometerReading', () => {
  it('shows the truth where nothing was checked', () => {
    expect(thermometerReading({ trueC: 148 })).toEqual({
      readingC: 148,
      correction: 'none',
      band: [148, 148],
    });
    expect(thermometerReading({ trueC: 148, waterBoilsAtC: 95 }).correction).toBe('none');
  });

  it('shifts after a check in boiling water', () => {
    const checks = { boilingWaterReadingC: 95.8, waterBoilsAtC: 95 };
    const { readingC, correction, band } = thermometerReading({ trueC: 142, ...checks });
    expect(readingC).toBeCloseTo(142.8, 12);
    expect(correction).toBe('shift');
    expect(band[0]).toBeCloseTo(142.8 - 47 / 50, 12);
    // Stretched, it would show 143.196; a degree per fifty beside it.
    expect(band[1]).toBeCloseTo(142.8 + Math.hypot(142 * (0.8 / 95) - 0.8, 47 / 50), 12);
  });

  it('is sure where it was checked', () => {
    const checks = { boilingWaterReadingC: 97, waterBoilsAtC: 95 };
    expect(thermometerReading({ trueC: 95, ...checks }).band).toEqual([97, 97]);
    expect(thermometerReading({ trueC: 0, iceWaterReadingC: 2 }).band).toEqual([2, 2]);
  });

  it('shifts after a check in ice, and knows less at the stop', () => {
    const { readingC, correction, band } = thermometerReading({ trueC: 150, iceWaterReadingC: 2 });
    expect(readingC).toBe(152);
    expect(correction).toBe('shift');
    expect(band[0]).toBeCloseTo(152 - Math.hypot(3, 3), 12);
    expect(band[1]).toBeCloseTo(155, 12);
  });

  it('stretches after both checks', () => {
    const checks = { boilingWaterReadingC: 98, waterBoilsAtC: 100, iceWaterReadingC: 0 };
    const { readingC, correction, band } = thermometerReading({ trueC: 150, ...checks });
    expect(readingC).toBeCloseTo(147, 12);
    expect(correction).toBe('scale');
    expect(band).toEqual([readingC, readingC]);
  });

  it('refuses a thermometer that shows the same in ice and in steam', () => {
    const checks = { boilingWaterReadingC: 60, waterBoilsAtC: 95, iceWaterReadingC: 60 };
    expect(() => thermometerReading({ trueC: 150, ...checks })).toThrow(ModelRangeError);
    expect(() => trueFromReading({ readingC: 150, ...checks })).toThrow(ModelRangeError);
  });

  it('refuses a check it cannot use and a number that cannot be meant', () => {
    expect(() => thermometerReading({ trueC: 150, boilingWaterReadingC: 98 })).toThrow(
      /what the water boils at/,
    );
    for (const wrong of [
      { trueC: Number.NaN },
      { trueC: 600 },
      { trueC: 150, boilingWaterReadingC: 20, waterBoilsAtC: 95 },
      { trueC: 150, boilingWaterReadingC: 95, waterBoilsAtC: 20 },
      { trueC: 150, iceWaterReadingC: -80 },
    ]) {
      expect(() => thermometerReading(wrong)).toThrow(ModelRangeError);
    }
    expect(() => trueFromReading({ readingC: Number.NaN })).toThrow(ModelRangeError);
  });
});

describe('trueFromReading', () => {
  it('is as unsure as the reading is', () => {
    const checks = { boilingWaterReadingC: 95.8, waterBoilsAtC: 95 };
    const { trueC, correction, band } = trueFromReading({ readingC: 142.8, ...checks });
    expect(trueC).toBeCloseTo(142, 12);
    expect(correction).toBe('shift');
    const otherC = 142.8 / (95.8 / 95);
    expect(band[0]).toBeCloseTo(142 - Math.hypot(142 - otherC, 47 / 50), 12);
    expect(band[1]).toBeCloseTo(142 + 47 / 50, 12);
  });

  it('believes a thermometer nobody checked', () => {
    expect(trueFromReading({ readingC: 148 })).toEqual({
      trueC: 148,
      correction: 'none',
      band: [148, 148],
    });
  });
});

describe('thermometerLag', () => {
  it('puts a slow dial two kelvin behind a fast boil', () => {
    expect(thermometerLag({ readsInS: 90, riseKPerMin: 6 }).behindK).toBeCloseTo(2.25, 12);
  });

  it('refuses a thermometer slower than ten minutes', () => {
    expect(() => thermometerLag({ readsInS: 601, riseKPerMin: 6 })).toThrow(ModelRangeError);
    expect(() => thermometerLag({ readsInS: 4, riseKPerMin: Number.NaN })).toThrow(ModelRangeError);
  });
});

describe('stemCorrection', () => {
  it('adds nine degrees to spirit and one and a half to mercury', () => {
    const stem = { readingC: 150, exposedK: 100, stemC: 60 };
    expect(stemCorrection({ ...stem, liquid: 'spirit' }).correctionK).toBeCloseTo(9, 12);
    expect(stemCorrection({ ...stem, liquid: 'mercury' }).correctionK).toBeCloseTo(1.44, 12);
  });

  it('knows no other liquid', () => {
    const stem = { readingC: 150, exposedK: 100, stemC: 60 };
    expect(() => stemCorrection({ ...stem, liquid: 'syrup' as 'spirit' })).toThrow(ModelRangeError);
    expect(() => stemCorrection({ ...stem, exposedK: -1, liquid: 'spirit' })).toThrow(
      ModelRangeError,
    );
  });
});

describe('readingSpread', () => {
  const ids = (readings: readonly number[]) =>
    readingSpread(readings).likelyCauses.map((cause) => cause.id);

  it('finds nothing to ask about within a degree', () => {
    expect(readingSpread([148, 148.9, 148.2]).likelyCauses).toEqual([]);
  });

  it('asks first about what explains the spread alone', () => {
    // 14 °F: only three causes reach that far by themselves.
    const { likelyCauses } = readingSpread([140, 140 + 14 / 1.8]);
    const alone = likelyCauses.filter((cause) => cause.alone).map((cause) => cause.id);
    expect(alone).toEqual(['not-immersed-to-mark', 'in-foam-or-steam', 'on-the-base']);
    expect(likelyCauses.slice(0, 3).map((cause) => cause.id)).toEqual(alone);
  });

  it('needs two causes for the twenty degrees of the trade', () => {
    const { spreadK, likelyCauses } = readingSpread([139, 150 + 1 / 9, 145]);
    expect(spreadK).toBeCloseTo(20 / 1.8, 9);
    expect(likelyCauses.length).toBeGreaterThan(3);
    expect(likelyCauses.some((cause) => cause.alone)).toBe(false);
  });

  it('does not blame the foam for two degrees', () => {
    const foam = readingSpread([148, 149.1]).likelyCauses.find((c) => c.id === 'in-foam-or-steam');
    expect(foam?.alone).toBe(false);
  });

  it('has no cause where a thermometer must be broken', () => {
    expect(ids([120, 150])).toEqual([]);
  });

  it('needs two readings that can be meant', () => {
    expect(() => readingSpread([148])).toThrow(ModelRangeError);
    expect(() => readingSpread([148, Number.NaN])).toThrow(ModelRangeError);
  });
});
