import type { BatchDocument } from '../batch/types.js';
import { tidyGrams } from '../changes/tidy-grams.js';
import { sucroseG } from '../plan/cooking/invert.js';
import { sucroseDissolvedAt } from '../plan/dissolving.js';
import type { AdviceContext } from './context.js';
import { cookTo } from './hardness.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice, Change, Remedy } from './types.js';

/** Water off the heat: a target in water or glass point has counted it already. */
export function lateWater(context: AdviceContext): Advice | undefined {
  const { outcome, lateWaterG, stop, lines } = context;
  const { lateWaterNotePoints, lateWaterMayPoints } = ADVICE_THRESHOLDS;
  const rise = outcome.moisture - outcome.baseMoisture * (outcome.baseG / outcome.finishedG);
  const counted = stop.asked === 'moisture' || stop.asked === 'glass-transition';
  if (counted || rise <= lateWaterNotePoints.value) return undefined;
  // The base must keep half a per cent of its own, or the number has no boil behind it.
  const drier = Math.max(outcome.baseMoisture, rise + DRIEST_BASE);
  const swaps: readonly Remedy[] = lines
    .filter(({ late }) => late)
    .flatMap((line): Remedy[] => {
      const to =
        line.id === 'colour-liquid'
          ? 'colour-powder'
          : line.id === 'flavour-alcohol'
            ? 'flavour-oil'
            : undefined;
      if (to === undefined) return [];
      const strength = to === 'colour-powder' ? line.drySolids.value : OIL_FOR_EXTRACT;
      const changes: Change[] = [{ path: `${line.path}/ingredient`, value: to }];
      if (line.line.drySolidsMassFraction !== undefined)
        changes.push({ path: `${line.path}/drySolidsMassFraction`, value: null });
      if ('massG' in line.line)
        changes.push({ path: `${line.path}/massG`, value: tidyGrams(line.massG * strength) });
      if ('shareOfFinished' in line.line)
        changes.push({
          path: `${line.path}/shareOfFinished`,
          value: line.line.shareOfFinished * strength,
        });
      return 'measure' in line.line
        ? []
        : [remedy(to === 'colour-powder' ? 'powder-colour' : 'oil-flavour', changes)];
    });
  return {
    code: 'late-water',
    severity: rise > lateWaterMayPoints.value ? 'may-disappoint' : 'note',
    path: '/formula',
    numbers: { lateWaterG, moistureRisePoints: rise * 100 },
    remedies: [
      ...(drier >= outcome.moisture
        ? []
        : [
            remedy('cook-the-base-drier', [cookTo({ toMoistureMassFraction: drier }, context)], {
              moistureMassFraction: drier,
            }),
          ]),
      ...swaps,
    ],
  };
}

const DRIEST_BASE = 0.005;

/** Nobody weighs a twentieth of a gram of water. */
const NOT_WEIGHED_G = 0.05;

/** An oil does with a tenth what an extract does: common practice. */
const OIL_FOR_EXTRACT = 0.1;

/** Sucrose must be in solution before the boil, or its grains seed the sweet. */
export function tooLittleWaterToDissolve({
  batch,
  pots,
  firstBoilC,
}: AdviceContext): Advice | undefined {
  const { waterToDissolvePerSucrose } = ADVICE_THRESHOLDS;
  const waterG = pots.charge.waterG;
  const sucrose = sucroseG(pots.charge);
  if (sucrose === 0 || waterG + NOT_WEIGHED_G >= waterToDissolvePerSucrose.value * sucrose)
    return undefined;
  const neededWaterG = Math.ceil(waterToDissolvePerSucrose.value * sucrose);
  const index = batch.formula.findIndex((line) => line.ingredient === 'water' && 'massG' in line);
  const line = batch.formula[index];
  const missingG = neededWaterG - waterG;
  const dissolvedAtC = sucroseDissolvedAt({ sucroseG: sucrose, waterG });
  return {
    code: 'too-little-water-to-dissolve',
    severity: 'may-disappoint',
    path: '/formula',
    numbers: {
      waterG,
      neededWaterG,
      firstBoilC,
      ...(dissolvedAtC === undefined ? {} : { dissolvedAtC }),
    },
    remedies: [
      remedy(
        'more-water',
        [
          line !== undefined && 'massG' in line
            ? {
                path: `/formula/${index}/massG`,
                value: Math.ceil((line.massG + missingG) * 10) / 10,
              }
            : {
                path: '/formula/-',
                value: { ingredient: 'water', massG: Math.ceil(missingG * 10) / 10 },
              },
        ],
        { neededWaterG },
      ),
      ...syrupForPowder(batch, missingG),
    ],
  };
}

