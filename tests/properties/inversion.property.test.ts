import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  acidity,
  bufferForPH,
  type Inversion,
  type InversionOptions,
  inversion,
  inversionRate,
  invertedMixture,
  isNone,
  type Mixture,
  mixture,
  swapAcid,
  thermalLoad,
} from 'vitrose';

const share = fc.double({ min: 0.05, max: 1, noNaN: true });
const pan = fc
  .record({ sucrose: share, syrup: share, water: fc.double({ min: 0.001, max: 1, noNaN: true }) })
  .map(({ sucrose, syrup, water }) =>
    mixture([
      { ingredient: 'sucrose', massG: 1_000 * sucrose },
      { ingredient: 'dried-glucose-syrup', massG: 1_000 * syrup, drySolidsMassFraction: 1 },
      { ingredient: 'water', massG: 1_000 * water },
    ]),
  );
const acid = fc.constantFrom(
  'citric-acid',
  'malic-acid',
  'tartaric-acid',
  'lactic-acid',
  'potassium-hydrogen-tartrate',
);
const grams = fc.double({ min: 0, max: 20, noNaN: true });
const held = fc.record({
  temperatureC: fc.double({ min: 20, max: 170, noNaN: true }),
  minutes: fc.double({ min: 0, max: 60, noNaN: true }),
});
/** A boil: hotter and drier from point to point. */
const boil = fc
  .array(fc.record({ s: share, k: share, w: share }), { minLength: 1, maxLength: 12 })
  .map((pieces) => {
    let [timeS, temperatureC, water] = [0, 104, 0.5];
    const start = { timeS, temperatureC, drySolidsMassFraction: 1 / (1 + water) };
    return [
      start,
      ...pieces.map(({ s, k, w }) => {
        timeS += 300 * s;
        temperatureC += 5 * k;
        water *= w;
        return { timeS, temperatureC, drySolidsMassFraction: 1 / (1 + water) };
      }),
    ];
  });

function inverted(of: Mixture, options: InversionOptions): Inversion {
  const result = inversion(of, options);
  if (isNone(result)) throw new Error(result.reason);
  return result;
}

it('splits no more sugar than there is, nor than the water allows', () => {
  fc.assert(
    fc.property(pan, held, acid, grams, (of, heat, species, massG) => {
      const options = { ...heat, acids: { [species]: massG } };
      const { invertedFraction, band, invertedG, waterConsumedG } = inverted(of, options);
      expect(invertedFraction).toBeGreaterThanOrEqual(0);
      expect(band[1]).toBeLessThanOrEqual(1);
      expect(waterConsumedG).toBeCloseTo(0.05263 * invertedG, 9);
      expect(waterConsumedG).toBeLessThanOrEqual(of.waterG * (1 + 1e-9));
      const sucroseG = invertedG / Math.max(invertedFraction, Number.MIN_VALUE);
      if (invertedG > 0) {
        expect(0.05263 * band[1] * sucroseG).toBeLessThanOrEqual(of.waterG * (1 + 1e-9));
      }
    }),
  );
});

it('has its middle inside its band', () => {
  fc.assert(
    fc.property(pan, boil, acid, grams, (of, path, species, massG) => {
      const { invertedFraction, band } = inverted(of, { path, acids: { [species]: massG } });
      expect(band[0]).toBeLessThanOrEqual(invertedFraction);
      expect(band[1]).toBeGreaterThanOrEqual(invertedFraction);
    }),
  );
});

it('keeps the mass of what it holds hot, to the last gram', () => {
  fc.assert(
    fc.property(pan, held, grams, (of, heat, massG) => {
      const { mixture: after } = inverted(of, { ...heat, acids: { 'citric-acid': massG } });
      expect(after.massG).toBeCloseTo(of.massG + massG, 6);
    }),
  );
});

it('holds no more water after a boil than the path says', () => {
  fc.assert(
    fc.property(pan, boil, grams, (of, path, massG) => {
      const { mixture: after } = inverted(of, { path, acids: { 'citric-acid': massG } });
      const dry = path[path.length - 1]?.drySolidsMassFraction ?? 1;
      const dryG = of.massG - of.waterG;
      expect(after.waterG).toBeLessThanOrEqual((dryG * (1 - dry)) / dry + 1e-9);
      expect(after.waterG).toBeGreaterThanOrEqual(0);
    }),
  );
});

/** What stepping may add to a share. */
const STEPPING = 2e-3;

it('inverts more in more time, and when hotter', () => {
  const more = fc.double({ min: 0, max: 20, noNaN: true });
  fc.assert(
    fc.property(pan, held, more, more, grams, (of, heat, minutes, warmerK, massG) => {
      const acids = { 'citric-acid': massG };
      const here = inverted(of, { ...heat, acids }).invertedFraction;
      const longer = { ...heat, minutes: heat.minutes + minutes, acids };
      const hotter = { ...heat, temperatureC: heat.temperatureC + warmerK, acids };
      expect(inverted(of, longer).invertedFraction).toBeGreaterThanOrEqual(here - STEPPING);
      expect(inverted(of, hotter).invertedFraction).toBeGreaterThanOrEqual(here - STEPPING);
    }),
  );
});

it('inverts more with more acid, and less the later it joins', () => {
  const later = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(pan, boil, acid, grams, grams, later, (of, path, species, a, b, along) => {
      const at = (massG: number, acidsFromS = 0) =>
        inverted(of, { path, acids: { [species]: massG }, acidsFromS }).invertedFraction;
      const little = at(Math.min(a, b));
      const much = at(Math.max(a, b));
      expect(much).toBeGreaterThanOrEqual(little - STEPPING);
      const endS = path[path.length - 1]?.timeS ?? 0;
      expect(at(Math.max(a, b), along * endS)).toBeLessThanOrEqual(much + STEPPING);
    }),
  );
});

