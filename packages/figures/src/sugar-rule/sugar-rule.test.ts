import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { mixture, solutionOf, stageLadder, sugarStage } from 'vitrose';
import { stageIdAt } from '../ladder/rung-at.js';
import { beadPlaces, waterBeads } from './bead-places.js';
import { describeSugarRule } from './describe.js';
import { rungEnds, sugarRuleGeometry, temperatureAtY, yAtTemperature } from './geometry.js';
import { SugarRule } from './sugar-rule.js';
import { sugarRuleTable } from './table.js';

const pressure = fc.integer({ min: 40_000, max: 110_000 });
const of = (pressurePa: number, more = {}) => sugarRuleGeometry({ id: 'a', pressurePa, ...more });

describe('the strip of textures', () => {
  it('never moves', () => {
    fc.assert(
      fc.property(pressure, (pressurePa) => {
        const here = of(pressurePa);
        const sea = of(101_325);
        here.ladder.rungs.forEach((rung, at) => {
          const there = sea.ladder.rungs[at];
          expect(there && rungEnds(sea, there)).toEqual(rungEnds(here, rung));
        });
      }),
    );
  });

  it('shows 18, 15, 12, 9, 5 and 2 beads of water from thread to hard crack, and none in dry sugar', () => {
    const beads = stageLadder()
      .filter((rung) => rung.kind === 'stage')
      .map((rung) => waterBeads(rung));
    expect(beads).toEqual([18, 15, 12, 9, 5, 2, 0, 0]);
  });

  it('sets beads apart in fives', () => {
    const [fifth = [0, 0], sixth = [0, 0], eleventh = [0, 0]] = [4, 5, 10].map(
      (at) => beadPlaces(18, 5)[at],
    );
    expect(sixth[0] - fifth[0]).toBeGreaterThan(5);
    expect(eleventh[0]).toBe(0);
    expect(eleventh[1] - fifth[1]).toBe(5);
  });

  it('draws a soft ball 32 wide and 14 high, and a hard ball round', () => {
    const svg = renderToString(SugarRule({ id: 'a', heightPx: 1_200 }));
    expect(svg).toContain('<ellipse rx="16" ry="7"');
    expect(svg).toContain('<circle r="11"');
    expect(svg).toMatch(/<rect class="vf-rung"[^>]* rx="12"/);
    expect(svg).toMatch(/<rect class="vf-rung"[^>]* rx="0"/);
  });
});

describe('the strip of degrees', () => {
  it('slides down as one climbs', () => {
    const tops = [0, 500, 1_000, 1_500, 2_000, 2_500].map(
      (elevationM) => sugarRuleGeometry({ id: 'a', elevationM }).slideTop,
    );
    expect([...tops].sort((one, other) => one - other)).toEqual(tops);
    expect(new Set(tops).size).toBe(tops.length);
  });

  it('leaves clear and brown where they are: no water is left to boil', () => {
    fc.assert(
      fc.property(pressure, fc.double({ min: 160, max: 176, noNaN: true }), (pressurePa, dryC) => {
        expect(yAtTemperature(of(pressurePa), dryC)).toBeCloseTo(
          yAtTemperature(of(101_325), dryC),
          6,
        );
      }),
    );
  });

  it('meets each stage at the ends the library gives it', () => {
    fc.assert(
      fc.property(pressure, (pressurePa) => {
        const geometry = of(pressurePa);
        for (const rung of stageLadder({ pressurePa })) {
          const [top, bottom] = rungEnds(geometry, rung);
          expect(yAtTemperature(geometry, rung.lowC)).toBeCloseTo(top * geometry.zoom, 6);
          expect(yAtTemperature(geometry, rung.highC)).toBeCloseTo(bottom * geometry.zoom, 6);
        }
      }),
    );
  });

  it('between those ends is off by less than a fifth of a degree from the boil itself', () => {
    for (const elevationM of [500, 1_500, 3_000]) {
      const geometry = sugarRuleGeometry({ id: 'a', elevationM });
      for (const seaLevelC of [111, 114, 119, 125, 138, 146, 152]) {
        const stage = sugarStage({
          temperatureC: temperatureAtY(geometry, geometry.scale.at(seaLevelC) * geometry.zoom),
          pressurePa: geometry.ladder.pressurePa,
        });
        expect(Math.abs((stage.seaLevelSucroseC ?? 0) - seaLevelC)).toBeLessThan(0.2);
      }
    }
  });

  it('gives back the temperature under the finger', () => {
    fc.assert(
      fc.property(
        pressure,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 480, max: 1_400 }),
        fc.integer({ min: 320, max: 1_400 }),
        (pressurePa, share, heightPx, widthPx) => {
          const geometry = of(pressurePa, { heightPx, widthPx });
          const { top, bottom, zoom } = geometry;
          const y = (top + share * (bottom - top)) * zoom;
          expect(yAtTemperature(geometry, temperatureAtY(geometry, y))).toBeCloseTo(y, 6);
          expect(y).toBeLessThanOrEqual(heightPx);
        },
      ),
    );
  });

  it('stops at its ends', () => {
    const geometry = of(101_325);
    expect(temperatureAtY(geometry, -50)).toBeCloseTo(geometry.ladder.waterBoilsAtC, 6);
    expect(temperatureAtY(geometry, 5_000)).toBeCloseTo(178, 6);
  });

  it('shows what the thermometer shows', () => {
    const svg = renderToString(SugarRule({ id: 'a', stopHereC: 142, readingOffsetK: 1 }));
    expect(svg).toMatch(/class="vf-flag-text[^>]*>143</);
    expect(svg).toContain('°C on your');
  });
});

