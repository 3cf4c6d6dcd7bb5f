import {
  nutritionAcidsFlavourColourTable as dosesTable,
  inversionPhRowsTable as phTable,
  inversionPkaTable as pkaTable,
  residuals,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  ACID_DOSES,
  ACIDS,
  type AcidSpecies,
  acidity,
  EQUAL_SOURNESS,
  SODIUM_CITRATE_DIHYDRATE_G_PER_MOL,
  type SourAcid,
  swapAcid,
} from 'vitrose';

describe(`the constants of acidity against ${pkaTable.id}: ${pkaTable.source.title}`, () => {
  const known: Readonly<Record<string, AcidSpecies>> = {
    citric: 'citric-acid',
    tartaric: 'tartaric-acid',
    'potassium hydrogen tartrate': 'potassium-hydrogen-tartrate',
    malic: 'malic-acid',
    lactic: 'lactic-acid',
  };
  const rows = pkaTable.rows.filter(({ acid }) => known[acid] !== undefined);

  it('leaves out two acids no sweet is made with, and crystal water', () => {
    expect(rows).toHaveLength(pkaTable.rows.length - 3);
  });

  it.each(rows)('are those of $acid', (row) => {
    const species = known[row.acid];
    if (species === undefined) throw new Error(row.acid);
    const { molarMassGPerMol, pKa } = ACIDS[species];
    expect(molarMassGPerMol.value).toBe(row.molarMassGPerMol);
    const printed = [row.pka1, row.pka2, row.pka3].filter((one) => one !== null);
    expect(pKa.map(({ value }) => value)).toEqual(printed);
  });

  it('weighs salts by the atoms in them', () => {
    const [hydrogen, carbon, oxygen, sodium] = [1.008, 12.011, 15.999, 22.99];
    const citrate = 6 * carbon + 5 * hydrogen + 7 * oxygen + 3 * sodium;
    expect(ACIDS['sodium-citrate'].molarMassGPerMol.value).toBeCloseTo(citrate, 1);
    const dihydrate = citrate + 2 * (2 * hydrogen + oxygen);
    expect(SODIUM_CITRATE_DIHYDRATE_G_PER_MOL.value).toBeCloseTo(dihydrate, 1);
    const lactate = 3 * carbon + 5 * hydrogen + 3 * oxygen + sodium;
    expect(ACIDS['sodium-lactate'].molarMassGPerMol.value).toBeCloseTo(lactate, 1);
    const bicarbonate = hydrogen + carbon + 3 * oxygen + sodium;
    expect(ACIDS['sodium-bicarbonate'].molarMassGPerMol.value).toBeCloseTo(bicarbonate, 1);
  });
});

describe(`acidity against ${phTable.id}: ${phTable.source.title}`, () => {
  it('meets every row within a thousandth of a pH', () => {
    const [ph] = residuals('inversion-ph-rows');
    expect(ph?.rows).toHaveLength(phTable.rows.length);
    expect(Math.abs(ph?.worst.difference ?? 1)).toBeLessThanOrEqual(0.001);
  });

  const cream = phTable.rows.filter((row) => row.cationMolPerKg === row.acidMolPerKg);
  it.each(cream)('gives cream of tartar, $acidMolPerKg mol/kg, pH $ph', (row) => {
    const massG = row.acidMolPerKg * ACIDS['potassium-hydrogen-tartrate'].molarMassGPerMol.value;
    const { pH } = acidity({ waterG: 1_000, acids: { 'potassium-hydrogen-tartrate': massG } });
    expect(Math.abs(pH - row.ph)).toBeLessThanOrEqual(0.001);
  });

  it('puts a saturated solution a tenth over the 3.56 usually quoted, inside the band', () => {
    const { pH, band } = acidity({
      waterG: 1_000,
      acids: { 'potassium-hydrogen-tartrate': 100 },
    });
    expect(pH).toBeCloseTo(3.67, 2);
    expect(band[0]).toBeLessThan(3.56);
  });
});

describe(`acids in ${dosesTable.id}: ${dosesTable.source.title}`, () => {
  const sold: Readonly<Record<string, readonly [SourAcid, number]>> = {
    'citric-anhydrous': ['citric-acid', 1],
    malic: ['malic-acid', 1],
    tartaric: ['tartaric-acid', 1],
    'lactic-88': ['lactic-acid', 0.88],
  };
  const rows = dosesTable.rows.flatMap((row) => {
    const [acid, purity] = sold[row.id] ?? [];
    return acid === undefined || purity === undefined ? [] : [{ ...row, acid, purity }];
  });

  it.each(rows)('$id: doses and sourness as printed, titration to the digit', (row) => {
    const { low, value, high } = ACID_DOSES[row.acid];
    expect(low / row.purity).toBeCloseTo(row.doseLowPercent ?? Number.NaN, 9);
    expect(value / row.purity).toBeCloseTo(row.doseTypicalPercent ?? Number.NaN, 9);
    expect(high / row.purity).toBeCloseTo(row.doseHighPercent ?? Number.NaN, 9);
    const sour = EQUAL_SOURNESS[row.acid].value / row.purity;
    expect(sour).toBeCloseTo(row.equalSournessMass ?? Number.NaN, 9);
    const { massG } = swapAcid({ from: 'citric-acid', to: row.acid, massG: 1, by: 'titration' });
    expect(Math.abs(massG / row.purity - (row.equalTitratableMass ?? 0))).toBeLessThanOrEqual(
      0.0005,
    );
  });
});
