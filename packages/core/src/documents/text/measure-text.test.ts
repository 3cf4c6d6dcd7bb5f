import { Buffer } from 'node:buffer';
import { describe, expect, it } from 'vitest';
import { nestingDepth, utf8Bytes } from './measure-text.js';

describe('the size of a text', () => {
  it.each(['', 'sugar', 'süß ½', '糖 º €', '🍬🍭 mixed å', '\u0000\u007f\u0080\u07ff\u0800\uffff'])(
    'of %j is counted as it would be sent',
    (text) => {
      expect(utf8Bytes(text)).toBe(Buffer.byteLength(text, 'utf8'));
    },
  );
});

describe('the depth of a text', () => {
  it.each([
    ['1', 0],
    ['{}', 1],
    ['[[1], [2, [3]]]', 3],
    ['{"a[[[": "]]]{{{"}', 1],
    ['{"a\\"[": []}', 2],
    ['["\\\\", [[]]]', 3],
  ])('of %s is %i', (text, depth) => {
    expect(nestingDepth(text)).toBe(depth);
  });
});
