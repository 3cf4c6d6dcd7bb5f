import type { Problem } from '../../job/batch/problems.js';
import { DOCUMENT_CAPS } from '../caps.js';
import { jsonFault, lineAndColumn } from './json-fault.js';
import { nestingDepth, utf8Bytes } from './measure-text.js';

/** What a JSON text says, or the one reason it says nothing. */
export type Parsed =
  | { readonly value: unknown; readonly problem?: undefined }
  | { readonly problem: Problem };

/** Parses a text, once its size and depth are known to be harmless. */
export function parseText(text: string): Parsed {
  const { bytes, depth } = DOCUMENT_CAPS;
  if (text.length > bytes || utf8Bytes(text) > bytes) {
    return { problem: { code: 'too-large', path: '', limits: [0, bytes] } };
  }
  if (nestingDepth(text) > depth) {
    return { problem: { code: 'too-deep', path: '', limits: [0, depth] } };
  }
  // Some editors put an invisible mark before the first sign of a file.
  const json = text.replace(/^\uFEFF/, '');
  try {
    return { value: JSON.parse(json) };
  } catch {
    const numbers = lineAndColumn(json, jsonFault(json) ?? json.length);
    return { problem: { code: 'not-json', path: '', numbers } };
  }
}
