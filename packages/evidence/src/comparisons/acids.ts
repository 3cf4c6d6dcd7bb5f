import { acidDose, acidity, type SourAcid, swapAcid } from 'vitrose';
import type { EvidenceRow } from '../types.js';
import { INVERSION_COMPARISONS } from './inversion.js';
import { INVERSION_COST_COMPARISONS } from './inversion-costs.js';
import { INVERSION_RATE_COMPARISONS } from './inversion-rates.js';
import type { Answer, Comparison } from './types.js';
import { numberIn, textIn } from './types.js';

const MOLAR_MASS: Readonly<Record<string, readonly [SourAcid, number]>> = {
  citric: ['citric-acid', 192.12],
  tartaric: ['tartaric-acid', 150.09],
  malic: ['malic-acid', 134.09],
  lactic: ['lactic-acid', 90.08],
};

/** pH of acid in a kilogram of water, its cations as alkalinity. */
function ph(row: EvidenceRow): Answer {
  const acid = textIn(row, 'acid');
  const [species, gPerMol] = MOLAR_MASS[acid] ?? unknown(acid);
  const molPerKg = numberIn(row, 'acidMolPerKg');
  const cationMolPerKg = numberIn(row, 'cationMolPerKg');
  const { pH, band } = acidity(
    { waterG: 1_000, acids: { [species]: molPerKg * gPerMol } },
    { alkalinityMmolPerL: 1_000 * cationMolPerKg, syrupPH: 7 },
  );
  return { label: `${acid} ${molPerKg}, cation ${cationMolPerKg} mol/kg`, computed: pH, band };
}

function unknown(what: string): never {
  throw new RangeError(`Nothing is known of ${what}.`);
}

/** Acids of the table of doses that have a figure here, and how much of what is sold is acid. */
const SOLD: Readonly<Record<string, readonly [SourAcid, number]>> = {
  'citric-anhydrous': ['citric-acid', 1],
  malic: ['malic-acid', 1],
  tartaric: ['tartaric-acid', 1],
  'lactic-88': ['lactic-acid', 0.88],
};

function soldAcid(column: string, model: string, pureG: (acid: SourAcid) => number): Comparison {
  return {
    table: 'nutrition-acids-flavour-colour',
    column,
    model,
    answer: (row) => {
      const [acid, purity] = SOLD[textIn(row, 'id')] ?? [];
      if (acid === undefined || purity === undefined) return undefined;
      return { label: textIn(row, 'id'), computed: pureG(acid) / purity };
    },
  };
}

const swapped = (by: 'sourness' | 'titration') => (to: SourAcid) =>
  swapAcid({ from: 'citric-acid', to, massG: 1, by }).massG;

/** Acid, what it inverts, and what that costs. */
export const ACID_COMPARISONS: readonly Comparison[] = [
  { table: 'inversion-ph-rows', column: 'ph', model: 'acidity', answer: ph },
  ...INVERSION_RATE_COMPARISONS,
  ...INVERSION_COMPARISONS,
  ...INVERSION_COST_COMPARISONS,
  soldAcid('equalSournessMass', 'swapAcid', swapped('sourness')),
  soldAcid('equalTitratableMass', 'swapAcid', swapped('titration')),
  soldAcid(
    'doseTypicalPercent',
    'acidDose',
    (acid) => acidDose({ acid, finishedMassG: 100 }).massG,
  ),
];
