import type { Mixture } from 'vitrose';

/** Sucrose and water, the syrup the stages were named for; how much water does not matter. */
export const SUCROSE_SYRUP: Mixture = {
  waterG: 50,
  solids: [{ kind: 'pure', species: 'sucrose', massG: 50 }],
  apart: [],
  massG: 100,
  drySolidsMassFraction: 0.5,
  dissolvedMassFraction: 0.5,
};

/** The same solids in so much water that they make up a given share of the solution, 0 to 1. */
export function withDissolved(mixture: Mixture, dissolvedMassFraction: number): Mixture {
  const solidsG = total(mixture.solids);
  const waterG = (solidsG * (1 - dissolvedMassFraction)) / dissolvedMassFraction;
  const dryG = solidsG + total(mixture.apart);
  const massG = dryG + waterG;
  return {
    ...mixture,
    waterG,
    massG,
    drySolidsMassFraction: dryG / massG,
    dissolvedMassFraction,
  };
}

function total(parts: readonly { readonly massG: number }[]): number {
  return parts.reduce((sumG, { massG }) => sumG + massG, 0);
}
