import type { StageGapId, StageId } from '../../models/stages/types.js';

/** A stage, a gap between two stages, or what lies outside them all. */
export type StageOrGapId = StageId | StageGapId | 'too-thin' | 'dry' | 'burnt';
