import { describe, expect, it } from 'vitest';
import { applyChanges, BATCH_LIMITS, type BatchDocument, type Change, planBatch } from 'vitrose';

/** A batch in which every group stands, so that each number meets all the others. */
const whole: BatchDocument = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'dried-glucose-syrup', dextroseEquivalent: 42, massG: 155 },
    { ingredient: 'water', massG: 116 },
    { ingredient: 'citric-acid', massG: 5, when: 'off-heat' },
  ],
  cook: { toSeaLevelC: 148 },
  kitchen: { elevationM: 500 },
  thermometer: { boilingWaterReadingC: 98.4, iceWaterReadingC: 0, maxC: 200, readsInS: 4 },
  hob: { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 4 },
  pan: { diameterMm: 160, capacityMl: 1_500, emptyMassG: 780 },
  room: { temperatureC: 22, relativeHumidity: 0.5 },
  store: { temperatureC: 22, relativeHumidity: 0.5, forDays: 90 },
  wrap: { film: 'oriented-pp', areaCm2: 60, sealFactor: 1.5 },
  water: { alkalinityMmolPerL: 3 },
  mould: { kind: 'silicone', cavityMl: 4, cavities: 15, moulds: 2, maxC: 220 },
  pieces: { count: 60, lossFraction: 0.03, breakFraction: 0 },
};

/** The group a field is one choice of, written anew for it. */
function choosing(field: string, value: number): readonly Change[] {
  if (field === 'hob/powerW') return [{ path: '/hob', value: { kind: 'gas', powerW: value } }];
  if (/^cook\/to/.test(field))
    return [{ path: '/cook', value: { [field.split('/')[1] ?? '']: value } }];
  if (/^kitchen\/(pressurePa|waterBoilsAtC)/.test(field))
    return [{ path: '/kitchen', value: { [field.split('/')[1] ?? '']: value } }];
  return [{ path: `/${field}`, value }];
}

const fields = Object.keys(BATCH_LIMITS).filter(
  (field) => !/^(formula|ingredients)\//.test(field) && field !== 'pieces/cavityMl',
) as (keyof typeof BATCH_LIMITS)[];
const ends = fields.flatMap((field) => BATCH_LIMITS[field].map((value) => [field, value] as const));

function expectAnAnswer(batch: BatchDocument): void {
  const result = planBatch(batch);
  expect(['plan', 'refused']).toContain(result.kind);
  const text = JSON.stringify(result, (_key, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value,
  );
  expect(text).not.toContain('not finite');
}

describe('a batch with one number at the end of what it can be', () => {
  it.each(ends)('gets a plan or problems for %s of %d, acid late or early', (field, value) => {
    const batch = applyChanges(whole, choosing(field, value));
    expectAnAnswer(batch);
    expectAnAnswer(applyChanges(batch, [{ path: '/formula/3/when', value: 'first-boil' }]));
  });

  it.each([1e-6, 1e-3, 1, 100_000])(
    'gets a plan or problems for %d g of sugar and of water',
    (massG) => {
      expectAnAnswer({
        format: 'vitrose.batch/1',
        formula: [
          { ingredient: 'sucrose', massG },
          { ingredient: 'water', massG },
        ],
        cook: { toSeaLevelC: 148 },
      });
    },
  );
});
