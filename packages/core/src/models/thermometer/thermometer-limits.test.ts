import { describe, expect, it } from 'vitest';
import { thermometerReading, trueFromReading } from './correction.js';
import { thermometerLag } from './lag.js';
import { readingSpread } from './reading-spread.js';
import { stemCorrection } from './stem.js';

const stem = { readingC: 150, exposedK: 100, stemC: 60, liquid: 'spirit' } as const;
const boil = { trueC: 150, boilingWaterReadingC: 95, waterBoilsAtC: 95 } as const;
const lag = { readsInS: 60, riseKPerMin: 6 } as const;

/** Readings of two probes this many degrees Fahrenheit apart, °C. */
const apartF = (spreadF: number): readonly number[] => [140, 140 + spreadF / 1.8];

describe('what a thermometer cannot mean', () => {
  it.each([
    ['trueC', -50.1, [-50, 400], () => thermometerReading({ trueC: -50.1 })],
    ['trueC', 400.1, [-50, 400], () => thermometerReading({ trueC: 400.1 })],
    ['readingC', -50.1, [-50, 400], () => trueFromReading({ readingC: -50.1 })],
    ['readingC', 400.1, [-50, 400], () => trueFromReading({ readingC: 400.1 })],
    [
      'iceWaterReadingC',
      -50.1,
      [-50, 400],
      () => thermometerReading({ trueC: 20, iceWaterReadingC: -50.1 }),
    ],
    [
      'waterBoilsAtC',
      49.9,
      [50, 150],
      () => thermometerReading({ trueC: 20, waterBoilsAtC: 49.9 }),
    ],
    [
      'waterBoilsAtC',
      150.1,
      [50, 150],
      () => thermometerReading({ trueC: 20, waterBoilsAtC: 150.1 }),
    ],
    [
      'boilingLessIceReadingK',
      49,
      [50, 150],
      () => thermometerReading({ ...boil, iceWaterReadingC: 46 }),
    ],
    [
      'boilingLessIceReadingK',
      151,
      [50, 150],
      () => thermometerReading({ ...boil, boilingWaterReadingC: 151 }),
    ],
    ['readsInS', -1, [0, 600], () => thermometerLag({ ...lag, readsInS: -1 })],
    ['readsInS', 601, [0, 600], () => thermometerLag({ ...lag, readsInS: 601 })],
    ['riseKPerMin', -201, [-200, 200], () => thermometerLag({ ...lag, riseKPerMin: -201 })],
    ['riseKPerMin', 201, [-200, 200], () => thermometerLag({ ...lag, riseKPerMin: 201 })],
    ['readingC', 401, [-50, 400], () => stemCorrection({ ...stem, readingC: 401 })],
    ['exposedK', -1, [0, 400], () => stemCorrection({ ...stem, exposedK: -1 })],
    ['exposedK', 401, [0, 400], () => stemCorrection({ ...stem, exposedK: 401 })],
    ['stemC', -51, [-50, 400], () => stemCorrection({ ...stem, stemC: -51 })],
    ['readingC', 401, [-50, 400], () => readingSpread([148, 401])],
  ])('is a %s of %d', (parameter, received, limits, ask) => {
    expect(ask).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('is a check in boiling water without what the water boils at', () => {
    expect(() => thermometerReading({ trueC: 150, boilingWaterReadingC: 98 })).toThrow(
      expect.objectContaining({
        code: 'not-allowed-together',
        parameter: 'waterBoilsAtC',
        received: undefined,
      }),
    );
  });

  it('is a column of another liquid', () => {
    expect(() => stemCorrection({ ...stem, liquid: 'syrup' as 'spirit' })).toThrow(
      expect.objectContaining({
        code: 'unknown-name',
        parameter: 'liquid',
        received: 'syrup',
        message: expect.stringContaining('mercury or spirit'),
      }),
    );
  });

  it('is a spread of one reading or none', () => {
    for (const readingsC of [[], [148]]) {
      expect(() => readingSpread(readingsC)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'readingsC',
          received: readingsC,
          message: expect.stringContaining('two readings'),
        }),
      );
    }
  });
});

describe('the ends of what it can mean', () => {
  it('reads from -50 to 400 °C', () => {
    for (const endC of [-50, 400]) {
      expect(thermometerReading({ trueC: endC }).readingC).toBe(endC);
      expect(trueFromReading({ readingC: endC }).trueC).toBe(endC);
    }
  });

  it('may show 50 or 150 degrees from ice to boil', () => {
    for (const boilingWaterReadingC of [50, 150]) {
      const { readingC } = thermometerReading({
        trueC: 190,
        boilingWaterReadingC,
        waterBoilsAtC: 95,
        iceWaterReadingC: 0,
      });
      expect(readingC).toBeCloseTo(2 * boilingWaterReadingC, 9);
    }
  });

  it('lags behind a cooling mass the other way, and not at all if it is infinitely quick', () => {
    expect(thermometerLag({ readsInS: 600, riseKPerMin: -200 }).behindK).toBeCloseTo(-500, 9);
    expect(thermometerLag({ readsInS: 0, riseKPerMin: 200 }).behindK).toBe(0);
  });

  it('is sure of a shift by a fiftieth of the way, below the check as above it', () => {
    // Below the check the other line runs the other way, so the open band alone is the high end.
    const { readingC, band } = thermometerReading({
      trueC: 45,
      boilingWaterReadingC: 97,
      waterBoilsAtC: 95,
    });
    expect(readingC).toBeCloseTo(47, 12);
    expect(band[1]).toBeCloseTo(47 + 1, 12);
    expect(band[0]).toBeCloseTo(47 - Math.hypot(1, 2 - (45 * 2) / 95), 12);
  });
});

