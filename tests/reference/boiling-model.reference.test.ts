import { boilingVacuumTable, boilingModelTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { boilingPoint, type Mixture, mixture, type Part, solutionOf, waterActivity } from 'vitrose';

const syrup = (massG: number): Part => ({
  ingredient: 'glucose-syrup',
  massG,
  drySolidsMassFraction: 1,
  dextroseEquivalent: 42,
});

/** Dry parts of each solute the table names, 100 g in all. */
const DRY: Readonly<Record<(typeof table.rows)[number]['solute'], readonly Part[]>> = {
  sucrose: [{ ingredient: 'sucrose', massG: 100 }],
  'invert sugar (50/50)': [
    { ingredient: 'glucose', massG: 50 },
    { ingredient: 'fructose', massG: 50, drySolidsMassFraction: 1 },
  ],
  'glucose syrup 42 DE': [syrup(100)],
  '60 sucrose/40 syrup 42 DE (dry mass)': [{ ingredient: 'sucrose', massG: 60 }, syrup(40)],
  isomalt: [{ ingredient: 'isomalt', massG: 100, drySolidsMassFraction: 1 }],
  '90 isomalt/10 xylitol': [
    { ingredient: 'isomalt', massG: 90, drySolidsMassFraction: 1 },
    { ingredient: 'xylitol', massG: 10, drySolidsMassFraction: 1 },
  ],
};

const massOf = (row: (typeof table.rows)[number]): Mixture =>
  mixture([
    ...DRY[row.solute],
    {
      ingredient: 'water',
      massG: (100 * (1 - row.dissolvedMassFraction)) / row.dissolvedMassFraction,
    },
  ]);

const hasSyrup = (row: (typeof table.rows)[number]): boolean => row.solute.includes('syrup');

describe(`the boiling model against ${table.id}, ${table.source.locator}`, () => {
  it.each(table.rows)(
    'boils $solute at $dissolvedMassFraction under $pressurePa Pa at $boilingPointC °C',
    (row) => {
      const { boilingPointC } = boilingPoint(massOf(row), { pressurePa: row.pressurePa });
      // The printed syrup rows hold the interaction rounded to 0.10; the profile of 42 DE gives 0.101.
      expect(Math.abs(boilingPointC - row.boilingPointC)).toBeLessThanOrEqual(
        hasSyrup(row) ? 0.03 : 0.01,
      );
    },
  );

  it.each(table.rows)(
    'gives $solute at $dissolvedMassFraction and $boilingPointC °C an activity of $waterActivity',
    (row) => {
      const found = waterActivity(massOf(row), { temperatureC: row.boilingPointC });
      expect(Math.abs(found.waterActivity - row.waterActivity)).toBeLessThanOrEqual(
        // An interaction 0.001 off moves the logarithm by no more than that.
        hasSyrup(row) ? 1e-3 * row.waterActivity : 1e-4,
      );
    },
  );
});

const sucrose = (drySolidsMassFraction: number): Mixture =>
  solutionOf('sucrose', { drySolidsMassFraction });

describe(`the boiling model against ${boilingVacuumTable.id}`, () => {
  it.each(boilingVacuumTable.rows)('boils cooler under $vacuumMmHg mmHg of vacuum', (row) => {
    for (const [dissolved, printedC] of [
      [0.95, row.boilingPointAt950PerMilleC],
      [0.97, row.boilingPointAt970PerMilleC],
      [0.98, row.boilingPointAt980PerMilleC],
      [0.985, row.boilingPointAt985PerMilleC],
      [0.99, row.boilingPointAt990PerMilleC],
    ] as const) {
      const { boilingPointC } = boilingPoint(sucrose(dissolved), { pressurePa: row.pressurePa });
      expect(Math.abs(boilingPointC - printedC), `at ${dissolved}`).toBeLessThanOrEqual(0.1);
    }
  });
});
