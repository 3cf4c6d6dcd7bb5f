import { describe, expect, it } from 'vitest';
import { BATCH_LIMITS } from 'vitrose';
import { readBatch } from 'vitrose/documents';

const withFields = (fields: object): unknown => ({
  format: 'vitrose.batch/1',
  formula: [{ ingredient: 'sucrose', massG: 200 }],
  cook: { toSeaLevelC: 148 },
  ...fields,
});
const sugar = (massG: unknown): unknown =>
  withFields({ formula: [{ ingredient: 'sucrose', massG }] });

describe('numbers that cannot be meant', () => {
  it.each([
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    '232',
    '',
    null,
    true,
    [1],
    {},
  ])('are refused when they are none: %j', (value) => {
    expect(readBatch(sugar(value))).toMatchObject({
      problems: [{ code: 'not-a-number', path: '/formula/0/massG', limits: [1e-6, 100_000] }],
    });
  });

  it('are refused when the text has more digits than a number', () => {
    const text = JSON.stringify(sugar(200)).replace('200', '1e999');
    expect(readBatch(text)).toMatchObject({ problems: [{ code: 'not-a-number' }] });
  });

  it.each([-1, 0, 1e-9, 100_001, 1e300])('are refused beyond every kitchen: %d g', (massG) => {
    expect(readBatch(sugar(massG))).toEqual({
      kind: 'problems',
      problems: [
        {
          code: 'outside-range',
          path: '/formula/0/massG',
          received: massG,
          limits: [1e-6, 100_000],
        },
      ],
    });
  });

  it.each([BATCH_LIMITS['formula/*/massG'][0], BATCH_LIMITS['formula/*/massG'][1]])(
    'do not include the limits themselves: %d g',
    (massG) => {
      expect(readBatch(sugar(massG)).kind).toBe('batch');
    },
  );

  it('are refused when what is counted comes in halves', () => {
    expect(readBatch(withFields({ pieces: { count: 60.5 } }))).toMatchObject({
      problems: [{ path: '/pieces/count', numbers: { wholeBelow: 60, wholeAbove: 61 } }],
    });
  });
});

describe('numbers that are right in another unit', () => {
  it.each([
    [{ formula: [{ ingredient: 'honey', massG: 9, drySolidsMassFraction: 98 }] }, 0.98],
    [{ room: { relativeHumidity: 55 } }, 0.55],
    [{ cook: { toMoistureMassFraction: 2 } }, 0.02],
    [{ pieces: { lossFraction: 5 } }, 0.05],
  ])('may be per cent: %j', (fields, asFraction) => {
    expect(readBatch(withFields(fields))).toMatchObject({
      problems: [{ code: 'perhaps-a-percentage', numbers: { asFraction } }],
    });
  });

  it.each([
    [{ cook: { toSeaLevelC: 300 } }, 148.89],
    [{ kitchen: { waterBoilsAtC: 203 } }, 95],
    [{ thermometer: { iceWaterReadingC: 32 } }, 0],
    [{ room: { temperatureC: 75 } }, 23.89],
    [{ mould: { maxC: 572 } }, 300],
  ])('may be degrees Fahrenheit: %j', (fields, asCelsiusC) => {
    const reading = readBatch(withFields(fields));
    expect(reading).toMatchObject({ problems: [{ code: 'perhaps-fahrenheit' }] });
    const numbers = reading.kind === 'problems' ? reading.problems[0]?.numbers : undefined;
    expect(numbers?.asCelsiusC).toBeCloseTo(asCelsiusC, 2);
  });

  it.each([
    { cook: { toSeaLevelC: 900 } },
    { room: { relativeHumidity: 101 } },
    { cook: { toSeaLevelC: 40 } },
    { formula: [{ ingredient: 'glucose-syrup', massG: 9, dextroseEquivalent: 0 }] },
  ])('are not guessed at where no unit makes them right: %j', (fields) => {
    expect(readBatch(withFields(fields))).toMatchObject({ problems: [{ code: 'outside-range' }] });
  });
});
