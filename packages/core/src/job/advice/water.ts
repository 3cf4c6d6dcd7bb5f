import { sucroseDissolvedAt } from '../plan/dissolving.js';
import { tidy } from './amounts.js';
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
        changes.push({ path: `${line.path}/massG`, value: tidy(line.massG * strength) });
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
  const sucroseG = pots.charge.solids.reduce(
    (sum, solid) => sum + (solid.kind === 'pure' && solid.species === 'sucrose' ? solid.massG : 0),
    0,
  );
  if (sucroseG === 0 || waterG + NOT_WEIGHED_G >= waterToDissolvePerSucrose.value * sucroseG)
    return undefined;
  const neededWaterG = Math.ceil(waterToDissolvePerSucrose.value * sucroseG);
  const index = batch.formula.findIndex((line) => line.ingredient === 'water' && 'massG' in line);
  const line = batch.formula[index];
  const missingG = neededWaterG - waterG;
  const dissolvedAtC = sucroseDissolvedAt({ sucroseG, waterG });
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
    ],
  };
}
