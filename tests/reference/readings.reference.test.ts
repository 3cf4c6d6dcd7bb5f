import {
  densityBrixBaumeTable as baumeTable,
  syrupSolidsBaumeTable as drumTable,
  densityRiIcumsa1974Table as refractionTable,
  syrupRefractiveIndexTable as syrupTable,
  densityRiTemperatureTable as temperatureTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  baumeFromBrix,
  brixFromRefractiveIndex,
  brixTemperatureCorrection,
  drySolidsFromCommercialBaume,
  glucoseSyrupCommercialBaume,
  glucoseSyrupRefractiveIndex,
  REFRACTION_COEFFICIENTS,
  REFRACTION_POINTS,
  refractiveIndexFromBrix,
  SYRUP_REFRACTION_COEFFICIENTS,
} from 'vitrose';

describe(`baumeFromBrix against ${baumeTable.id}: ${baumeTable.source.title}`, () => {
  /** Rows the source rounded by hand to one decimal. */
  const ONE_DECIMAL = [20, 30, 40, 50, 70, 75, 90];

  it.each(baumeTable.rows)('gives $baume at $brix °Bx', ({ brix, baume }) => {
    const within = ONE_DECIMAL.includes(brix) ? 0.25 : 0.05;
    expect(Math.abs(baumeFromBrix(brix).baume - baume)).toBeLessThanOrEqual(within);
  });
});

describe(`refractiveIndexFromBrix against ${refractionTable.id}: ${refractionTable.source.title}`, () => {
  it.each(refractionTable.rows)('gives $refractiveIndex at $brix °Bx', (row) => {
    const { refractiveIndex } = refractiveIndexFromBrix(row.brix);
    expect(Math.abs(refractiveIndex - row.refractiveIndex)).toBeLessThanOrEqual(6e-6);
    // The printed digit of the index is worth less than a hundredth of a degree Brix.
    const { brix } = brixFromRefractiveIndex(row.refractiveIndex);
    expect(Math.abs(brix - row.brix)).toBeLessThanOrEqual(0.005);
  });

  it('has the coefficients and the points printed beside the table', () => {
    for (const coefficient of REFRACTION_COEFFICIENTS.coefficients) {
      expect(refractionTable.constants.equation).toContain(Math.abs(coefficient).toString());
    }
    const beyond = refractionTable.rows.filter(({ brix }) => brix > 85);
    expect(REFRACTION_POINTS.points).toEqual(
      beyond.map(({ brix, refractiveIndex }) => [brix, refractiveIndex]),
    );
  });
});

describe(`brixTemperatureCorrection against ${temperatureTable.id}: ${temperatureTable.source.title}`, () => {
  it.each(temperatureTable.rows)(
    'adds $correctionBrix to $readBrix °Bx at $temperatureC °C',
    (row) => {
      const answer = brixTemperatureCorrection({
        brix: row.readBrix,
        temperatureC: row.temperatureC,
      });
      if ('reason' in answer) throw new Error(answer.reason);
      expect(Math.abs(answer.correctionBrix - row.correctionBrix)).toBeLessThanOrEqual(0.02);
      expect(answer.warnings).toEqual([]);
    },
  );
});

describe(`glucoseSyrupRefractiveIndex against ${syrupTable.id}: ${syrupTable.source.title}`, () => {
  const columns = [
    [20, 'indexAt20C'],
    [30, 'indexAt30C'],
    [45, 'indexAt45C'],
    [60, 'indexAt60C'],
  ] as const;

  it.each(syrupTable.rows)('meets the row of $drySolidsPercent % at four temperatures', (row) => {
    for (const [temperatureC, column] of columns) {
      const { refractiveIndex, warnings } = glucoseSyrupRefractiveIndex({
        drySolidsMassFraction: row.drySolidsPercent / 100,
        temperatureC,
      });
      expect(Math.abs(refractiveIndex - row[column]), column).toBeLessThanOrEqual(5e-5);
      expect(warnings).toEqual([]);
    }
  });

  it('knows 66 % at 45 °C, which is misprinted, as it should read', () => {
    const { refractiveIndex } = glucoseSyrupRefractiveIndex({
      drySolidsMassFraction: 0.66,
      temperatureC: 45,
    });
    expect(Math.abs(refractiveIndex - 1.45768)).toBeLessThanOrEqual(5e-5);
  });

  it('has the coefficients printed beside the table', () => {
    const { at20C, perK, perK2 } = SYRUP_REFRACTION_COEFFICIENTS;
    const printed = syrupTable.constants.equation
      .replaceAll('−', '-')
      .match(/\d+\.\d+(?:e-\d)?/g)
      ?.map(Number);
    expect(printed).toEqual([...at20C, ...perK, ...perK2].map(Math.abs));
  });
});

describe(`commercial Baumé against ${drumTable.id}: ${drumTable.source.title}`, () => {
  it.each(drumTable.rows)('reads DE $dextroseEquivalent at $commercialBaume °Bé', (row) => {
    const { drySolidsMassFraction } = drySolidsFromCommercialBaume(row);
    expect(Math.abs(100 * drySolidsMassFraction - row.drySolidsPercent)).toBeLessThanOrEqual(0.3);
    const { band } = glucoseSyrupCommercialBaume({
      dextroseEquivalent: row.dextroseEquivalent,
      drySolidsMassFraction: row.drySolidsPercent / 100,
    });
    expect(band[0]).toBeLessThanOrEqual(row.commercialBaume);
    expect(band[1]).toBeGreaterThanOrEqual(row.commercialBaume);
  });
});