/** More water than dissolves the sugar is boiled away again, minute for minute. */
export function muchWater({ batch, pots, cooking }: AdviceContext): Advice | undefined {
  const { muchWaterPerSucrose, waterToDissolvePerSucrose } = ADVICE_THRESHOLDS;
  const { waterG } = pots.charge;
  const sucrose = sucroseG(pots.charge);
  if (sucrose === 0 || waterG <= muchWaterPerSucrose.value * sucrose) return undefined;
  const wantedG = Math.ceil(USUAL_WATER * sucrose);
  const spareG = waterG - wantedG;
  const minutes =
    cooking === undefined || cooking.powerIntoPanW.value === 0
      ? undefined
      : (spareG * EVAPORATION_KJ_PER_G * 1_000) / (cooking.powerIntoPanW.value * 60);
  const index = batch.formula.findIndex(
    (line) => line.ingredient === 'water' && 'massG' in line && line.massG > spareG,
  );
  const line = batch.formula[index];
  return {
    code: 'much-water',
    severity: 'note',
    path: '/formula',
    numbers: {
      waterG,
      neededWaterG: Math.ceil(waterToDissolvePerSucrose.value * sucrose),
      ...(minutes === undefined ? {} : { longerMin: minutes }),
    },
    remedies:
      line === undefined || !('massG' in line)
        ? powderForSyrup(batch, waterG - muchWaterPerSucrose.value * sucrose)
        : [
            remedy(
              'less-water',
              [{ path: `/formula/${index}/massG`, value: tidyGrams(line.massG - spareG) }],
              { waterG: line.massG - spareG },
            ),
          ],
  };
}

/** A third of the sucrose and a little more: common practice. */
const USUAL_WATER = 0.4;
const EVAPORATION_KJ_PER_G = 2.257;

/** Powder in the place of the syrup, without the water the syrup brought. */
function powderForSyrup(batch: BatchDocument, tooMuchG: number): readonly Remedy[] {
  const index = batch.formula.findIndex((line) => line.ingredient === 'glucose-syrup');
  const line = batch.formula[index];
  if (line === undefined || !('massG' in line)) return [];
  const { massG } = line;
  const solids = line.drySolidsMassFraction ?? SYRUP_SOLIDS;
  const driedG = (massG * solids) / DRIED_SOLIDS;
  if (massG - driedG <= tooMuchG) return [];
  const changes: Change[] = [
    { path: `/formula/${index}/ingredient`, value: 'dried-glucose-syrup' },
    ...(line.drySolidsMassFraction === undefined
      ? []
      : [{ path: `/formula/${index}/drySolidsMassFraction`, value: null }]),
    { path: `/formula/${index}/massG`, value: tidyGrams(driedG) },
  ];
  return [remedy('powder-for-syrup', changes)];
}

/** Powder wants the water its syrup would bring, and syrup brings it. */
function syrupForPowder(batch: BatchDocument, missingG: number): readonly Remedy[] {
  const index = batch.formula.findIndex((line) => line.ingredient === 'dried-glucose-syrup');
  const line = batch.formula[index];
  if (line === undefined || !('massG' in line)) return [];
  const solids = line.drySolidsMassFraction ?? DRIED_SOLIDS;
  const syrupG = (line.massG * solids) / SYRUP_SOLIDS;
  if (syrupG - line.massG < missingG) return [];
  return [
    remedy('syrup-for-powder', [
      { path: `/formula/${index}/ingredient`, value: 'glucose-syrup' },
      ...(line.drySolidsMassFraction === undefined
        ? []
        : [{ path: `/formula/${index}/drySolidsMassFraction`, value: null }]),
      { path: `/formula/${index}/massG`, value: tidyGrams(syrupG) },
    ]),
  ];
}

/** As they are sold: common practice. */
const SYRUP_SOLIDS = 0.8,
  DRIED_SOLIDS = 0.96;
