import {
  inversionAfterCookingTable as afterTable,
  inversionTgCostTable as costTable,
  inversionActivationEnergyTable as energyTable,
  residuals,
  inversionCandyScenariosTable as scenariosTable,
  type TableId,
  inversionVukovTable as vukovTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  acidity,
  evaporateTo,
  INVERSION_CONSTANTS,
  inversion,
  inversionRate,
  isNone,
  mixture,
  scaleMixture,
  solutionOf,
} from 'vitrose';

/** The largest difference of every compared column. */
const worstOf = (id: TableId) =>
  Object.fromEntries(
    residuals(id).map(({ column, worst }) => [column, Math.abs(worst.difference)] as const),
  );

describe(`inversionRate against ${vukovTable.id}: ${vukovTable.source.title}`, () => {
  const rate = (temperatureC: number) =>
    inversionRate({ pH: 3, temperatureC, waterGPerMl: 0.4 }).ratePerMin;

  it('carries the printed constants', () => {
    const [row] = vukovTable.rows;
    expect(INVERSION_CONSTANTS.log10PerMin.value).toBe(row.log10A);
    expect(INVERSION_CONSTANTS.slopeK.value).toBe(row.slopeK);
    expect(10 ** row.log10A / row.a).toBeCloseTo(1, 5);
    expect((row.slopeK * Math.LN10) / row.activationOverRK).toBeCloseTo(1, 5);
  });

  it('runs 10.5 times faster at 150 °C than at 120, and 25 times than at 110', () => {
    expect(rate(150) / rate(120)).toBeCloseTo(10.5, 1);
    expect(rate(150) / rate(110)).toBeCloseTo(25, 0);
  });

  it.each(energyTable.rows)('keeps to $activationEnergyKJPerMol kJ/mol within 1 %', (row) => {
    const between = 1 / (95 + 273.15) - 1 / (105 + 273.15);
    const energy = (0.008314462618 * Math.log(rate(105) / rate(95))) / between;
    expect(Math.abs(energy / row.activationEnergyKJPerMol - 1)).toBeLessThanOrEqual(0.01);
  });

  it('falls 2.3 times for ten degrees less near 125 °C', () => {
    expect(rate(130) / rate(120)).toBeCloseTo(2.28, 2);
  });
});

describe('pH on the water phase', () => {
  const syrup = solutionOf('sucrose', { drySolidsMassFraction: 0.65 });
  const acids = { 'tartaric-acid': 0.995 * 0.021 };

  it('gives boiling syrup with 0.021 % tartaric acid 2.79, and 66 % of it inverted in 20 min', () => {
    expect(acidity({ waterG: syrup.waterG, acids }).pH).toBeCloseTo(2.79, 2);
    const result = inversion(syrup, { temperatureC: 104, minutes: 20, acids });
    if (isNone(result)) throw new Error(result.reason);
    // 66.3 where the water that is eaten is left out.
    expect(Math.abs(100 * result.invertedFraction - 66.3)).toBeLessThanOrEqual(1);
  });

  it('by the litre of syrup it would be half as much, which nobody measured', () => {
    // A litre of this syrup weighs 1.27 kg at the boil and holds 0.44 kg of water.
    const { pH } = acidity({ waterG: syrup.waterG / 0.444, acids });
    const share =
      1 - Math.exp(-20 * inversionRate({ pH, temperatureC: 104, waterGPerMl: 0.444 }).ratePerMin);
    expect(share).toBeCloseTo(0.48, 2);
  });
});

describe(`inversion against ${afterTable.id}: ${afterTable.source.title}`, () => {
  it('meets the low, the damped and the upper column within 0.2 points', () => {
    const worst = worstOf('inversion-after-cooking');
    expect(Object.keys(worst)).toHaveLength(3);
    for (const difference of Object.values(worst)) expect(difference).toBeLessThanOrEqual(0.2);
  });

  it.each([
    [0.975, 48.7],
    [0.98, 38.8],
  ])('cannot invert more than the water allows: at %f dry %f %%', (dry, percent) => {
    const of = scaleMixture(solutionOf('sucrose', { drySolidsMassFraction: dry }), 10);
    const result = inversion(of, { temperatureC: 145, minutes: 60, acids: { 'citric-acid': 10 } });
    if (isNone(result)) throw new Error(result.reason);
    expect(Math.abs(100 * result.invertedFraction - percent)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(100 * result.band[1] - percent)).toBeLessThanOrEqual(0.1);
    expect(result.limitedByWater).toBe(true);
  });

  it('nor 60:40 at 2.0 % more than 64.6 %', () => {
    const sweet = evaporateTo(
      mixture([
        { ingredient: 'sucrose', massG: 600 },
        {
          ingredient: 'maltodextrin',
          massG: 400,
          drySolidsMassFraction: 1,
          dextroseEquivalent: 42,
        },
        { ingredient: 'water', massG: 300 },
      ]),
      { drySolidsMassFraction: 0.98 },
    );
    const result = inversion(sweet, {
      temperatureC: 145,
      minutes: 60,
      acids: { 'citric-acid': 10 },
    });
    if (isNone(result)) throw new Error(result.reason);
    expect(Math.abs(100 * result.band[1] - 64.6)).toBeLessThanOrEqual(0.1);
  });
});

describe(`inversion against ${scenariosTable.id}: ${scenariosTable.source.title}`, () => {
  it('meets every column within 0.3 points', () => {
    const worst = worstOf('inversion-candy-scenarios');
    expect(Object.keys(worst)).toHaveLength(4);
    for (const difference of Object.values(worst)) expect(difference).toBeLessThanOrEqual(0.3);
  });
});

describe(`invertedMixture against ${costTable.id}: ${costTable.source.title}`, () => {
  it('meets water within 0.05 % and temperatures within 0.3 K', () => {
    const worst = worstOf('inversion-tg-cost');
    expect(Object.keys(worst)).toHaveLength(6);
    for (const [column, difference] of Object.entries(worst)) {
      expect(difference, column).toBeLessThanOrEqual(column.includes('Water') ? 0.05 : 0.3);
    }
  });
});
