import { isNone } from '../../../foundation/results/is-none.js';
import type { Span } from '../../../foundation/results/types.js';
import { ACIDS, type AcidMasses, SYRUP_PH } from '../../../matter/acids/index.js';
import { totalG } from '../../../matter/mixture/assemble.js';
import { combine } from '../../../matter/mixture/index.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { boilDownPoint } from '../../../models/heat/index.js';
import { INVERSION_DOMAIN_C, inversion, invertedMixture } from '../../../models/inversion/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { fillPots, type Pots, type WeighedLine } from '../outcome.js';
import type { Boil } from './boil.js';

/** What the boil did to the sucrose. */
export type EarlyInversion = {
  /** Of the sucrose, acid and the syrup's own pH together. */
  readonly fraction: number;
  readonly band: Span;
  /** What of it acid did: the part the plan's other numbers count. */
  readonly byAcid: number;
  readonly limitedByWater: boolean;
};

/** What a line of acid is in water. */
type AcidSpecies = keyof AcidMasses;

/**
 * Inversion along the boil. Several acids that join at different times all count from the first of
 * them, the less kind end. Any boil is hotter and drier than the law was tested: every plan would
 * carry that warning, so the figure's own band says it instead.
 */
export function invertInTheBoil({
  lines,
  pots,
  batch,
  boil,
}: {
  readonly lines: readonly WeighedLine[];
  readonly pots: Pots;
  readonly batch: BatchDocument;
  readonly boil: Boil;
}): EarlyInversion | undefined {
  const acidLines = lines.filter(
    ({ record, late, massG }) => record.kind === 'acid' && !late && massG > 0,
  );
  const rest = fillPots(lines.filter((line) => !acidLines.includes(line)))?.base ?? pots.base;
  const without = withoutHoneyAcid(rest, lines);
  if (sucroseG(without) === 0) return undefined;
  const shared = {
    path: withinHeat(boil.path, INVERSION_DOMAIN_C[1]),
    ...waterOf(batch, lines),
    syrupPH: ownPH(lines),
  };
  const own = inversion(without, shared);
  if (isNone(own)) return undefined;
  if (acidLines.length === 0) {
    const { invertedFraction, band, limitedByWater } = own;
    return { fraction: invertedFraction, band, byAcid: 0, limitedByWater };
  }
  const acidsFromS = Math.min(...acidLines.map(({ when }) => joinsAtS(when, boil)));
  const sour = inversion(without, { ...shared, acids: acidsOf(acidLines), acidsFromS });
  if (isNone(sour)) return undefined;
  return {
    fraction: sour.invertedFraction,
    band: sour.band,
    byAcid: Math.max(0, sour.invertedFraction - own.invertedFraction),
    limitedByWater: sour.limitedByWater,
  };
}

/** The pots with this fraction of the sucrose of the base inverted. */
export function invertedPots(pots: Pots, fraction: number): Pots {
  if (fraction === 0) return pots;
  const base = invertedMixture(pots.base, { invertedFraction: fraction });
  return isNone(base) ? pots : { ...pots, base };
}

/** Grams of each acid and salt, dry, in these lines. */
export function acidsOf(lines: readonly WeighedLine[]): AcidMasses {
  const masses: Partial<Record<AcidSpecies, number>> = {};
  for (const { record, massG, drySolids } of lines) {
    for (const [species, share] of Object.entries(record.solids ?? {})) {
      if (!(species in ACIDS)) continue;
      const id = species as AcidSpecies;
      masses[id] = (masses[id] ?? 0) + massG * drySolids.value * share;
    }
  }
  return masses;
}

/** The water of this kitchen, as far as it neutralises acid. */
export function waterOf(
  { water }: BatchDocument,
  lines: readonly WeighedLine[],
): { readonly alkalinityMmolPerL?: number; readonly tapWaterG?: number } {
  const alkalinityMmolPerL = water?.alkalinityMmolPerL;
  if (alkalinityMmolPerL === undefined) return {};
  const tapWaterG = lines.reduce(
    (sum, { id, late, massG }) => sum + (id === 'water' && !late ? massG : 0),
    0,
  );
  return tapWaterG === 0 ? {} : { alkalinityMmolPerL, tapWaterG };
}

/** Acidity of syrup and honey together, by their solids. */
export function ownPH(lines: readonly WeighedLine[]): number | undefined {
  // Without honey the model's own guess stands, with its band.
  if (!lines.some(({ id, late, massG }) => id === 'honey' && !late && massG > 0)) return undefined;
  let acid = 0;
  let dryG = 0;
  for (const { id, late, massG, drySolids } of lines) {
    if (late) continue;
    const solidsG = massG * drySolids.value;
    acid += solidsG * 10 ** -(id === 'honey' ? SYRUP_PH.honey.value : SYRUP_PH.syrup.value);
    dryG += solidsG;
  }
  return dryG === 0 ? undefined : -Math.log10(acid / dryG);
}

function joinsAtS(when: WeighedLine['when'], { path, down }: Boil): number {
  if (when === 'start' || when === 'off-heat') return 0;
  if (when === 'first-boil') return down.firstBoilS;
  const point = boilDownPoint(path, { temperatureC: when.atC });
  return isNone(point) ? (path[path.length - 1]?.timeS ?? 0) : point.timeS;
}

/** Everything that is sucrose in a mixture, g. */
export function sucroseG({ solids }: Mixture): number {
  return solids.reduce(
    (sum, solid) => sum + (solid.kind === 'pure' && solid.species === 'sucrose' ? solid.massG : 0),
    0,
  );
}

/** A path up to where the law ends; what is hotter has lost its sugar otherwise. */
export function withinHeat<Point extends { readonly temperatureC: number }>(
  path: readonly Point[],
  hottestC: number,
): readonly Point[] {
  return path.filter(({ temperatureC }) => temperatureC <= hottestC);
}

/** The acid of honey is in its own pH, buffered as honey is; as free acid it would count twice. */
export function withoutHoneyAcid(mixed: Mixture, lines: readonly WeighedLine[]): Mixture {
  const honey = acidsOf(
    lines.filter(({ id, late, massG }) => id === 'honey' && !late && massG > 0),
  );
  if (Object.keys(honey).length === 0) return mixed;
  const solids = mixed.solids.flatMap((solid) => {
    if (solid.kind !== 'pure' || !(solid.species in honey)) return [solid];
    const massG = solid.massG - (honey[solid.species as AcidSpecies] ?? 0);
    return massG > SAME_G ? [{ ...solid, massG }] : [];
  });
  return combine([
    { ...mixed, solids, massG: totalG(solids) + totalG(mixed.apart) + mixed.waterG },
  ]);
}

const SAME_G = 1e-9;
