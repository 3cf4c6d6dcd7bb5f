import { type ModelRangeError, unknownName } from '../../foundation/validity/model-range-error.js';
import type { BatchDocument } from '../batch/types.js';
import type { Change } from './types.js';

/**
 * The batch document with the changes of a remedy made.
 *
 * The given document stays as it was. `null` takes a field out; `-` at the end of a list appends.
 *
 * @param batch - The document a remedy was offered for.
 * @param changes - The `changes` of a remedy.
 * @returns a new document.
 * @throws {@link ModelRangeError} if a path leads nowhere.
 * @example
 * const warmer = applyChanges(
 *   { format: 'vitrose.batch/1', formula: [{ ingredient: 'sucrose', massG: 200 }], cook: { toSeaLevelC: 148 } },
 *   [{ path: '/cook/toSeaLevelC', value: 150 }],
 * );
 * warmer.cook // { toSeaLevelC: 150 }
 */
export function applyChanges(batch: BatchDocument, changes: readonly Change[]): BatchDocument {
  const copy: unknown = JSON.parse(JSON.stringify(batch));
  for (const { path, value } of changes) applyChange(copy, path, value);
  return copy as BatchDocument;
}

function applyChange(root: unknown, path: string, value: unknown): void {
  const keys = path
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
  const last = keys.pop();
  let parent = root;
  for (const key of keys) {
    if (!isContainer(parent)) throw leadsNowhere(path);
    // A remedy may fill in a whole group the cook left out.
    if (parent[key] === undefined) parent[key] = {};
    parent = parent[key];
  }
  if (last === undefined || !isContainer(parent)) throw leadsNowhere(path);
  if (Array.isArray(parent) && last === '-') parent.push(value);
  else if (value !== null) parent[last] = value;
  else if (Array.isArray(parent)) parent.splice(Number(last), 1);
  else delete parent[last];
}

function isContainer(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function leadsNowhere(path: string): ModelRangeError {
  return unknownName('path', path, 'A change must point into the document');
}
