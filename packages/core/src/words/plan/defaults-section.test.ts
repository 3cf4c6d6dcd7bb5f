import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { TakenDefault } from '../../job/plan/types.js';
import { TAKEN_WORDS } from '../names/taken-words.js';
import { defaultLines } from './defaults-section.js';
import { LEMON_DROPS } from './plans.fixture.js';

const job = fileURLToPath(new URL('../../job/', import.meta.url));

/** Every place a default is taken for, read from where it is taken. */
function takenPlaces(): readonly string[] {
  const calls = /(?:take|assume)(?:<\w+>)?\(\s*ledger,\s*['`]([^'`]+)['`],\s*(\S+)/g;
  const places = readdirSync(job, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts'))
    .flatMap((path) => [...readFileSync(`${job}${path}`, 'utf8').matchAll(calls)])
    .filter(([, , value = '']) => !value.startsWith("'unknown'"))
    .map(([, path = '']) => path.replace(/^\$\{(line\.)?path\}/, '/formula/*').slice(1));
  return [...new Set(places)].sort();
}

function linesOf(defaults: readonly TakenDefault[], options = {}): readonly string[] {
  return defaultLines({ ...LEMON_DROPS, defaults }, options);
}

describe('what is taken for granted', () => {
  it('has a sentence for everything a plan takes', () => {
    const places = takenPlaces();
    expect(places.length).toBeGreaterThan(15);
    expect(places.filter((place) => !Object.hasOwn(TAKEN_WORDS, place))).toEqual([]);
  });

  it('is told in kitchen words', () => {
    expect(
      linesOf([
        { path: '/cook/underVacuumPa', value: 0, grade: 'practice' },
        { path: '/kitchen/elevationM', value: 0, grade: 'assumed' },
        { path: '/mould/maxC', value: 'no-limit', grade: 'practice' },
        { path: '/pieces/massG', value: 5.83, low: 5.71, high: 5.92, grade: 'practice' },
        { path: '/pieces/lossFraction', value: 0.05, low: 0.03, high: 0.08, grade: 'practice' },
      ]),
    ).toEqual([
      'No vacuum: the pan is open (common practice).',
      'Your kitchen lies at sea level (an assumption).',
      'What you pour into bears any heat of a boil (common practice).',
      'A full cavity gives a piece of 5.8 g, from 5.7 g to 5.9 g (common practice).',
      'Left on pan and tools: 5 %, from 3 % to 8 % (common practice).',
    ]);
  });

  it('puts together ingredients that share it, by name', () => {
    const start = { value: 'start', grade: 'practice' } as const;
    expect(
      linesOf(
        [0, 1, 2].map((at) => ({ path: `/formula/${at}/when`, ...start })),
        { units: 'us' },
      ),
    ).toEqual(['In the pan from the start: sugar, corn syrup solids and water (common practice).']);
  });

  it('says water, not dry solids', () => {
    const dry = (value: number, low?: number, high?: number) =>
      linesOf([
        { path: '/formula/0/drySolidsMassFraction', value, low, high, grade: 'practice' },
      ])[0];
    expect(dry(1)).toBe('Water in sugar: none (common practice).');
    expect(dry(0.9998, 0.999, 1)).toBe('Water in sugar: none, up to 0.1 % (common practice).');
    expect(dry(0.8, 0.78, 0.84)).toBe('Water in sugar: 20 %, from 16 % to 22 % (common practice).');
  });

  it('tells in one go what nobody gave, place by place, and leaves out nothing', () => {
    const unknown = (path: string) => ({ path, value: 'unknown', grade: 'assumed' }) as const;
    expect(
      linesOf(
        [
          unknown('/mould/cavityMl'),
          unknown('/pan/diameterMm'),
          unknown('/hob'),
          unknown('/mould/moulds'),
          unknown('/formula/1/conversion'),
        ],
        { units: 'us' },
      ),
    ).toEqual([
      'Not given, so nothing is made of it: the mold (size of a cavity, number of molds); the pan (diameter); the stove; corn syrup solids (how its starch was cut).',
    ]);
  });

  it('shows a default without a sentence all the same', () => {
    expect(linesOf([{ path: '/hob/fromC', value: 20, grade: 'assumed' }])).toEqual([
      'The hob, the temperature at the start: 20 °C (68 °F) (an assumption).',
    ]);
  });
});
