import type { StageId } from '../../models/stages/types.js';
import type { StageWords } from '../types.js';
import type { StageOrGapId } from './ids.js';
import { STAGE_WORDS } from './stage-words.js';

/**
 * The name of a stage, or of the gap between two.
 *
 * @param id - A stage id, a gap id such as `between-soft-crack-and-hard-crack`, `too-thin` or `burnt`.
 * @example
 * stageName('between-soft-crack-and-hard-crack') // 'early hard crack'
 */
export function stageName(id: StageId | StageOrGapId | (string & {})): string {
  const words: StageWords | undefined = isStage(id) ? STAGE_WORDS[id] : undefined;
  return words?.name ?? id.replaceAll('-', ' ');
}

/**
 * What a stage or a gap is, and what it is good for.
 *
 * @param id - A stage id, a gap id, `too-thin` or `burnt`.
 * @returns a sentence and a use; the bare name for an id that is none of these.
 * @example
 * stageSentence('firm-ball') // 'Firm ball: it keeps its shape and gives under a light press. For: soft caramels.'
 */
export function stageSentence(id: StageId | StageOrGapId | (string & {})): string {
  if (!isStage(id)) return `${stageName(id)}.`;
  const { sentence, use } = STAGE_WORDS[id];
  return `${sentence} For: ${use.charAt(0).toLowerCase()}${use.slice(1)}`;
}

/**
 * How a drop behaves in cold water. It shows the texture itself, so altitude does not change it.
 *
 * @param id - A stage id or a gap id.
 * @example
 * coldWaterDrop('soft-ball') // 'it gathers to a soft ball'
 */
export function coldWaterDrop(id: StageOrGapId): string {
  return STAGE_WORDS[id].coldWater;
}

/** Whether the words know this id. */
export function isStage(id: string): id is StageOrGapId {
  return Object.hasOwn(STAGE_WORDS, id);
}
