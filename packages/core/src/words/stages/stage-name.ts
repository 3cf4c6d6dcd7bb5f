import type { StageId } from '../../models/stages/types.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions, StageWords } from '../types.js';
import type { StageOrGapId } from './ids.js';
import { STAGE_WORDS } from './stage-words.js';

/** Figures of a chart, as charts print them; on a page of one scale, on that scale alone. */
const CHART = {
  earlyHardCrack: { metric: '143 to 149 °C', us: '290 to 300 °F' },
  thread: { metric: '5 cm', us: '2 inches' },
} as const;

/**
 * The name of a stage, or of the gap between two.
 *
 * @param id - A stage id, a gap id such as `between-soft-crack-and-hard-crack`, `too-thin` or `burnt`.
 * @param options - Region: first colour, or first color.
 * @example
 * stageName('between-soft-crack-and-hard-crack') // 'early hard crack'
 */
export function stageName(
  id: StageId | StageOrGapId | (string & {}),
  options: DisplayOptions = {},
): string {
  const words: StageWords | undefined = isStage(id) ? STAGE_WORDS[id] : undefined;
  return words?.name === undefined ? id.replaceAll('-', ' ') : spelled(words.name, options);
}

/**
 * What a stage or a gap is, and what it is good for.
 *
 * @param id - A stage id, a gap id, `too-thin` or `burnt`.
 * @param options - Units and region; without units both scales are named.
 * @returns a sentence and a use; the bare name for an id that is none of these.
 * @example
 * stageSentence('firm-ball') // 'Firm ball: it keeps its shape and gives under a light press. For: soft caramels.'
 */
export function stageSentence(
  id: StageId | StageOrGapId | (string & {}),
  options: DisplayOptions = {},
): string {
  if (!isStage(id)) return `${stageName(id, options)}.`;
  const { sentence, use } = STAGE_WORDS[id];
  const whole = `${sentence} For: ${use.charAt(0).toLowerCase()}${use.slice(1)}`;
  return spelled(whole, options).replace(/\{(\w+)\}/g, (_, key: keyof typeof CHART) => {
    const { metric, us } = CHART[key];
    return options.units === undefined ? `${metric}, ${us}` : CHART[key][options.units];
  });
}

/**
 * How a drop behaves in cold water. It shows the texture itself, so altitude does not change it.
 *
 * @param id - A stage id or a gap id.
 * @param options - Region: straw-coloured, or straw-colored.
 * @example
 * coldWaterDrop('soft-ball') // 'it gathers to a soft ball'
 */
export function coldWaterDrop(id: StageOrGapId, options: DisplayOptions = {}): string {
  return spelled(STAGE_WORDS[id].coldWater, options);
}

/** Whether the words know this id. */
export function isStage(id: string): id is StageOrGapId {
  return Object.hasOwn(STAGE_WORDS, id);
}
