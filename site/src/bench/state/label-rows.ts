import type { PlanDocument } from 'vitrose';

/** Whose rules a label keeps. */
export type LabelRules = 'us' | 'eu';

/** What a row of a label tells. */
export type LabelRowId =
  | 'energy'
  | 'fat'
  | 'carbohydrate'
  | 'fibre'
  | 'sugars'
  | 'addedSugars'
  | 'polyols'
  | 'protein'
  | 'salt'
  | 'sodium';

/** One row of the label's table, ready to print. */
export type LabelRow = {
  readonly id: LabelRowId;
  /** Part of the row it stands under. */
  readonly isPart: boolean;
  readonly per100: string;
  readonly perPiece?: string | undefined;
};

type Amounts = PlanDocument['label']['eu']['per100G'];

/** Rows in the order each place prints them. */
const ORDER = {
  eu: ['energy', 'fat', 'carbohydrate', 'sugars', 'polyols', 'fibre', 'protein', 'salt'],
  us: [
    'energy',
    'fat',
    'sodium',
    'carbohydrate',
    'fibre',
    'sugars',
    'addedSugars',
    'polyols',
    'protein',
  ],
} as const satisfies Readonly<Record<LabelRules, readonly LabelRowId[]>>;

const PARTS: Readonly<Record<LabelRules, readonly LabelRowId[]>> = {
  eu: ['sugars', 'polyols'],
  us: ['fibre', 'sugars', 'addedSugars', 'polyols'],
};

/** Printed only where there is some. */
const WHERE_SOME: readonly LabelRowId[] = ['polyols', 'fibre', 'salt', 'sodium'];

/** Sodium in salt by weight, as the laws reckon it. */
const SALT_PER_SODIUM = 2.5;
const MG_PER_G = 1_000;

/** The rows of a label by the rules of one place, in the order they are printed. */
export function labelRows(plan: PlanDocument, rules: LabelRules): readonly LabelRow[] {
  const { per100G, perPiece } = plan.label[rules];
  return ORDER[rules]
    .filter((id) => !WHERE_SOME.includes(id) || gramsOf(id, per100G) > 0)
    .map((id) => ({
      id,
      isPart: PARTS[rules].includes(id),
      per100: shown(id, per100G, rules),
      perPiece: perPiece === undefined ? undefined : shown(id, perPiece, rules),
    }));
}

function shown(id: LabelRowId, amounts: Amounts, rules: LabelRules): string {
  if (id === 'energy') {
    const kcal = `${grouped(amounts.energyKcal)}\u00a0kcal`;
    return rules === 'us' ? kcal : `${grouped(amounts.energyKJ)}\u00a0kJ (${kcal})`;
  }
  const grams = gramsOf(id, amounts);
  if (id === 'sodium') return `${grouped(grams * MG_PER_G)}\u00a0mg`;
  // What is there is never printed as nothing.
  if (grams > 0 && grams < 0.05) return 'under 0.1\u00a0g';
  return `${grams === 0 ? '0' : grams.toFixed(1)}\u00a0g`;
}

function gramsOf(id: LabelRowId, amounts: Amounts): number {
  switch (id) {
    case 'energy':
      return 0;
    case 'sodium':
      return amounts.saltG / SALT_PER_SODIUM;
    default:
      return amounts[`${id}G`];
  }
}

/** A whole number, its thousands apart. */
function grouped(value: number): string {
  return value.toFixed(0).replace(/\B(?=(\d{3})+$)/g, '\u00a0');
}
