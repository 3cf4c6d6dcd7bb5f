import { describe, expect, it } from 'vitest';
import type { PlanDocument, PlannedInversion } from '../../job/plan/types.js';
import { acidLines } from './acid-section.js';
import { ISOMALT_DROPS, LEMON_DROPS } from './plans.fixture.js';

const figure = (value: number, low = value, high = value) =>
  ({ value, band: [low, high], model: 'inversion' }) as const;

function soured(changes: Partial<PlannedInversion>, more: Partial<PlanDocument> = {}): string {
  const { inversion } = LEMON_DROPS;
  if (inversion === undefined) throw new Error('the lemon drops have sucrose');
  return acidLines({ ...LEMON_DROPS, inversion: { ...inversion, ...changes }, ...more }, {}).join(
    '\n',
  );
}

describe('acid and sugar', () => {
  it('tells the boil, then what the acid does late, by its band and not by its middle', () => {
    expect(acidLines(LEMON_DROPS, {})).toEqual([
      'In the boil, at pH 5 (lower is sourer), about 0.1 % of the sucrose splits into glucose and fructose, called invert sugar (under 0.1 % to 1 %, worked out here).',
      'From the acid to the set sweet more of it splits (7.1 % to 74 %, worked out here): rough, because so little water is left. That costs nothing now; once the sweet takes back the water it used, it softens about 5 °C lower.',
      '1.3 g of sodium citrate, a salt that tames acid, would make that about 30 times less and the taste a little less sharp.',
      'It tastes as sour as 1.3 % of citric acid.',
    ]);
    expect(acidLines(LEMON_DROPS, {}).join(' ')).not.toContain('19 %');
  });

  it('is not told where there is no sucrose', () => {
    expect(acidLines(ISOMALT_DROPS, {})).toEqual([]);
  });

  it('says what acid in the boil costs, unless an advice says it', () => {
    const costly = 'With acid in the boil it softens 3 °C lower than without.';
    expect(soured({ earlyCostsK: 3 })).toContain(costly);
    expect(soured({ earlyCostsK: 0.3 })).not.toContain('than without');
    const advice = [
      { code: 'acid-too-early', severity: 'may-disappoint', numbers: {}, remedies: [] },
    ] as const;
    expect(soured({ earlyCostsK: 3 }, { advice })).not.toContain('than without');
  });

  it('says when the water ends it, and when nobody would feel it', () => {
    expect(soured({ limitedByWater: true })).toContain(
      'worked out here), until no water is left for it: rough',
    );
    expect(soured({ lateCostsK: 0.2 })).toContain('That costs nothing you would feel.');
  });

  it('is silent about what does not happen', () => {
    const none = soured({
      lateFraction: figure(0),
      lateCostsK: 0,
      sournessMassFraction: undefined,
    });
    expect(none.split('\n')).toHaveLength(1);
    expect(soured({ buffer: undefined })).not.toContain('citrate');
  });

  it('offers the salt only where it makes a difference, and a ratio no finer than it is known', () => {
    const buffer = (lateFraction: number) =>
      soured({ buffer: { sodiumCitrateG: 2, lateFraction, band: [0, 1] } });
    expect(buffer(0.15)).not.toContain('citrate');
    expect(buffer(0.05)).toContain('about 4 times less');
    expect(buffer(0.011)).toContain('about 20 times less');
    expect(buffer(0)).not.toContain('citrate');
  });

  it('says candy and °F in the United States', () => {
    const us = acidLines(LEMON_DROPS, { units: 'us' }).join('\n');
    expect(us).toContain('From the acid to the set candy');
    expect(us).toContain(
      'once the candy takes back the water it used, it softens about 9 °F lower',
    );
  });
});
