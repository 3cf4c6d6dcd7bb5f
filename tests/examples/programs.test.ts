import { describe, expect, it } from 'vitest';
import { expectGolden } from './golden-text.js';
import { outputOf, PROGRAMS } from './programs.js';

describe.each(PROGRAMS)('%s', (name) => {
  it('prints what was approved', async () => {
    expectGolden(name, await outputOf(name));
  });
});

describe('the boiling curve', async () => {
  const [, ...rows] = (await outputOf('boiling-curve'))
    .trim()
    .split('\n')
    .map((line) => line.split(',').map(Number));

  it('is a table of numbers', () => {
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.flat().every(Number.isFinite)).toBe(true);
  });

  it('rises as the water leaves, and lies lower on the mountain', () => {
    for (const [at, [water = 0, seaLevelC = 0, mountainC = 0]] of rows.entries()) {
      const [drier, hotter] = rows[at + 1] ?? [0, Number.POSITIVE_INFINITY];
      expect(drier).toBeLessThan(water);
      expect(hotter).toBeGreaterThan(seaLevelC);
      expect(mountainC).toBeLessThan(seaLevelC);
    }
  });
});

describe('the stage ladder', () => {
  const stopOf = (page: string, recipe: string) =>
    Number(new RegExp(`${recipe}.*stop at .* / (\\d+) °F`).exec(page)?.[1]);

  it('leaves the recipe alone at sea level, and stops sooner higher up', async () => {
    expect(stopOf(await outputOf('stage-ladder', '0'), 'fudge')).toBe(238);
    expect(stopOf(await outputOf('stage-ladder', '3000'), 'fudge')).toBeLessThan(225);
  });

  it('does not move molten sugar, which has no water left to boil', async () => {
    const clear = (page: string) => page.split('\n').find((line) => line.includes('clear liquid'));
    expect(clear(await outputOf('stage-ladder', '3000'))).toBe(
      clear(await outputOf('stage-ladder', '0')),
    );
  });
});
