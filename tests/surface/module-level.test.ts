import { describe, expect, it } from 'vitest';
import { coreFiles } from './core-files.js';
import { doneOnLoad } from './module-level.js';

const planted = (text: string): readonly string[] => doneOnLoad({ path: 'planted.ts', text });

describe('loading the library', () => {
  // Two entries put their parts together when asked for: the shapes of the documents, and the
  // bibliography. Whoever asks for one of them asks for all of it.
  const files = coreFiles().filter(
    (file) => !file.path.startsWith('documents/') && file.path !== 'sources/index.ts',
  );

  it('is looked at file by file', () => {
    expect(files.map((file) => file.path)).toContain('index.ts');
  });

  it('computes nothing', () => {
    expect(files.flatMap(doneOnLoad)).toEqual([]);
  });
});

describe('the check of what is done on load', () => {
  it.each([
    `import { a } from './a.js';`,
    `export { a } from './a.js';`,
    `export type A = { readonly a: number };`,
    `export const ZERO_C_IN_K = 273.15;`,
    `export const COLDEST_C = -273.15;`,
    `const SPAN = [-2_000, 11_000] as const;`,
    `export const TABLE = { a: { value: 1, source, grade: 'derived' } } as const satisfies T;`,
    `export const BOTH = { ONE, second: TWO, rows: [FIRST, SECOND] };`,
    `export const double = (x: number): number => Math.max(x, 2 * x);`,
    `export function half(x: number): number { return new Map([[1, x / 2]]).get(1) ?? 0; }`,
    `export class OutOfRangeError extends RangeError { readonly code = make(); }`,
  ])('has nothing against %s', (text) => {
    expect(planted(text)).toEqual([]);
  });

  it.each([
    `export const SET = new Set(['a']);`,
    `export const FROZEN = Object.freeze({ a: 1 });`,
    `const KEYS = Object.keys(TABLE) as readonly string[];`,
    `export const TABLE = { a: { value: Math.exp(2) } } as const;`,
    `export const TABLE = { a: [1, Number('2')] };`,
    `export const TABLE = { [name('a')]: 1 };`,
    `export const TABLE = { get a() { return 1; } };`,
    `export const DAY_S = 24 * 3_600;`,
    `export const SPAN = [1 - 1e-6, 1 + 1e-6] as const;`,
    `export const BOTH = { ...ONE, b: 2 };`,
    `export const ROWS = [...FIRST, 2];`,
    `export const FIRST = ROWS[0];`,
    `export const LOW = TABLE.low;`,
    `export const NONE = Number.NaN;`,
    `export const TITLE = \`\${NAME}, cooked\`;`,
    `export const LOW = ROWS[first()];`,
    `export const PICKED = WARM ? 1 : 2;`,
    `export const { a } = TABLE;`,
    `export let count = 0;`,
    `export enum Stage { Thread }`,
    `export class Kitchen { pressurePa = 101_325; }`,
    `export class KitchenError extends Error { static made = make(); }`,
    `register('vitrose');`,
    `if (true) { start(); }`,
    `export default 4;`,
  ])('catches %s', (text) => {
    expect(planted(text)).toHaveLength(1);
  });
});
