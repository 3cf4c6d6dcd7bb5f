import { stagesConsensusTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { celsiusFromFahrenheit, type StageId, stageLadder, stageTarget, sugarStage } from 'vitrose';

const wet = table.rows.filter((row) => row.solidsAtMiddlePercent !== null);
const named = table.rows.filter((row) => row.stage !== 'black');

describe(`stageLadder against ${table.id}: ${table.source.title}`, () => {
  it.each(named)('gives $stage from $lowC to $highC °C at sea level', (row) => {
    const rung = stageLadder().find((one) => one.id === row.stage);
    expect(rung?.kind).toBe('stage');
    // The table rounds to a tenth, and clear liquid to a whole degree.
    expect(Math.abs((rung?.lowC ?? 0) - row.lowC)).toBeLessThanOrEqual(0.05);
    expect(Math.abs((rung?.highC ?? 0) - row.highC)).toBeLessThanOrEqual(0.05);
  });

  it.each(wet)('gives $stage its solids, $solidsAtLowPercent to $solidsAtHighPercent %', (row) => {
    const rung = stageLadder().find((one) => one.id === row.stage);
    const [low, high] = rung?.drySolidsMassFraction ?? [0, 0];
    expect(Math.abs(100 * low - (row.solidsAtLowPercent ?? 0))).toBeLessThanOrEqual(0.1);
    expect(Math.abs(100 * high - (row.solidsAtHighPercent ?? 0))).toBeLessThanOrEqual(0.1);
  });

  it.each(wet)('takes $stage for $solidsAtMiddlePercent % of solids', (row) => {
    const { drySolidsMassFraction } = stageTarget({ stage: row.stage as StageId });
    const percent = 100 * (drySolidsMassFraction ?? 0);
    expect(Math.abs(percent - (row.solidsAtMiddlePercent ?? 0))).toBeLessThanOrEqual(0.1);
  });

  it.each(named)('finds $stage in the middle of its range', (row) => {
    const middle = sugarStage({ temperatureC: celsiusFromFahrenheit((row.lowF + row.highF) / 2) });
    expect(middle.id).toBe(row.stage);
  });

  it('calls what a chart calls black burnt', () => {
    const black = table.rows.find((row) => row.stage === 'black');
    const temperatureC = celsiusFromFahrenheit((black?.lowF ?? 0) + 1);
    expect(sugarStage({ temperatureC }).kind).toBe('burnt');
  });

  it('puts the 290 to 300 °F of boiled drops into a gap', () => {
    for (const temperatureF of [291, 295, 299]) {
      expect(sugarStage({ temperatureC: celsiusFromFahrenheit(temperatureF) })).toMatchObject({
        kind: 'between',
        id: 'between-soft-crack-and-hard-crack',
      });
    }
  });
});