describe('a mass of another recipe', () => {
  const drops = mixture([
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'glucose-syrup', massG: 155 },
    { ingredient: 'water', massG: 116 },
  ]);

  it('reaches each stage at its own temperature, and is told the stage the library tells it', () => {
    fc.assert(
      fc.property(pressure, fc.double({ min: 0, max: 1, noNaN: true }), (pressurePa, share) => {
        const { ladder } = of(pressurePa, { mixture: drops });
        const lowC = ladder.rungs[0]?.lowC ?? 0;
        const temperatureC = lowC + share * (159 - lowC);
        const told = sugarStage({ temperatureC, pressurePa, mixture: drops }).id;
        expect(stageIdAt(ladder, temperatureC)).toBe(told);
      }),
    );
  });

  it('of sugar alcohols has no names of stages, and no dry sugar', () => {
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.7 });
    const svg = renderToString(SugarRule({ id: 'a', mixture: isomalt, compact: true }));
    expect(svg).not.toContain('hard crack');
    expect(svg).not.toContain('clear liquid');
    expect(svg).toContain('The beads count:');
    expect(describeSugarRule({ id: 'a', mixture: isomalt, stopHereC: 150 })).toContain(
      'Stage names do not fit this mass',
    );
  });
});

describe('the rule in words', () => {
  it('tells the kitchen, how far hard crack has come down, and the stop', () => {
    expect(
      describeSugarRule({
        id: 'a',
        elevationM: 1_500,
        stopHereC: 142,
        windowHereC: [141, 144],
      }),
    ).toBe(
      'A rule with two strips, textures and degrees, for a kitchen where water boils at 95.0 °C. ' +
        'Hard crack, 149 to 154 °C for sucrose at sea level, is 143 to 149 °C here. ' +
        'Clear and brown liquid do not move with the air. ' +
        'The line stands at 142 °C, good between 141 and 144. ' +
        'Early hard crack, where most boiled drops are stopped (143 to 149 °C, 290 to 300 °F at sea level). ' +
        'For: boiled drops, lollipops. It leaves about 3 g of water in 100 g.',
    );
  });

  it('speaks Fahrenheit, and of the thermometer where it is off', () => {
    const said = describeSugarRule({ id: 'a', stopHereC: 150, readingOffsetK: 2, units: 'f' });
    expect(said).toContain('boiling water reads 215.6 °F');
    expect(said).toContain('The line stands at 306 °F');
  });

  it('without a stop speaks of none', () => {
    expect(describeSugarRule({ id: 'a' })).not.toContain('line');
  });
});

describe('the table behind the rule', () => {
  it('prints what the library answers, to the last digit', () => {
    fc.assert(
      fc.property(pressure, (pressurePa) => {
        const { rows } = sugarRuleTable(of(pressurePa));
        const ladder = stageLadder({ pressurePa });
        expect(rows).toHaveLength(ladder.length);
        ladder.forEach((rung, at) => {
          const [, there, here, water] = rows[at] ?? [];
          expect(there).toBe(
            `${rung.lowSeaLevelC.toFixed(1)} to ${rung.highSeaLevelC.toFixed(1)} °C`,
          );
          expect(here).toBe(`${rung.lowC.toFixed(1)} to ${rung.highC.toFixed(1)} °C`);
          const solids = rung.drySolidsMassFraction;
          if (solids === null) expect(water).toBe('hardly any');
          else {
            const [wet, dry] = solids.map((share) => ((1 - share) * 100).toFixed(1));
            expect(water).toBe(`${wet} to ${dry} g`);
          }
        });
      }),
    );
  });
});
