export { combine, scaleMixture } from './combine.js';
export { PART_MASS_DOMAIN_G } from './content-of-part.js';
export { evaporateTo } from './evaporate-to.js';
export { mixture } from './mixture.js';
export { solutionOf } from './solution-of.js';
export type { Apart, Mixture, Part, Solid } from './types.js';
