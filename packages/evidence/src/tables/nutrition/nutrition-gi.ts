import type { EvidenceTable } from '../../types.js';

/** Glycaemic and insulinaemic index. */
export const nutritionGiTable = {
  id: 'nutrition-gi',
  title: 'Glycaemic and insulinaemic index',
  source: {
    authors: 'Livesey, G.',
    year: '2003',
    title: 'Health potential of polyols as sugar replacers, Nutr. Res. Rev. 16:163-191',
    locator: 'abstract',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address:
    'https://www.cambridge.org/core/journals/nutrition-research-reviews/article/health-potential-of-polyols-as-sugar-replacers-with-emphasis-on-low-glycaemic-properties/51B0744C8573925A7A74FF2AD87429F9',
  units: {
    glycaemicIndex: 'glucose = 100',
    insulinaemicIndex: 'glucose = 100',
  },
  rows: [
    { id: 'glucose', glycaemicIndex: 100, insulinaemicIndex: 100, grade: 'primary' },
    { id: 'sucrose', glycaemicIndex: 65, insulinaemicIndex: 43, grade: 'primary' },
    { id: 'erythritol', glycaemicIndex: 0, insulinaemicIndex: 2, grade: 'primary' },
    { id: 'xylitol', glycaemicIndex: 13, insulinaemicIndex: 11, grade: 'primary' },
    { id: 'sorbitol', glycaemicIndex: 9, insulinaemicIndex: 11, grade: 'primary' },
    { id: 'mannitol', glycaemicIndex: 0, insulinaemicIndex: 0, grade: 'primary' },
    { id: 'maltitol', glycaemicIndex: 35, insulinaemicIndex: 27, grade: 'primary' },
    { id: 'isomalt', glycaemicIndex: 9, insulinaemicIndex: 6, grade: 'primary' },
    { id: 'lactitol', glycaemicIndex: 6, insulinaemicIndex: 4, grade: 'primary' },
    { id: 'polyglycitol-hsh', glycaemicIndex: 39, insulinaemicIndex: 23, grade: 'primary' },
    { id: 'fructose', glycaemicIndex: 19, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'lactose', glycaemicIndex: 46, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'maltose', glycaemicIndex: 105, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'isomaltulose', glycaemicIndex: 32, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'trehalose', glycaemicIndex: 70, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'maltodextrin', glycaemicIndex: 105, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'glucose-syrup-solids', glycaemicIndex: 95, insulinaemicIndex: null, grade: 'assumed' },
    { id: 'invert-sugar', glycaemicIndex: 60, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'hfcs-55', glycaemicIndex: 58, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'tagatose', glycaemicIndex: 3, insulinaemicIndex: null, grade: 'memory' },
    { id: 'allulose', glycaemicIndex: 0, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'polydextrose', glycaemicIndex: 5, insulinaemicIndex: null, grade: 'memory' },
    { id: 'inulin', glycaemicIndex: 1, insulinaemicIndex: null, grade: 'secondary' },
    { id: 'glycerol', glycaemicIndex: 5, insulinaemicIndex: null, grade: 'secondary' },
  ],
  tolerance: {
    text: 'Quote whole numbers, 10 either way.',
    limits: [{ column: 'glycaemicIndex', worst: 10, insideBand: true }],
  },
  notes: [
    'Bands in the same paper: high above 70, intermediate 55 to 70, low 40 to 55, very low to 40.',
    'Polyol values hold up to 50 g fed.',
    'Maltodextrin ranges from 85 to 135 in print; trehalose is printed as 45 to 50 in a review.',
    'Information only, never advice: a number is not a test of a food.',
  ],
  check: {
    rows: 24,
    sums: {
      glycaemicIndex: 880,
      insulinaemicIndex: 227,
    },
  },
} as const satisfies EvidenceTable;
