import { type BatchDocument, type Mixture, mixture, type Part, type PlanDocument } from 'vitrose';

/**
 * What boils in the pan, for the figures: every line that goes in before the heat is off, with the
 * grams of the plan. None where the cook brought an ingredient of their own.
 */
export function massInPan(batch: BatchDocument, plan: PlanDocument): Mixture | undefined {
  if (batch.ingredients !== undefined) return undefined;
  const parts = batch.formula.flatMap((line, at): readonly Part[] => {
    const massG = plan.formula[at]?.massG.value;
    if (line.when === 'off-heat' || massG === undefined) return [];
    const { drySolidsMassFraction, dextroseEquivalent, conversion, profile } = line;
    return [
      {
        ingredient: line.ingredient as Extract<Part['ingredient'], string>,
        massG,
        drySolidsMassFraction,
        dextroseEquivalent,
        conversion,
        profile,
      },
    ];
  });
  return parts.length === 0 ? undefined : mixture(parts);
}
