// biome-ignore-all format: one row a line, to be held against its source

import type { CitedRange } from '../../foundation/validity/constants.js';

/** Grams per millilitre by how it lies in the spoon; the first form is the usual one. */
export type WeightByForm = Readonly<Record<string, CitedRange>>;

/**
 * Grams per millilitre of a level measure, not packed unless the form says so. Low and high are
 * what charts and kitchens give, not an error of a scale. What has no row has to be weighed.
 */
export const GRAMS_PER_ML = {
  water: {
    level: { value: 0.998, low: 0.997, high: 1, source: 'definition', grade: 'derived' },
  },
  sucrose: {
    granulated: { value: 0.845, low: 0.803, high: 0.93, source: 'kitchen-weight-charts', grade: 'secondary' },
    'confectioners-unsifted': { value: 0.507, low: 0.423, high: 0.549, source: 'kitchen-weight-charts', grade: 'secondary' },
    'brown-packed': { value: 0.93, low: 0.9, high: 1.01, source: 'kitchen-weight-charts', grade: 'secondary' },
  },
  'glucose-syrup': {
    level: { value: 1.4, low: 1.378, high: 1.441, source: 'recalled-household-weights', grade: 'memory' },
  },
  'dried-glucose-syrup': {
    level: { value: 0.6, low: 0.5, high: 0.75, source: 'common-practice', grade: 'practice' },
  },
  maltodextrin: {
    level: { value: 0.5, low: 0.35, high: 0.65, source: 'common-practice', grade: 'practice' },
  },
  'dextrose-monohydrate': {
    level: { value: 0.68, low: 0.6, high: 0.75, source: 'common-practice', grade: 'practice' },
  },
  fructose: {
    level: { value: 0.8, low: 0.75, high: 0.9, source: 'common-practice', grade: 'practice' },
  },
  honey: {
    level: { value: 1.437, low: 1.42, high: 1.458, source: 'kitchen-weight-charts', grade: 'secondary' },
  },
  'golden-syrup': {
    level: { value: 1.43, low: 1.4, high: 1.45, source: 'recalled-household-weights', grade: 'memory' },
  },
  'invert-syrup': {
    level: { value: 1.37, low: 1.33, high: 1.42, source: 'icumsa-1994', grade: 'derived' },
  },
  'high-fructose-syrup': {
    level: { value: 1.38, low: 1.34, high: 1.4, source: 'recalled-household-weights', grade: 'memory' },
  },
  isomalt: {
    granules: { value: 0.85, low: 0.75, high: 0.95, source: 'common-practice', grade: 'practice' },
  },
  xylitol: {
    level: { value: 0.85, low: 0.75, high: 0.95, source: 'common-practice', grade: 'practice' },
  },
  erythritol: {
    level: { value: 0.85, low: 0.75, high: 0.95, source: 'common-practice', grade: 'practice' },
  },
  sorbitol: {
    powder: { value: 0.7, low: 0.6, high: 0.8, source: 'common-practice', grade: 'practice' },
  },
  maltitol: {
    powder: { value: 0.8, low: 0.7, high: 0.9, source: 'common-practice', grade: 'practice' },
  },
  'maltitol-syrup': {
    level: { value: 1.37, low: 1.35, high: 1.4, source: 'recalled-household-weights', grade: 'memory' },
  },
  'sorbitol-syrup': {
    level: { value: 1.29, low: 1.28, high: 1.31, source: 'recalled-household-weights', grade: 'memory' },
  },
  glycerol: {
    level: { value: 1.26, low: 1.25, high: 1.26, source: 'recalled-household-weights', grade: 'memory' },
  },
  'citric-acid': {
    'fine-crystals': { value: 0.933, low: 0.812, high: 1.014, source: 'common-practice', grade: 'practice' },
  },
  'malic-acid': {
    level: { value: 0.872, low: 0.73, high: 0.974, source: 'common-practice', grade: 'practice' },
  },
  'tartaric-acid': {
    level: { value: 0.872, low: 0.73, high: 1.014, source: 'common-practice', grade: 'practice' },
  },
  'cream-of-tartar': {
    level: { value: 0.609, low: 0.588, high: 0.73, source: 'recalled-household-weights', grade: 'memory' },
  },
  'sodium-citrate': {
    level: { value: 0.913, low: 0.771, high: 1.055, source: 'common-practice', grade: 'practice' },
  },
  'sodium-bicarbonate': {
    level: { value: 0.933, low: 0.893, high: 1.014, source: 'recalled-household-weights', grade: 'memory' },
  },
  salt: {
    table: { value: 1.217, low: 1.156, high: 1.258, source: 'recalled-household-weights', grade: 'memory' },
  },
  butter: {
    level: { value: 0.959, low: 0.947, high: 0.972, source: 'kitchen-weight-charts', grade: 'secondary' },
  },
  cream: {
    level: { value: 1.006, low: 0.981, high: 1.014, source: 'recalled-household-weights', grade: 'memory' },
  },
  'whole-milk': {
    level: { value: 1.031, low: 1.023, high: 1.04, source: 'recalled-household-weights', grade: 'memory' },
  },
  'condensed-milk': {
    level: { value: 1.293, low: 1.268, high: 1.319, source: 'recalled-household-weights', grade: 'memory' },
  },
  nuts: {
    level: { value: 0.604, low: 0.465, high: 0.634, source: 'recalled-household-weights', grade: 'memory' },
  },
  gelatin: {
    powder: { value: 0.629, low: 0.467, high: 0.71, source: 'recalled-household-weights', grade: 'memory' },
  },
  'egg-white': {
    level: { value: 1.027, low: 1.014, high: 1.04, source: 'recalled-household-weights', grade: 'memory' },
  },
  'flavour-oil': {
    level: { value: 0.9, low: 0.84, high: 1.05, source: 'common-practice', grade: 'practice' },
  },
  'flavour-alcohol': {
    level: { value: 0.91, low: 0.86, high: 0.96, source: 'common-practice', grade: 'practice' },
  },
  'flavour-propylene-glycol': {
    level: { value: 1.03, low: 1, high: 1.05, source: 'common-practice', grade: 'practice' },
  },
  'flavour-glycerol': {
    level: { value: 1.2, low: 1.1, high: 1.25, source: 'common-practice', grade: 'practice' },
  },
  'colour-liquid': {
    level: { value: 1, low: 0.99, high: 1.1, source: 'common-practice', grade: 'practice' },
  },
} as const satisfies Readonly<Record<string, WeightByForm>>;
