import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { WRAP_FILM_IDS, WRAP_FILMS } from './films.js';
import { moisturePickUp } from './moisture-pick-up.js';
import type { WrapLife } from './wrap-life.js';
import { wrapLife } from './wrap-life.js';

const dryG = 97.5;
const sweet: Mixture = mixture([
  { ingredient: 'sucrose', massG: 0.6 * dryG },
  { ingredient: 'dried-glucose-syrup', massG: 0.4 * dryG, drySolidsMassFraction: 1 },
  { ingredient: 'water', massG: 2.5 },
]);
const bag = { dryMassG: 200, areaCm2: 800, storeC: 25, wvtrGPerM2Day: 5 } as const;
const pop = { pieceG: 12, areaCm2: 60, storeC: 25, relativeHumidity: 0.75 } as const;

function life(...asked: Parameters<typeof wrapLife>): WrapLife {
  const answer = wrapLife(...asked);
  if (isNone(answer)) throw new Error(answer.reason);
  return answer;
}

describe('wrapLife', () => {
  it('keeps 200 g in a common film 52 days at 0.75', () => {
    const { days, daysFull, criticalRelativeHumidity, warnings } = life(sweet, {
      ...bag,
      relativeHumidity: 0.75,
    });
    expect(days).toBeCloseTo(51.55, 2);
    expect(daysFull).toBeCloseTo(51.85, 2);
    expect(criticalRelativeHumidity).toBeCloseTo(0.2985, 4);
    expect(warnings).toEqual([]);
  });

  it('reads a piece as it is weighed or dry', () => {
    const { dryMassG, ...rest } = { ...bag, relativeHumidity: 0.75 };
    const pieceG = dryMassG / 0.975;
    expect(life(sweet, { ...rest, pieceG }).days).toBeCloseTo(51.55, 2);
  });

  it('knows films by name', () => {
    const named = life(sweet, { ...pop, film: 'oriented-pp' });
    const given = life(sweet, { ...pop, wvtrGPerM2Day: 5.45 });
    expect(named.days).toBeCloseTo(given.days, 9);
    expect(named.wvtrGPerM2Day).toBe(5.45);
    for (const film of WRAP_FILM_IDS) {
      const { value, low, high } = WRAP_FILMS[film];
      expect(value).toBeCloseTo((low + high) / 2, 9);
      expect(life(sweet, { ...pop, film }).days).toBeGreaterThan(0);
    }
  });

  it('halves with a seal that lets through twice as much', () => {
    const tight = life(sweet, { ...pop, film: 'hdpe', sealFactor: 1 });
    const leaky = life(sweet, { ...pop, film: 'hdpe', sealFactor: 2 });
    expect(tight.days / leaky.days).toBeCloseTo(2, 9);
  });

  it('counts no wrap and a twist as open', () => {
    for (const film of ['none', 'twist'] as const) {
      expect(wrapLife(sweet, { ...pop, film })).toEqual({ kind: 'none', reason: 'open' });
    }
  });

  it('never reaches the critical humidity in air that is no wetter', () => {
    const { criticalRelativeHumidity: at } = life(sweet, { ...pop, film: 'pet' });
    const never = { kind: 'none', reason: 'never-reaches' };
    expect(wrapLife(sweet, { ...pop, film: 'pet', relativeHumidity: at })).toEqual(never);
    expect(wrapLife(sweet, { ...pop, film: 'pet', relativeHumidity: 0 })).toEqual(never);
    expect(life(sweet, { ...pop, film: 'pet', relativeHumidity: at + 1e-9 }).days).toBeGreaterThan(
      100,
    );
  });

  it('is no use to what is soft already, and no estimate for polyol glass', () => {
    const hot = wrapLife(sweet, { ...pop, film: 'pet', storeC: 55 });
    expect(hot).toEqual({ kind: 'none', reason: 'already-soft' });
    const fructose = solutionOf('fructose', { drySolidsMassFraction: 1 });
    expect(wrapLife(fructose, { ...pop, film: 'pet' })).toMatchObject({ reason: 'already-soft' });
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.99 });
    expect(wrapLife(isomalt, { ...pop, film: 'pet' })).toMatchObject({ reason: 'no-estimate' });
    const xylitol = solutionOf('xylitol', { drySolidsMassFraction: 0.99 });
    expect(wrapLife(xylitol, { ...pop, film: 'pet' })).toMatchObject({
      reason: 'no-sorption-data',
    });
  });

  it('bears a tenth of sugar alcohol', () => {
    const with_ = (share: number) =>
      wrapLife(
        mixture([
          { ingredient: 'sucrose', massG: 1 - share },
          { ingredient: 'sorbitol', massG: share, drySolidsMassFraction: 1 },
        ]),
        { ...pop, film: 'pet' },
      );
    expect(isNone(with_(0.0999))).toBe(false);
    expect(with_(0.1001)).toMatchObject({ reason: 'no-estimate' });
  });

  it('goes step by step through the join of the two models', () => {
    const maltodextrin = mixture([
      { ingredient: 'maltodextrin', massG: 95, dextroseEquivalent: 5, drySolidsMassFraction: 1 },
      { ingredient: 'water', massG: 5 },
    ]);
    const { days, daysFull } = life(maltodextrin, { ...pop, film: 'pet' });
    expect(daysFull / days).toBeGreaterThan(0.9);
    expect(daysFull / days).toBeLessThan(1.2);
  });

  it.each([
    ['wvtrGPerM2Day', { ...pop, wvtrGPerM2Day: 0 }, [0.0001, 10_000]],
    ['wvtrGPerM2Day', { ...pop, wvtrGPerM2Day: 10_001 }, [0.0001, 10_000]],
    ['relativeHumidity', { ...pop, film: 'pet', relativeHumidity: 55 }, [0, 1]],
    ['areaCm2', { ...pop, film: 'pet', areaCm2: 0 }, [0.01, 100_000]],
    ['sealFactor', { ...pop, film: 'pet', sealFactor: 0.9 }, [1, 10]],
    ['pieceG', { ...pop, film: 'pet', pieceG: 0 }, [0.01, 100_000]],
    ['dryMassG', { ...bag, relativeHumidity: 0.5, dryMassG: 0 }, [0.01, 100_000]],
    ['storeC', { ...pop, film: 'pet', storeC: 61 }, [-40, 60]],
  ] as const)('refuses a %s that cannot be', (parameter, asked, limits) => {
    expect(() => wrapLife(sweet, asked as never)).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, limits }),
    );
  });

  it('asks whether 55 is a percentage', () => {
    expect(() => wrapLife(sweet, { ...pop, film: 'pet', relativeHumidity: 55 })).toThrow(
      'Is this a percentage?',
    );
  });

  it('refuses two of what excludes each other, and a film it does not know', () => {
    const both = { ...pop, film: 'pet', wvtrGPerM2Day: 5 } as never;
    expect(() => wrapLife(sweet, both)).toThrow(
      expect.objectContaining({ code: 'not-allowed-together', parameter: 'wvtrGPerM2Day' }),
    );
    const twice = { ...pop, film: 'pet', dryMassG: 5 } as never;
    expect(() => wrapLife(sweet, twice)).toThrow(
      expect.objectContaining({ code: 'not-allowed-together', parameter: 'dryMassG' }),
    );
    expect(() => wrapLife(sweet, { ...pop, film: 'toString' } as never)).toThrow(
      expect.objectContaining({ code: 'unknown-name', parameter: 'film', received: 'toString' }),
    );
    const neither: never = { ...pop } as never;
    expect(() => wrapLife(sweet, neither)).toThrow(
      expect.objectContaining({ code: 'not-a-number', parameter: 'wvtrGPerM2Day' }),
    );
  });
});

