/** The models a number of a plan can come from. */
export type PlanModelId =
  | 'given'
  | 'mass-balance'
  | 'measures'
  | 'water'
  | 'standard-atmosphere'
  | 'station-pressure'
  | 'boiling'
  | 'same-solids'
  | 'stages'
  | 'thermometer'
  | 'density'
  | 'pan-film'
  | 'glass'
  | 'sweetness'
  | 'polyol-guide';
