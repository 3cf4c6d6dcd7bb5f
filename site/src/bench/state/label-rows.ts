import type { PlanDocument } from 'vitrose';

/** One row of the label's table. */
export type LabelRow = {
  readonly id: string;
  readonly unit: 'kcal' | 'kJ' | 'g';
  readonly per100: number;
  readonly perPiece: number | undefined;
};

/** What every label prints, whether or not there is any of it. */
const ALWAYS = ['energyKJ', 'energyKcal', 'fatG', 'carbohydrateG', 'sugarsG', 'proteinG'] as const;
/** What is printed where there is some. */
const WHERE_SOME = ['polyolsG', 'fibreG', 'saltG'] as const;

/** The rows of a label by the rules of one place, in the order they are printed. */
export function labelRows(plan: PlanDocument, rules: 'us' | 'eu'): readonly LabelRow[] {
  const { per100G, perPiece } = plan.label[rules];
  const some = WHERE_SOME.filter((id) => per100G[id] > 0.005);
  const ids = [
    ...ALWAYS.slice(0, 5),
    ...(rules === 'us' ? (['addedSugarsG'] as const) : []),
    ...some,
    ...ALWAYS.slice(5),
  ];
  return ids.map((id) => ({
    id,
    unit: id === 'energyKcal' ? 'kcal' : id === 'energyKJ' ? 'kJ' : 'g',
    per100: per100G[id],
    perPiece: perPiece?.[id],
  }));
}
