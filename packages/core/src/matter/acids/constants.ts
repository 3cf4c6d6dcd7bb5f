// biome-ignore-all format: one acid a line, to be held against its source

import type { Span } from '../../foundation/results/types.js';
import type { Cited, CitedConstants, CitedRange } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../species.js';

/** What an acid, or a salt of one, does in water. */
export type Acid = {
  /** Dry and without crystal water. */
  readonly molarMassGPerMol: Cited;
  /** At 25 °C, from the first proton on. */
  readonly pKa: readonly Cited[];
  /** Potassium or sodium that comes with each molecule. */
  readonly cationsPerMole: number;
  /** Protons that lye would take from each molecule; bicarbonate takes one itself. */
  readonly titratablePerMole: number;
};

const tables = 'acid-constant-tables';
const seen = 'secondary';
const formula = 'definition';
const derived = 'derived';

const citric = [
  { value: 3.128, source: 'bates-pinching-1949', grade: seen },
  { value: 4.76, source: 'bates-pinching-1949', grade: seen },
  { value: 6.396, source: 'bates-pinching-1949', grade: seen },
] as const;
const malic = [
  { value: 3.4, source: tables, grade: seen },
  { value: 5.2, source: tables, grade: seen, note: '5.11 from memory' },
] as const;
const tartaric = [
  { value: 2.98, source: tables, grade: seen, note: '3.036 in print too' },
  { value: 4.34, source: tables, grade: seen, note: '4.366 in print too' },
] as const;
const lactic = [{ value: 3.86, source: tables, grade: seen }] as const;

/** Of bicarbonate only the sodium counts: its carbon dioxide leaves the hot pan. */
export const ACIDS = {
  'citric-acid': { molarMassGPerMol: { value: 192.12, source: formula, grade: derived }, pKa: citric, cationsPerMole: 0, titratablePerMole: 3 },
  'malic-acid': { molarMassGPerMol: { value: 134.09, source: formula, grade: derived }, pKa: malic, cationsPerMole: 0, titratablePerMole: 2 },
  'tartaric-acid': { molarMassGPerMol: { value: 150.09, source: formula, grade: derived }, pKa: tartaric, cationsPerMole: 0, titratablePerMole: 2 },
  'lactic-acid': { molarMassGPerMol: { value: 90.08, source: formula, grade: derived }, pKa: lactic, cationsPerMole: 0, titratablePerMole: 1 },
  'potassium-hydrogen-tartrate': { molarMassGPerMol: { value: 188.18, source: formula, grade: derived }, pKa: tartaric, cationsPerMole: 1, titratablePerMole: 1 },
  'sodium-citrate': { molarMassGPerMol: { value: 258.07, source: formula, grade: derived }, pKa: citric, cationsPerMole: 3, titratablePerMole: 0 },
  'sodium-lactate': { molarMassGPerMol: { value: 112.06, source: formula, grade: derived }, pKa: lactic, cationsPerMole: 1, titratablePerMole: 0 },
  'sodium-bicarbonate': { molarMassGPerMol: { value: 84.01, source: formula, grade: derived }, pKa: [], cationsPerMole: 1, titratablePerMole: -1 },
} as const satisfies Readonly<Partial<Record<SpeciesId, Acid>>>;

/** Crystals of sodium citrate as they are sold, two waters in each. */
export const SODIUM_CITRATE_DIHYDRATE_G_PER_MOL = { value: 294.1, source: formula, grade: derived } as const satisfies Cited;

/** What water itself gives, and how far constants of 25 °C may be off in the pan. */
export const ACIDITY_CONSTANTS = {
  waterIonProduct: { value: 1e-14, source: 'recalled-acids', grade: 'memory', note: 'at 25 °C' },
  plusMinusPH: { value: 0.15, source: 'acidity-band', grade: 'derived', note: 'heat moves citric acid by 0.11 up to 100 °C' },
} as const satisfies CitedConstants;

/** pH of what the syrup is without acid of the cook's. */
export const SYRUP_PH = {
  syrup: { value: 5, low: 4.5, high: 5.5, source: 'common-practice', grade: 'practice' },
  honey: { value: 3.9, source: 'common-practice', grade: 'practice' },
} as const satisfies Readonly<Record<string, CitedRange>>;

/** Cream of tartar water can hold, g per 100 g of water by °C; in between on a line of its logarithm. */
export const TARTRATE_SOLUBILITY = [
  { temperatureC: 10, gPer100GWater: { value: 0.4, source: 'merck-index-tartrate', grade: seen } },
  { temperatureC: 25, gPer100GWater: { value: 0.6, source: 'merck-index-tartrate', grade: seen } },
  { temperatureC: 100, gPer100GWater: { value: 6.1, source: 'merck-index-tartrate', grade: seen, note: '6.25 in print too; hotter counts as this' } },
] as const satisfies readonly { readonly temperatureC: number; readonly gPer100GWater: Cited }[];

/** From ice to the hottest melt. */
export const ACIDITY_DOMAIN_C: Span = [0, 200];
/** Well over the hardest tap water: seawater has 2.3. */
export const ALKALINITY_DOMAIN_MMOL_PER_L: Span = [0, 50];
/** A syrup without acid is neither vinegar nor lye. */
export const SYRUP_PH_DOMAIN: Span = [2, 9];
