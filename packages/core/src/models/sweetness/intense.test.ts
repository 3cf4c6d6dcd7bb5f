import { describe, expect, it } from 'vitest';
import { mixture } from '../../matter/mixture/mixture.js';
import type { SpeciesId } from '../../matter/species.js';
import { relativeSweetness } from './relative-sweetness.js';

/** 100 g of isomalt with milligrams of intense sweeteners. */
function boosted(
  mg: Readonly<Partial<Record<'sucralose' | 'acesulfame-k' | 'aspartame', number>>>,
) {
  const sweeteners = (Object.entries(mg) as [keyof typeof mg, number][]).map(
    ([ingredient, milligrams]) => ({ ingredient, massG: milligrams / 1000 }),
  );
  const sweetG = sweeteners.reduce((sum, { massG }) => sum + massG, 0);
  return mixture([
    { ingredient: 'isomalt', massG: 100 - sweetG, drySolidsMassFraction: 1 },
    ...sweeteners,
  ]);
}

describe('intense sweeteners in relativeSweetness', () => {
  it('adds what the dose in the mouth gives: 0.1 % of sucralose is past sugar', () => {
    const { relativeSweetness: middle, fromIntense } = relativeSweetness(
      boosted({ sucralose: 100 }),
    );
    // 100 mg/L of a curve that ends at 23.7 % and is half there at 298 mg/L.
    expect(fromIntense).toBeCloseTo((23.7 * 100) / 398 / 10, 9);
    expect(middle).toBeCloseTo(0.9995 * 0.5 - 0.00025 + fromIntense, 9);
  });

  it('bands a dose by its factor', () => {
    const plain = relativeSweetness(boosted({}));
    const { band, fromIntense } = relativeSweetness(boosted({ sucralose: 100 }));
    const at = (mgPerL: number) => (23.7 * mgPerL) / (298 + mgPerL) / 10;
    expect(band[0]).toBeCloseTo(plain.band[0] * 0.999 + at(100 / 1.3), 9);
    expect(band[1]).toBeCloseTo(plain.band[1] * 0.999 + at(130), 9);
    expect(fromIntense).toBeLessThan(at(130));
  });

  it('says that the number is from memory, and where the curve is run on', () => {
    const { warnings } = relativeSweetness(boosted({ sucralose: 20 }));
    expect(warnings.map(({ code, parameter, subject }) => [code, parameter, subject])).toEqual([
      ['shown-from-memory', 'addedSweetness', 'sucralose'],
      ['outside-tested-range', 'intenseSweetnessPercent', 'sucralose'],
    ]);
    expect(warnings[0]?.limits[0]).toBeLessThan(warnings[0]?.value ?? 0);
    expect(warnings[0]?.limits[1]).toBeGreaterThan(warnings[0]?.value ?? 0);
    expect(warnings[1]?.limits).toEqual([2, 9]);
    expect(relativeSweetness(boosted({ sucralose: 60 })).warnings).toHaveLength(1);
  });

  it('gives less for the same dose in a strong mouth', () => {
    const at = (tastingConcentrationGPer100Ml: number) =>
      relativeSweetness(boosted({ sucralose: 100 }), { tastingConcentrationGPer100Ml }).fromIntense;
    expect(at(5)).toBeCloseTo((23.7 * 50) / 348 / 5, 9);
    expect(at(5)).toBeGreaterThan(at(15));
  });

  it('lets two raise each other only when asked', () => {
    const pair = boosted({ 'acesulfame-k': 50, aspartame: 100 });
    const plain = relativeSweetness(pair);
    expect(plain.relativeSweetness).toBeCloseTo(0.85, 2);
    const raised = relativeSweetness(pair, { synergy: { acesulfameKWithAspartame: 1.35 } });
    const first = (11.6 * 50) / 520;
    const second = (16 * 100) / 660;
    const q = first / (first + second);
    expect(raised.fromIntense / plain.fromIntense).toBeCloseTo(1 + 4 * q * (1 - q) * 0.35, 9);
    const alone = boosted({ 'acesulfame-k': 50 });
    expect(relativeSweetness(alone, { synergy: { acesulfameKWithAspartame: 1.35 } })).toEqual(
      relativeSweetness(alone),
    );
  });

  it('lets xylitol and sorbitol do the same, in equal sweetness by all of it', () => {
    const polyols = mixture([
      { ingredient: 'xylitol', massG: 60, drySolidsMassFraction: 1 },
      { ingredient: 'sorbitol', massG: 95, drySolidsMassFraction: 1 },
    ]);
    const plain = relativeSweetness(polyols).relativeSweetness;
    const raised = relativeSweetness(polyols, { synergy: { xylitolWithSorbitol: 1.05 } });
    expect(raised.relativeSweetness).toBeCloseTo(1.05 * plain, 9);
  });

  it.each([
    ['acesulfameKWithAspartame', 0.99, 1.35],
    ['acesulfameKWithAspartame', 1.36, 1.35],
    ['xylitolWithSorbitol', 1.21, 1.2],
    ['xylitolWithSorbitol', Number.NaN, 1.2],
  ])('refuses a synergy of %s by %f', (parameter, received, most) => {
    expect(() => relativeSweetness(boosted({}), { synergy: { [parameter]: received } })).toThrow(
      expect.objectContaining({ parameter, received, limits: [1, most] }),
    );
  });

  it('gives a likely range inside the bounds', () => {
    const species = ['isomalt', 'xylitol', 'maltitol'] as const satisfies readonly SpeciesId[];
    const blend = mixture(species.map((ingredient) => ({ ingredient, massG: 1 })));
    const { relativeSweetness: middle, band, likely } = relativeSweetness(blend);
    expect(likely[0]).toBeGreaterThan(band[0]);
    expect(likely[1]).toBeLessThan(band[1]);
    expect(likely[0]).toBeLessThan(middle);
    expect(likely[1]).toBeGreaterThan(middle);
    // Alone, one substance is as wrong as it can be.
    const alone = relativeSweetness(mixture([{ ingredient: 'isomalt', massG: 1 }]));
    expect(alone.likely[0]).toBeCloseTo(alone.band[0], 12);
    expect(alone.likely[1]).toBeCloseTo(alone.band[1], 12);
  });
});
