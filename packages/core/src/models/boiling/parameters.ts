// biome-ignore-all format: one species a line, as in a table

import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { SpeciesId } from '../../matter/species.js';

/** One solute of the boiling model, as a row of a printed table would give it. */
export type SoluteRow = readonly [
  /** g/mol: by formula, or a mean. */
  molarMassGPerMol: number,
  /** How much less tightly than sucrose it holds water, at 25 °C, mass for mass. */
  interaction: number,
  /** What the interaction may be wrong by, either way. */
  plusMinus: number,
  /** Particles one formula falls into in water; 1 if left out. */
  particles?: number,
];

/** Solutes whose interactions come from one source. Molar masses are by formula, but for the means. */
export type SoluteRows = Pedigree & {
  /** Polyols: nobody has printed their boiling above 100 °C. */
  readonly polyols?: true;
  readonly rows: Readonly<Partial<Record<SpeciesId, SoluteRow>>>;
};

/** The solute every other is measured by. */
export const REFERENCE_SOLUTE = {
  source: 'boiling-fit', grade: 'derived',
  rows: { sucrose: [342.2965, 0, 0] },
} as const satisfies SoluteRows;

/** Sugars, fitted to recalled Norrish curves: to 75 or 80 % solids, lactose only to 30. */
export const NORRISH_SUGARS = {
  source: 'norrish-1966', grade: 'memory',
  rows: {
    glucose: [180.156, -0.15, 0.05],
    fructose: [180.156, -0.16, 0.05],
    maltose: [342.2965, 0.05, 0.05],
    lactose: [342.2965, -0.03, 0.15],
  },
} as const satisfies SoluteRows;

/** Polyols, fitted to printed Norrish curves: to 75 or 80 % solids, erythritol 40, mannitol 20. */
export const NORRISH_POLYOLS = {
  source: 'polyol-review-2010', grade: 'secondary', polyols: true,
  rows: {
    sorbitol: [182.172, -0.09, 0.05],
    xylitol: [152.146, -0.19, 0.05],
    erythritol: [122.12, -0.2, 0.1],
    glycerol: [92.094, -0.45, 0.1],
    mannitol: [182.172, -0.04, 0.15],
  },
} as const satisfies SoluteRows;

/** Chains of three glucose units and more, from the isotherm of corn syrup. */
export const LONG_CHAINS = {
  source: 'sloan-labuza-1975', grade: 'secondary',
  rows: { 'syrup-oligosaccharides': [600, 0.18, 0.1] },
} as const satisfies SoluteRows;

/** Polyols nobody measured: as sucrose, but for the long ones. */
export const ASSUMED_POLYOLS = {
  source: 'assumption', grade: 'assumed', polyols: true,
  rows: {
    isomalt: [344.313, 0, 0.1],
    maltitol: [344.313, 0, 0.1],
    lactitol: [344.313, 0, 0.15],
    'propylene-glycol': [76.094, 0, 0.15],
    'hydrogenated-oligosaccharides': [800, 0.15, 0.1],
  },
} as const satisfies SoluteRows;

/** Others nobody measured: hexoses −0.155, long chains 0.18, the rest as sucrose. */
export const ASSUMED_SOLUTES = {
  source: 'assumption', grade: 'assumed',
  rows: {
    allulose: [180.156, -0.155, 0.1],
    tagatose: [180.156, -0.155, 0.1],
    trehalose: [342.2965, 0, 0.15],
    isomaltulose: [342.2965, 0, 0.15],
    'citric-acid': [192.12, 0, 0.15],
    'malic-acid': [134.09, 0, 0.15],
    'tartaric-acid': [150.09, 0, 0.15],
    'lactic-acid': [90.08, 0, 0.15],
    'potassium-hydrogen-tartrate': [188.18, 0, 0.15],
    'sodium-citrate': [258.07, 0, 0.15, 4],
    'sodium-lactate': [112.06, 0, 0.15, 2],
    'sodium-bicarbonate': [84.01, 0, 0.15, 2],
    'sodium-chloride': [58.44, 0, 0.15, 2],
    sucralose: [397.63, 0, 0.15],
    'acesulfame-k': [201.24, 0, 0.15],
    aspartame: [294.3, 0, 0.15],
    saccharin: [205.17, 0, 0.15],
    'steviol-glycosides': [967, 0, 0.15],
    polydextrose: [1_200, 0.18, 0.1],
    inulin: [1_639, 0.18, 0.1],
    protein: [20_000, 0.18, 0.1],
    ash: [58, 0, 0.15, 2],
  },
} as const satisfies SoluteRows;

/** Species whose molar mass is a mean of many sizes, and assumed; all others are by formula. */
export const ASSUMED_MOLAR_MASSES: readonly SpeciesId[] = [
  'syrup-oligosaccharides', 'hydrogenated-oligosaccharides', 'polydextrose', 'inulin', 'protein', 'ash',
];

/** A species no row is known of is taken for sucrose of equal mass, give or take this. */
export const UNKNOWN_SOLUTE: SoluteRow = [342.2965, 0, 0.15];
