import {
  type BatchDocument,
  drySolidsAtBoil,
  isNone,
  type Mixture,
  mixture,
  type Part,
  type PlanDocument,
  planBatch,
  waterVapourPressure,
} from 'vitrose';
import type { FrontRecipeId } from './recipes.js';

/** All a browser needs to find the stop of one recipe in any kitchen. */
export type FrontQuestion = {
  readonly id: FrontRecipeId;
  /** What is in the pan during the boil. */
  readonly base: Mixture;
  /** Dry solids at the low end of the window, at the stop, at its high end. */
  readonly drySolids: readonly [low: number, stop: number, high: number];
  /** Where the window ends whatever the pressure, °C; sugar burns. */
  readonly topC?: number;
  /** The stop at sea level, °C: the recipe's own number. */
  readonly seaLevelC: number;
  /** Water in the finished sweet, g in 100 g. */
  readonly waterGPer100G: number;
};

/** A reading in boiling water that means sea level, °C. */
const SEA_LEVEL_READING_C = 100;

/**
 * Plans a recipe once, at build, and keeps what does not change from kitchen to kitchen: the solids
 * at the stop and at both ends of its window. In the browser only their boiling points are left.
 */
export function frontQuestion(id: FrontRecipeId, batch: BatchDocument): FrontQuestion {
  const { target, composition } = planAt(batch, SEA_LEVEL_READING_C);
  const base = mixture(partsInPan(batch));
  const [lowC, highC] = target.exactWindowReadingC;
  const burns = target.windowEnds[1] === 'sugar-limit';
  return {
    id,
    base,
    drySolids: [solidsAt(base, lowC), solidsAt(base, target.hereC.value), solidsAt(base, highC)],
    ...(burns ? { topC: highC } : {}),
    seaLevelC: target.seaLevelC.value,
    waterGPer100G: 100 * composition.moistureMassFraction.value,
  };
}

/** The plan of a batch whose kitchen is known by one reading in boiling water. */
export function planAt(batch: BatchDocument, boilingWaterReadingC: number): PlanDocument {
  const result = planBatch({ ...batch, thermometer: { boilingWaterReadingC } });
  if (result.kind === 'refused') {
    throw new Error(`A recipe of the front page is refused: ${JSON.stringify(result.problems)}`);
  }
  return result.plan;
}

function solidsAt(base: Mixture, temperatureC: number): number {
  const { vapourPressurePa } = waterVapourPressure(SEA_LEVEL_READING_C);
  const found = drySolidsAtBoil(base, { temperatureC, pressurePa: vapourPressurePa });
  if (isNone(found)) throw new Error(`Nothing boils at ${temperatureC} °C: ${found.reason}`);
  return found.drySolidsMassFraction;
}

/** What is in the pan before the heat goes off, as parts of a mixture. */
function partsInPan({ formula }: BatchDocument): readonly Part[] {
  return formula
    .filter(({ when }) => when !== 'off-heat')
    .map(({ when: _when, ...part }) => part as Part);
}
