import { describe, expect, it } from 'vitest';
import { jsonFault, lineAndColumn } from './json-fault.js';

describe('the place where a text stops being JSON', () => {
  it.each([
    ['', 0],
    ['xyz', 0],
    ['{"a": 1,}', 8],
    ['{"a" 1}', 5],
    ["{'a': 1}", 1],
    ['{"a": 1', 7],
    ['[1, 2', 5],
    ['[1 2]', 3],
    ['{"a": 01}', 7],
    ['{"a": 1.}', 7],
    ['{"a": +1}', 6],
    ['{"a": NaN}', 6],
    ['"open', 5],
    ['"a\nb"', 2],
    ['"bad \\x escape"', 5],
    ['{} {}', 3],
    ['{"massG": 1,2}', 12],
  ])('of %j is %i', (text, at) => {
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
    expect(jsonFault(text)).toBe(at);
  });

  it.each(['0', ' {"a": [1, -2.5e3, "\\u00e9\\n", true, null, {}]} ', '[]', '""', '\t[ ]\r\n'])(
    'is nowhere in %j',
    (text) => {
      expect(() => JSON.parse(text)).not.toThrow();
      expect(jsonFault(text)).toBeUndefined();
    },
  );

  it('is told by line and column, whatever ends a line', () => {
    expect(lineAndColumn('ab', 0)).toEqual({ line: 1, column: 1 });
    expect(lineAndColumn('a\nbc\r\nd\re', 9)).toEqual({ line: 4, column: 2 });
  });
});