describe('trueFromReading', () => {
  const both = { boilingWaterReadingC: 97, waterBoilsAtC: 95, iceWaterReadingC: 2 } as const;

  it('takes back what both checks did, at the checks and beyond', () => {
    for (const [trueC, readingC] of [
      [0, 2],
      [95, 97],
      [190, 192],
    ] as const) {
      expect(thermometerReading({ trueC, ...both }).readingC).toBeCloseTo(readingC, 9);
      expect(trueFromReading({ readingC, ...both }).trueC).toBeCloseTo(trueC, 9);
    }
    const stretched = { boilingWaterReadingC: 98, waterBoilsAtC: 100, iceWaterReadingC: 0 };
    expect(trueFromReading({ readingC: 147, ...stretched })).toEqual({
      trueC: expect.closeTo(150, 9),
      correction: 'scale',
      band: [expect.closeTo(150, 9), expect.closeTo(150, 9)],
    });
  });

  it('is unsure after a check in ice: the thermometer may be right in steam', () => {
    const { trueC, correction, band } = trueFromReading({ readingC: 152, iceWaterReadingC: 2 });
    expect(trueC).toBe(150);
    expect(correction).toBe('shift');
    expect(band[0]).toBeCloseTo(150 - 3, 12);
    // 150 degrees of its scale, of which it has 98 for every hundred.
    expect(band[1]).toBeCloseTo(150 + Math.hypot(150 / 0.98 - 150, 3), 12);
  });
});

describe('readingSpread', () => {
  it('orders causes by whether they do alone, then by the error they can make', () => {
    expect(readingSpread(apartF(14)).likelyCauses).toEqual(
      [
        ['not-immersed-to-mark', -16, 0, true],
        ['in-foam-or-steam', -15, -5, true],
        ['on-the-base', 5, 15, true],
        ['too-shallow', -10, 5, false],
        ['near-the-wall', 2, 8, false],
        ['slow-instrument', -8, -2, false],
        ['not-calibrated', -5, 5, false],
      ].map(([id, low, high, alone]) => ({
        id,
        errorK: [expect.closeTo(Number(low) / 1.8, 9), expect.closeTo(Number(high) / 1.8, 9)],
        alone,
      })),
    );
  });

  it('puts a small error that does alone before a large one that does not', () => {
    expect(readingSpread(apartF(2)).likelyCauses.map((cause) => cause.id)).toEqual([
      'not-immersed-to-mark',
      'too-shallow',
      'near-the-wall',
      'slow-instrument',
      'not-calibrated',
      'in-foam-or-steam',
      'on-the-base',
    ]);
  });

  it('leaves the two that reach 31 °F together, and nothing a little further on', () => {
    expect(readingSpread(apartF(31)).likelyCauses).toMatchObject([
      { id: 'not-immersed-to-mark', alone: false },
      { id: 'on-the-base', alone: false },
    ]);
    expect(readingSpread(apartF(31.1)).likelyCauses).toEqual([]);
  });

  it('holds a cause by its least error as by its greatest', () => {
    const alone = (spreadF: number) =>
      readingSpread(apartF(spreadF))
        .likelyCauses.filter((cause) => cause.alone)
        .map((cause) => cause.id)
        .sort();
    expect(alone(2)).toEqual([
      'near-the-wall',
      'not-calibrated',
      'not-immersed-to-mark',
      'slow-instrument',
      'too-shallow',
    ]);
    expect(alone(1.9)).toEqual(['not-calibrated', 'not-immersed-to-mark', 'too-shallow']);
    expect(alone(5)).toEqual([
      'in-foam-or-steam',
      'near-the-wall',
      'not-calibrated',
      'not-immersed-to-mark',
      'on-the-base',
      'slow-instrument',
      'too-shallow',
    ]);
    expect(alone(16)).toEqual(['not-immersed-to-mark']);
    expect(alone(16.1)).toEqual([]);
  });

  it('takes one degree for agreement and no more', () => {
    expect(readingSpread([148, 149])).toEqual({ spreadK: 1, likelyCauses: [] });
    expect(readingSpread([148, 149.01]).likelyCauses).not.toEqual([]);
  });
});
