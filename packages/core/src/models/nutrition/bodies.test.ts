import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { glycaemicIndex, glycaemicLoad } from './glycaemic-index.js';
import { polyolShare } from './polyol-share.js';
import { xylitolForDog } from './xylitol-for-dog.js';

function answer<T extends object>(result: T | None): T {
  if (isNone(result)) throw new RangeError(result.reason);
  return result as T;
}

const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 1 });
const salt = solutionOf('sodium-chloride', { drySolidsMassFraction: 0.5 });

describe('the glycaemic index', () => {
  it('weighs carbohydrate by mass and leaves water, acid and fat out', () => {
    const mixed = mixture([
      { ingredient: 'sucrose', massG: 60 },
      { ingredient: 'isomalt-dry', massG: 30, drySolidsMassFraction: 1 },
      { ingredient: 'citric-acid', massG: 5 },
      { ingredient: 'butter', massG: 0 },
      { ingredient: 'water', massG: 5 },
    ]);
    const { glycaemicIndex: index, band, caution } = answer(glycaemicIndex(mixed));
    expect(index).toBeCloseTo((60 * 65 + 30 * 9) / 90, 9);
    expect(band[0]).toBeLessThanOrEqual(index - 10);
    expect(band[1]).toBeCloseTo(index + 10, 9);
    expect(caution).toBe('not-for-illness');
  });

  it('never has a band below nought', () => {
    const { band } = answer(glycaemicIndex(solutionOf('erythritol', { drySolidsMassFraction: 1 })));
    expect(band).toEqual([0, 10]);
  });

  it('takes a maltodextrin higher and wider than a syrup, and ends at glucose', () => {
    const of = (dextroseEquivalent: number) =>
      answer(
        glycaemicIndex(mixture([{ ingredient: 'glucose-syrup', massG: 1, dextroseEquivalent }])),
      );
    expect([5, 10, 20, 42, 63, 100].map((de) => of(de).glycaemicIndex)).toEqual(
      [105, 105, 95, 95, 95, 100].map((value) => expect.closeTo(value, 9)),
    );
    expect(of(5).band[1]).toBeGreaterThanOrEqual(135);
    expect(of(100).band).toEqual([expect.closeTo(90, 9), expect.closeTo(110, 9)]);
  });

  it('has no answer without carbohydrate', () => {
    expect(glycaemicIndex(salt)).toEqual({ kind: 'none', reason: 'no-carbohydrate' });
    expect(glycaemicLoad(salt, { pieceG: 4 })).toEqual({
      kind: 'none',
      reason: 'no-carbohydrate',
    });
  });

  it('times the carbohydrate of a piece is its load', () => {
    const wet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
    const load = answer(glycaemicLoad(wet, { pieceG: 4 }));
    expect(load.carbohydrateG).toBeCloseTo(3.92, 9);
    expect(load.glycaemicLoad).toBeCloseTo(3.92 * 0.65, 9);
    expect(load.band).toEqual([expect.closeTo(3.92 * 0.55, 9), expect.closeTo(3.92 * 0.75, 9)]);
    for (const pieceG of [0, -1, Number.NaN]) {
      expect(() => glycaemicLoad(wet, { pieceG })).toThrow(
        expect.objectContaining({ parameter: 'pieceG', received: pieceG }),
      );
    }
  });
});

describe('the share of the polyol guide', () => {
  it('lets a grown-up of 60 kg four or five sweets of isomalt, and a child of 20 one', () => {
    const adult = answer(polyolShare(isomalt, { pieceG: 4, bodyMassKg: 60 }));
    expect(1 / adult.share).toBeCloseTo(18 / 4, 9);
    expect(adult.pieces).toBe(4);
    const child = answer(polyolShare(isomalt, { pieceG: 4 }));
    expect(child.share).toBeCloseTo(4 / 6, 9);
    expect(child.pieces).toBe(1);
    expect(child.band).toEqual([expect.closeTo(4 / 9, 9), expect.closeTo(1, 9)]);
    expect(child.caution).toBe('polyol-child');
  });

  it('adds up several, each by its own guide', () => {
    const mixed = mixture([
      { ingredient: 'sorbitol', massG: 50, drySolidsMassFraction: 1 },
      { ingredient: 'erythritol', massG: 50, drySolidsMassFraction: 1 },
    ]);
    const { share, polyolsG } = answer(polyolShare(mixed, { pieceG: 10 }));
    expect(share).toBeCloseTo(5 / 3 + 5 / 9.2, 9);
    expect(polyolsG).toBeCloseTo(10, 9);
  });

  it('has no answer without sugar alcohols, and refuses an impossible body', () => {
    expect(polyolShare(salt, { pieceG: 4 })).toEqual({ kind: 'none', reason: 'no-polyols' });
    for (const bodyMassKg of [0, 0.9, 501, Number.NaN]) {
      expect(() => polyolShare(isomalt, { pieceG: 4, bodyMassKg })).toThrow(
        expect.objectContaining({ parameter: 'bodyMassKg', received: bodyMassKg }),
      );
    }
    expect(() => polyolShare(isomalt, { pieceG: 0 })).toThrow(
      expect.objectContaining({ parameter: 'pieceG' }),
    );
  });
});

describe('xylitol and a dog', () => {
  const eaten = (doseMgPerKg: number) =>
    xylitolForDog({ eatenG: doseMgPerKg / 100, xylitolMassFraction: 1, dogKg: 10 });

  it.each([
    [74.9, 'no-published-line'],
    [75, 'careful-line'],
    [99.9, 'careful-line'],
    [100, 'low-blood-sugar'],
    [499.9, 'low-blood-sugar'],
    [500, 'liver'],
    [5000, 'liver'],
  ])('at %f mg/kg: %s', (dose, reached) => {
    const result = eaten(dose);
    expect(result.doseMgPerKg).toBeCloseTo(dose, 9);
    expect(result.reached).toBe(reached);
    expect(result.caution).toBe('dogs-xylitol');
  });

  it('says the same at every dose: phone a vet at once', () => {
    const none = xylitolForDog({ eatenG: 1, xylitolMassFraction: 0, dogKg: 30 });
    for (const result of [none, eaten(1), eaten(75), eaten(5000)]) {
      expect(result.doThis).toBe('phone-a-vet-or-an-animal-poison-line-at-once');
      expect(JSON.stringify(result)).not.toMatch(/safe|harmless|\bok\b|fine/i);
    }
  });

  it('names the heaviest dog one sweet takes to each line', () => {
    const { heaviestDogKg } = xylitolForDog({ eatenG: 3, xylitolMassFraction: 0.97, dogKg: 29 });
    expect(heaviestDogKg.careful).toBeCloseTo(38.8, 9);
    expect(heaviestDogKg.lowBloodSugar).toBeCloseTo(29.1, 9);
    expect(heaviestDogKg.liver).toBeCloseTo(5.82, 9);
  });

  it('refuses what cannot be meant', () => {
    const good = { eatenG: 3, xylitolMassFraction: 0.97, dogKg: 29 };
    for (const [key, value] of [
      ['eatenG', 0],
      ['xylitolMassFraction', 97],
      ['xylitolMassFraction', -0.1],
      ['dogKg', 0],
      ['dogKg', Number.NaN],
    ] as const) {
      expect(() => xylitolForDog({ ...good, [key]: value })).toThrow(
        expect.objectContaining({ name: 'ModelRangeError', parameter: key, received: value }),
      );
    }
  });
});
