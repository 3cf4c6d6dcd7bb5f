import type { PlanModelId } from './models.js';
import type { PlanModel } from './types.js';

/** Equation, sources and grade of every model a number of a plan may name. */
const MODEL_NOTES: Readonly<Record<PlanModelId, PlanModel>> = {
  given: { equation: 'as given', sources: ['given-by-the-cook'], grade: 'assumed' },
  'mass-balance': {
    equation: 'what goes in = what stays + what boils off',
    sources: ['definition'],
    grade: 'derived',
  },
  measures: { equation: 'm = V · ρ', sources: ['common-practice'], grade: 'practice' },
  water: {
    equation: 'ln(p/pc) = (Tc/T)·Σ aᵢ·τ^nᵢ',
    sources: ['wagner-pruss-1993'],
    grade: 'secondary',
  },
  'standard-atmosphere': {
    equation: 'p = p₀·(1 − L·h/T₀)^(g·M/(R·L))',
    sources: ['us-standard-atmosphere-1976'],
    grade: 'secondary',
  },
  'station-pressure': {
    equation: 'p = (q^n − k·h)^(1/n)',
    sources: ['smithsonian-altimeter'],
    grade: 'secondary',
  },
  boiling: {
    equation: 'aw(composition, T)·psat(T) = p',
    sources: ['boiling-fit', 'starzak-peacock-1997', 'robinson-stokes-1961'],
    grade: 'derived',
  },
  'same-solids': {
    equation: 'the same solids at another pressure',
    sources: ['boiling-fit'],
    grade: 'derived',
  },
  stages: {
    equation: 'stage = texture of the solids, by sucrose at sea level',
    sources: ['stage-chart-medians'],
    grade: 'secondary',
  },
  thermometer: {
    equation: 'one reading shifts, two scale',
    sources: ['common-practice'],
    grade: 'practice',
  },
  density: { equation: 'V = m/ρ, an estimate', sources: ['common-practice'], grade: 'practice' },
  'pan-film': {
    equation: '32 g per litre of pan stays behind, an estimate',
    sources: ['common-practice'],
    grade: 'practice',
  },
  glass: {
    equation: '1/Tg,dry = Σ xᵢ/Tgᵢ; Tg = (ws·Tg,dry + k·ww·Tg,w)/(ws + k·ww)',
    sources: ['roos-1993', 'roos-karel-1991'],
    grade: 'memory',
  },
  sweetness: {
    equation: 'S = Σ wᵢ·sᵢ on dry solids',
    sources: ['chattopadhyay-2014'],
    grade: 'secondary',
  },
  heat: {
    equation: 't = (Q + pan) / (P·η − loss), along the boiling curve, an estimate',
    sources: ['bubnik-1995', 'dry-melt-heat', 'hob-efficiency-2021', 'boil-down-spread'],
    grade: 'derived',
  },
  browning: {
    equation: 'L = ∫ exp(−Ea/R·(1/T − 1/423.15)) dt, for comparison only',
    sources: ['browning-energy-choice'],
    grade: 'derived',
  },
  inversion: {
    equation: 'log k = 16.91 + log W − 5670/T − pH; 0.0526 g of water go with each gram',
    sources: ['vukov-1965', 'acid-constant-tables', 'dry-end-guess'],
    grade: 'derived',
  },
  sourness: {
    equation: 'Σ m·sourness beside citric',
    sources: ['common-practice'],
    grade: 'practice',
  },
  moisture: {
    equation: 'm(aw) = Σ xᵢ·mᵢ(aw)',
    sources: ['zobrist-2011', 'sorption-fit'],
    grade: 'derived',
  },
  'wrap-life': {
    equation: 't = ln((me − mi)/(me − mc))·b·W/(P·A·p₀), an estimate',
    sources: ['labuza-hyman-1998', 'food-packages', 'recalled-films'],
    grade: 'memory',
  },
  graining: {
    equation: 'log t = 3.04 − s(T − Tg) + 0.042·D − 1 if seeded, an estimate to a factor of ten',
    sources: ['graining-time-fit', 'thin-film-2015'],
    grade: 'derived',
  },
  'polyol-guide': { equation: 'Σ dose/guide', sources: ['polyol-guide'], grade: 'secondary' },
};

/** The notes of the models a plan really used. */
export function modelNotes(
  used: ReadonlySet<string>,
): Readonly<Partial<Record<PlanModelId, PlanModel>>> {
  return Object.fromEntries(Object.entries(MODEL_NOTES).filter(([id]) => used.has(id)));
}

/** Every model named by a figure anywhere in a value. */
export function modelsNamed(value: unknown, used: Set<string> = new Set()): ReadonlySet<string> {
  if (typeof value !== 'object' || value === null) return used;
  if ('model' in value && typeof value.model === 'string') used.add(value.model);
  for (const child of Object.values(value)) modelsNamed(child, used);
  return used;
}
