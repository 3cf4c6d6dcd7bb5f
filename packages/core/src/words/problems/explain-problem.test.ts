import { describe, expect, it } from 'vitest';
import type { ProblemCode } from '../../job/batch/problems.js';
import { explainError, explainProblem } from './explain-problem.js';
import { PROBLEM_WORDS, RANGE_ERROR_WORDS } from './problem-words.js';

const codes = Object.keys(PROBLEM_WORDS) as ProblemCode[];

describe('a problem', () => {
  it('names its place in words', () => {
    expect(
      explainProblem({ code: 'not-a-number', path: '/formula/1/massG', received: 'lots' }).text,
    ).toBe('Line 2 of the formula: The mass should be a number; ‘lots’ is written there.');
    expect(explainProblem({ code: 'missing', path: '/cook', known: [] }).place).toBe('the target');
    expect(
      explainProblem({ code: 'only-starch-syrup', path: '/ingredients/my-syrup/conversion' }).text,
    ).toBe(
      'Your ingredient ‘my-syrup’: Only a starch syrup has the conversion. Take it out, or change the ingredient.',
    );
    expect(
      explainProblem({ code: 'not-json', path: '', numbers: { line: 3, column: 14 } }).text,
    ).toBe('This is not JSON. Look for a missing comma, quote or bracket near line 3, column 14.');
  });

  it('says nothing twice', () => {
    expect(
      explainProblem({ code: 'unknown-field', path: '/cok', received: {}, known: ['cook'] }).text,
    ).toBe('There is no field ‘cok’. Did you mean ‘cook’?');
    expect(explainProblem({ code: 'missing', path: '/cook' }).text).toBe('Fill in the target.');
    expect(explainProblem({ code: 'unknown-field', path: '/pan/colour' }).text).toBe(
      'The pan: There is no field ‘colour’. Take it out.',
    );
  });

  it('says mold where that is the word, and leaves the names of fields alone', () => {
    expect(
      explainProblem({ code: 'unknown-field', path: '/mould/colour' }, { units: 'us' }).text,
    ).toBe('The mold: There is no field ‘colour’. Take it out.');
  });

  it('says what was probably meant', () => {
    expect(
      explainProblem({
        code: 'perhaps-fahrenheit',
        path: '/cook/toSeaLevelC',
        received: 300,
        numbers: { asCelsiusC: 148.89 },
      }).text,
    ).toBe('The target: 300 °C? Probably 300 °F: then write 148.9.');
    expect(
      explainProblem({
        code: 'perhaps-a-percentage',
        path: '/room/relativeHumidity',
        received: 55,
        numbers: { asFraction: 0.55 },
      }).text,
    ).toBe('The room: Fractions run from 0 to 1. Is 55 a percentage? Then write 0.55.');
    expect(
      explainProblem({
        code: 'unknown-name',
        path: '/formula/0/ingredient',
        received: 'sucrse',
        known: ['sucrose'],
      }).text,
    ).toBe('Line 1 of the formula: ‘sucrse’ is not a name known here. Did you mean ‘sucrose’?');
    expect(
      explainProblem({
        code: 'one-of',
        path: '/formula/0',
        received: ['massG', 'measure'],
        known: ['massG', 'measure'],
      }).text,
    ).toBe('Line 1 of the formula: Give exactly one of ‘massG’ and ‘measure’.');
  });

  it('gives limits in the unit of the field, and fractions as fractions', () => {
    expect(
      explainProblem({
        code: 'outside-range',
        path: '/pan/diameterMm',
        received: 5,
        limits: [40, 900],
      }).text,
    ).toBe('The pan: The diameter can lie between 40 mm and 90 cm; 5 is written there.');
    expect(
      explainProblem({
        code: 'outside-range',
        path: '/pieces/lossFraction',
        received: -1,
        limits: [0, 0.5],
      }).text,
    ).toBe('The pieces: The loss can lie between 0 and 0.5; -1 is written there.');
    expect(
      explainProblem({
        code: 'not-whole',
        path: '/pieces/count',
        received: 2.5,
        limits: [1, 1000],
        numbers: { wholeBelow: 2, wholeAbove: 3 },
      }).text,
    ).toBe('The pieces: The number of pieces is a whole number: 2 or 3?');
  });

  it('never takes a bare dram', () => {
    const { text } = explainProblem({
      code: 'which-dram',
      path: '/formula/3/measure/unit',
      received: 'dram',
    });
    expect(text).toContain('3.70 ml');
    expect(text).toContain('1.77 g');
  });

  it('carries the labels of its remedies', () => {
    const { remedies } = explainProblem({
      code: 'beyond-the-knee',
      path: '/cook/toGlassTransitionC',
      remedies: [
        { code: 'stop-at-the-knee', changes: [], numbers: { kneeReadingC: 166 } },
        { code: 'less-xylitol', changes: [] },
      ],
    });
    expect(remedies.map(({ label }) => label)).toEqual(['Stop at 166 °C (331 °F)', 'Less xylitol']);
  });

  it.each(codes)('has something to say even when it is told nothing else: %s', (code) => {
    const { text } = explainProblem({ code, path: '/formula/0/massG' });
    expect(text).toMatch(/^Line 1 of the formula: \S.*[.?]$/);
    expect(text).not.toMatch(/[{}|]|undefined/);
  });
});

it.each(Object.keys(RANGE_ERROR_WORDS) as (keyof typeof RANGE_ERROR_WORDS)[])(
  'says what to change when a function refuses: %s',
  (code) => {
    expect(explainError(code)).toMatch(/\.$/);
  },
);
