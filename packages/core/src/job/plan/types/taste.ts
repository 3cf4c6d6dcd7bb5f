import type { Nutrition } from '../../../models/nutrition/index.js';
import type { Figure } from './figure.js';

/** How sweet beside sugar. */
export type PlannedTaste = {
  readonly relativeSweetness: Figure;
  /** Species in the sweet whose sweetness is not in the sum. */
  readonly leavesOut: readonly string[];
};

/** Sugar alcohols in a piece, beside the guide for one sitting. Information, not advice. */
export type PlannedPolyols = {
  readonly massFraction: number;
  readonly perPieceG?: number | undefined;
  /** One piece, as a share of the guide for a child of 20 kg. */
  readonly childShare?: Figure | undefined;
  /** Pieces that reach the guide for a child of 20 kg. */
  readonly childPieces?: number | undefined;
};

/** What a label of a place prints: amounts, statements, and claims as tests. Information, not advice. */
export type PlannedLabel = Readonly<Record<'us' | 'eu', Omit<Nutrition, 'warnings'>>>;