describe('the band of a wrap life', () => {
  const factors = ({ days, band }: WrapLife) => [days / band[0], band[1] / days] as const;

  it('reaches further down where nobody measured the seal', () => {
    const known = factors(life(sweet, { ...pop, film: 'oriented-pp', sealFactor: 1 }));
    const unknown = factors(life(sweet, { ...pop, film: 'oriented-pp' }));
    expect(Math.log(unknown[0]) ** 2 - Math.log(known[0]) ** 2).toBeCloseTo(Math.log(3) ** 2, 6);
    expect(unknown[1]).toBeCloseTo(known[1], 9);
  });

  it('reaches further up in a cool store, where the film is tighter', () => {
    const warm = factors(life(sweet, { ...pop, film: 'oriented-pp', storeC: 38 }));
    const wvtr = factors(life(sweet, { ...pop, film: 'oriented-pp', storeC: 25 }));
    expect(wvtr[1]).toBeGreaterThan(warm[1] * 0.9);
    expect(Math.log(wvtr[1])).toBeGreaterThan(Math.log(2));
  });

  it('begins at nought where the glass model may be wrong by all the reserve', () => {
    const damp = mixture([
      { ingredient: 'sucrose', massG: 96.2 },
      { ingredient: 'water', massG: 3.8 },
    ]);
    expect(life(damp, { ...pop, film: 'oriented-pp' }).band[0]).toBe(0);
  });

  it('is finite for foil, of which no lowest value is printed', () => {
    const [below, above] = factors(life(sweet, { ...pop, film: 'foil-laminate', sealFactor: 1 }));
    expect(below).toBeGreaterThan(2);
    expect(above).toBeGreaterThan(2);
    expect(above).toBeLessThan(5);
  });
});