it('does not depend on how much there is in the pan', () => {
  fc.assert(
    fc.property(
      boil,
      grams,
      fc.double({ min: 0.1, max: 50, noNaN: true }),
      (path, massG, times) => {
        const of = (factor: number) =>
          inverted(
            mixture([
              { ingredient: 'sucrose', massG: 1_000 * factor },
              { ingredient: 'water', massG: 400 * factor },
            ]),
            { path, acids: { 'malic-acid': massG * factor }, alkalinityMmolPerL: 2 },
          ).invertedFraction;
        expect(of(times)).toBeCloseTo(of(1), 9);
      },
    ),
  );
});

it('grows tenfold with each pH less, and with every degree', () => {
  const pH = fc.double({ min: 0, max: 8, noNaN: true });
  const temperatureC = fc.double({ min: 0, max: 199, noNaN: true });
  fc.assert(
    fc.property(pH, temperatureC, (at, warmC) => {
      const rate = (ph: number, c: number) =>
        inversionRate({ pH: ph, temperatureC: c, waterGPerMl: 0.3 }).ratePerMin;
      expect(rate(at, warmC) / rate(at + 1, warmC)).toBeCloseTo(10, 9);
      expect(rate(at, warmC + 1)).toBeGreaterThan(rate(at, warmC));
    }),
  );
});

it('turns sourer with acid and with every drop of water gone, milder with soda', () => {
  const waterG = fc.double({ min: 1, max: 1_000, noNaN: true });
  const salt = fc.constantFrom('sodium-citrate', 'sodium-lactate', 'sodium-bicarbonate');
  fc.assert(
    fc.property(acid, grams, grams, waterG, salt, (species, massG, addG, water, soda) => {
      const pH = (acids: object, g = water) =>
        acidity({ waterG: g, acids }, { temperatureC: 100, syrupPH: 7 }).pH;
      const here = pH({ [species]: massG });
      expect(pH({ [species]: massG + addG })).toBeLessThanOrEqual(here + 1e-6);
      expect(pH({ [species]: massG }, water / 2)).toBeLessThanOrEqual(here + 1e-6);
      expect(pH({ [species]: massG, [soda]: addG })).toBeGreaterThanOrEqual(here - 1e-6);
      expect(here).toBeLessThanOrEqual(7);
    }),
  );
});

it('brings the water to the pH that was wanted', () => {
  const waterG = fc.double({ min: 1, max: 1_000, noNaN: true });
  const target = fc.double({ min: 1.5, max: 4.5, noNaN: true });
  fc.assert(
    fc.property(acid, grams, waterG, target, (species, massG, water, targetPH) => {
      const buffer = bufferForPH({ waterG: water, acids: { [species]: massG } }, { targetPH });
      const before = acidity({ waterG: water, acids: { [species]: massG } }, { syrupPH: 9 }).pH;
      if (isNone(buffer)) {
        expect(before).toBeGreaterThanOrEqual(targetPH - 1e-6);
        return;
      }
      expect(buffer.sodiumCitrateG).toBeGreaterThan(0);
      const acids = { [species]: massG, 'sodium-citrate': buffer.sodiumCitrateG };
      expect(acidity({ waterG: water, acids }).pH).toBeCloseTo(targetPH, 6);
    }),
  );
});

it('keeps mass when sugar is split, and its water share once it is taken back', () => {
  fc.assert(
    fc.property(pan, fc.double({ min: 0, max: 1, noNaN: true }), (of, invertedFraction) => {
      const wet = invertedMixture(of, { invertedFraction, takesWaterBack: true });
      if (isNone(wet)) throw new Error(wet.reason);
      expect(wet.waterG / wet.massG).toBeCloseTo(of.waterG / of.massG, 9);
      const late = invertedMixture(of, { invertedFraction });
      if (isNone(late)) {
        expect(late.reason).toBe('not-enough-water');
        return;
      }
      expect(late.massG).toBeCloseTo(of.massG, 6);
      expect(late.waterG).toBeLessThanOrEqual(of.waterG);
    }),
  );
});

it('swaps an acid there and back', () => {
  const sour = fc.constantFrom('citric-acid', 'malic-acid', 'tartaric-acid', 'lactic-acid');
  const by = fc.constantFrom('sourness', 'titration');
  fc.assert(
    fc.property(sour, sour, grams, by, (from, to, massG, how) => {
      const there = swapAcid({ from, to, massG, by: how });
      const back = swapAcid({ from: to, to: from, massG: there.massG, by: how });
      expect(back.massG).toBeCloseTo(massG, 9);
      expect(there.band[0]).toBeLessThanOrEqual(there.massG);
      expect(there.band[1]).toBeGreaterThanOrEqual(there.massG);
    }),
  );
});

it('counts more heat where it is hotter or longer, and adds up', () => {
  fc.assert(
    fc.property(boil, fc.boolean(), (path, reducing) => {
      const { minutesAt150C, band } = thermalLoad(path, { reducing });
      expect(band[0]).toBeLessThanOrEqual(minutesAt150C);
      expect(band[1]).toBeGreaterThanOrEqual(minutesAt150C);
      const warmer = path.map((point) => ({ ...point, temperatureC: point.temperatureC + 1 }));
      expect(thermalLoad(warmer, { reducing }).minutesAt150C).toBeGreaterThan(minutesAt150C);
      const cut = Math.floor(path.length / 2);
      const first = thermalLoad(path.slice(0, cut + 1), { reducing }).minutesAt150C;
      const second = thermalLoad(path.slice(cut), { reducing }).minutesAt150C;
      expect(first + second).toBeCloseTo(minutesAt150C, 9);
    }),
  );
});
