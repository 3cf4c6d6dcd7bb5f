// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** French names of the stages. */
export const stagesTradeTermsFrTable = {
  id: 'stages-trade-terms-fr',
  title: 'French names of the stages',
  source: {
    authors: 'Maincent-Morel; Bilheux, Escoffier',
    year: 'n.d.',
    title: 'La cuisine de référence; Traité de pâtisserie artisanale',
    locator: 'stage tables',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    lowC: '°C',
    highC: '°C',
    printedSugarGPerKg: 'g sugar per kg syrup, as printed',
  },
  rows: [
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'nappe', lowC: 105, highC: 105, printedSugarGPerKg: 750 },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'petit filet', lowC: 107, highC: 107, printedSugarGPerKg: 800, nearestStage: 'thread' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'grand filet', lowC: 110, highC: 110, printedSugarGPerKg: 850, nearestStage: 'thread' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'petit boulé', lowC: 115, highC: 117, printedSugarGPerKg: 950, nearestStage: 'soft-ball' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'boulé', lowC: 120, highC: 120, printedSugarGPerKg: 975, nearestStage: 'firm-ball' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'gros boulé', lowC: 125, highC: 130, printedSugarGPerKg: 985, nearestStage: 'hard-ball' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'petit cassé', lowC: 135, highC: 140, printedSugarGPerKg: 995, nearestStage: 'soft-crack' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'grand cassé', lowC: 145, highC: 150, printedSugarGPerKg: 1000, nearestStage: 'hard-crack' },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'petit jaune', lowC: 155, highC: 155, printedSugarGPerKg: null },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'jaune', lowC: 160, highC: 160, printedSugarGPerKg: null },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'grand jaune', lowC: 165, highC: 165, printedSugarGPerKg: null },
    { publication: 'Maincent-Morel, La cuisine de référence', term: 'caramel', lowC: 170, highC: 180, printedSugarGPerKg: null, nearestStage: 'brown-liquid' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'petit filet', lowC: 101, highC: 101, printedSugarGPerKg: null, nearestStage: 'thread' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'grand filet', lowC: 105, highC: 105, printedSugarGPerKg: null, nearestStage: 'thread' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'petit perlé / lissé', lowC: 106, highC: 106, printedSugarGPerKg: null },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'perlé / filet', lowC: 107.5, highC: 107.5, printedSugarGPerKg: null },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'grand soufflé', lowC: 111, highC: 111, printedSugarGPerKg: null },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'petit boulé', lowC: 115, highC: 115, printedSugarGPerKg: null, nearestStage: 'soft-ball' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'boulé', lowC: 117, highC: 117, printedSugarGPerKg: null, nearestStage: 'firm-ball' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'gros boulé', lowC: 120, highC: 120, printedSugarGPerKg: null, nearestStage: 'hard-ball' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'petit cassé', lowC: 125, highC: 125, printedSugarGPerKg: null, nearestStage: 'soft-crack' },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'caramel clair', lowC: 155, highC: 155, printedSugarGPerKg: null },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'caramel brun', lowC: 168, highC: 168, printedSugarGPerKg: null },
    { publication: 'Bilheux, Escoffier, Traité de pâtisserie artisanale', term: 'caramel foncé', lowC: 188, highC: 188, printedSugarGPerKg: null },
  ],
  notes: [
    'Labels only. The printed g/kg do not agree with any boiling curve: 750 g/kg at 105 °C would be 70 %, 950 at 115 to 117 °C 86 to 87 %.',
    'The two texts differ by 10 to 15 °C on petit cassé.',
  ],
  check: {
    rows: 24,
    sums: {
      lowC: 3130.5,
      highC: 3157.5,
      printedSugarGPerKg: 7305,
    },
  },
} as const satisfies EvidenceTable;
