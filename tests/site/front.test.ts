import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isNone, temperatureAtKitchen } from 'vitrose';
import { frontQuestion, planAt } from '../../site/src/front/question.js';
import { readReading } from '../../site/src/front/read-reading.js';
import { FRONT_RECIPES, type FrontRecipeId } from '../../site/src/front/recipes.js';
import { showStop } from '../../site/src/front/show-stop.js';
import { stopHere } from '../../site/src/front/stop-here.js';

const ids = Object.keys(FRONT_RECIPES) as FrontRecipeId[];
const readings = [82, 88.3, 91, 93.7, 95.8, 97.4, 99.1, 100, 101.6];

describe('the front page, by boiling points alone', () => {
  it.each(ids)('stops %s where the whole plan stops it, in every kitchen', (id) => {
    const question = frontQuestion(id, FRONT_RECIPES[id]);
    for (const readingC of readings) {
      const { target } = planAt(FRONT_RECIPES[id], readingC);
      const here = stopHere(question, readingC);
      expect(here.stopC).toBeCloseTo(target.readingC.value, 3);
      expect(here.windowC[0]).toBeCloseTo(target.exactWindowReadingC[0], 3);
      expect(here.windowC[1]).toBeCloseTo(target.exactWindowReadingC[1], 3);
    }
  });

  it.each(ids)('names no reading for %s that lies outside its window', (id) => {
    const question = frontQuestion(id, FRONT_RECIPES[id]);
    for (const readingC of readings) {
      const here = stopHere(question, readingC);
      for (const fahrenheit of [false, true]) {
        const { low, high } = showStop(here, fahrenheit);
        const own = (value: number): number => (fahrenheit ? value * 1.8 + 32 : value);
        expect(Number(low)).toBeGreaterThanOrEqual(own(here.windowC[0]) - 0.051);
        expect(Number(high)).toBeLessThanOrEqual(own(here.windowC[1]) + 0.051);
      }
    }
  });

  it('says 143 to a kitchen whose water reads 95.8', () => {
    const question = frontQuestion('lemon-drops', FRONT_RECIPES['lemon-drops']);
    expect(showStop(stopHere(question, 95.8), false).stop).toBe('143');
  });
});

describe('a reading in boiling water', () => {
  it.each([
    ['95,8', 95.8],
    [' 95.8 °C ', 95.8],
    ['100', 100],
    ['204.44 F', 95.8],
    ['212', 100],
  ])('is understood from %j', (entry, celsius) => {
    const read = readReading(entry);
    expect(read.kind === 'reading' && read.temperatureC).toBeCloseTo(celsius, 2);
  });

  it.each([
    ['', 'unreadable'],
    ['hot', 'unreadable'],
    ['1/2', 'unreadable'],
    ['60', 'too-low'],
    ['120', 'too-high'],
    ['100 F', 'too-low'],
    ['300', 'too-high'],
  ])('is refused from %j as %s', (entry, kind) => {
    expect(readReading(entry).kind).toBe(kind);
  });
});

it('prints in four lines what the library answers', () => {
  const lines = readFileSync(
    new URL('../../site/src/front/four-lines.mjs', import.meta.url),
    'utf8',
  );
  const said = Number(/\/\/ ([\d.]+)/.exec(lines)?.[1]);
  const here = temperatureAtKitchen({ temperatureC: 148, elevationM: 1_500 });
  expect(lines).toContain('{ temperatureC: 148, elevationM: 1_500 }');
  expect(isNone(here) ? Number.NaN : Number(here.temperatureC.toFixed(2))).toBe(said);
});