describe('moisturePickUp', () => {
  const bare = {
    pieceG: 4,
    areaCm2: 12,
    relativeHumidity: 0.55,
    temperatureC: 25,
    hours: 24,
  } as const;

  it('is about a hundredth of a gram a day in an ordinary room', () => {
    expect(moisturePickUp(sweet, bare)).toMatchObject({
      takenUpG: expect.closeTo(0.0158, 4),
      band: [expect.closeTo(0.0053, 4), expect.closeTo(0.0459, 4)],
      moistureMassFraction: expect.closeTo((0.1 + 0.0158) / 4.0158, 4),
      skinMoistureMassFraction: expect.closeTo(0.1276, 4),
      skinSticks: true,
      warnings: [],
    });
  });

  it('is nothing at the start, and no more than the piece holds', () => {
    expect(moisturePickUp(sweet, { ...bare, hours: 0 })).toMatchObject({
      takenUpG: 0,
      band: [0, 0],
    });
    const crumb = moisturePickUp(sweet, {
      ...bare,
      pieceG: 0.01,
      areaCm2: 1_000,
      relativeHumidity: 0.9,
      hours: 8_760,
    });
    expect(crumb).toMatchObject({
      moistureMassFraction: expect.closeTo(
        (crumb as { skinMoistureMassFraction: number }).skinMoistureMassFraction,
        9,
      ),
    });
  });

  it('grows with the root of time while the skin is what holds it back', () => {
    const at = (hours: number) =>
      (moisturePickUp(sweet, { ...bare, hours }) as { takenUpG: number }).takenUpG;
    expect(at(4) / at(1)).toBeGreaterThan(1.95);
    expect(at(4) / at(1)).toBeLessThan(2.05);
  });

  it('tells a skin that sticks from one that does not', () => {
    const sticks = (relativeHumidity: number) =>
      (moisturePickUp(sweet, { ...bare, relativeHumidity }) as { skinSticks: boolean }).skinSticks;
    expect(sticks(0.359)).toBe(false);
    expect(sticks(0.361)).toBe(true);
  });

  it('has no answer in drier air, for polyol glass and where nothing was measured', () => {
    expect(moisturePickUp(sweet, { ...bare, relativeHumidity: 0.15 })).toEqual({
      kind: 'none',
      reason: 'air-is-drier',
    });
    const of = (species: 'isomalt' | 'xylitol') =>
      moisturePickUp(solutionOf(species, { drySolidsMassFraction: 0.99 }), bare);
    expect(of('isomalt')).toEqual({ kind: 'none', reason: 'no-estimate' });
    expect(of('xylitol')).toEqual({ kind: 'none', reason: 'no-sorption-data' });
  });

  it.each([
    ['pieceG', { pieceG: 0 }, [0.01, 100_000]],
    ['areaCm2', { areaCm2: 0 }, [0.01, 100_000]],
    ['relativeHumidity', { relativeHumidity: 0.96 }, [0, 0.95]],
    ['hours', { hours: -1 }, [0, 8_760]],
    ['temperatureC', { temperatureC: 61 }, [-40, 60]],
  ] as const)('refuses a %s that cannot be', (parameter, wrong, limits) => {
    expect(() => moisturePickUp(sweet, { ...bare, ...wrong })).toThrow(
      expect.objectContaining({ parameter, limits }),
    );
  });
});
