/** Grams a kitchen scale shows: a tenth above ten, a hundredth below. */
export function tidyGrams(massG: number): number {
  return massG >= 10 ? Math.round(massG * 10) / 10 : Number(massG.toPrecision(3));
}
