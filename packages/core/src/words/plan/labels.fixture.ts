import type { PlannedLabel } from '../../job/plan/types.js';

/** Amounts of a label, with what these sweets have none of. */
function amounts(energyKcal: number, energyKJ: number, sugarsG: number, polyolsG: number) {
  return {
    energyKcal,
    energyKJ,
    energyKcalBand: [energyKcal, energyKcal],
    carbohydrateG: polyolsG > 0 ? polyolsG : sugarsG / 0.735,
    sugarsG,
    addedSugarsG: sugarsG,
    polyolsG,
    fibreG: 0,
    organicAcidsG: 0,
    proteinG: 0,
    fatG: 0,
    ethanolG: 0,
    saltG: 0,
  } as const;
}

const BARE_LABEL = { claims: [], statements: [], doses: [] } as const;

/** A sugar sweet: one claim it is nowhere near, nothing to be said. */
export const SUGAR_LABEL: PlannedLabel = {
  us: {
    ...BARE_LABEL,
    per100G: amounts(388, 1_625, 70.5, 0),
    perPiece: amounts(22.5, 94.2, 4.1, 0),
  },
  eu: {
    ...BARE_LABEL,
    per100G: amounts(387, 1_646, 70.5, 0),
    perPiece: amounts(22.4, 95.4, 4.1, 0),
    claims: [
      {
        id: 'sugar-free',
        kind: 'not-met',
        quantity: 'sugarsG',
        per: '100G',
        passes: 'at-most',
        value: 70.5,
        limit: 0.5,
        rule: 'eu-1924-2006-annex',
        grade: 'secondary',
      },
    ],
  },
};

/** A sweet of sugar alcohols: one claim a figure cannot decide, one statement, no size of a piece. */
export const ISOMALT_LABEL: PlannedLabel = {
  us: { ...BARE_LABEL, per100G: amounts(202, 845, 0, 99) },
  eu: {
    per100G: amounts(240, 1_002, 0, 99),
    claims: [
      {
        id: 'sugar-free',
        kind: 'needs-analysis',
        because: 'isomalt-may-free-sugar',
        quantity: 'sugarsG',
        per: '100G',
        passes: 'at-most',
        value: 0,
        limit: 0.5,
        rule: 'eu-1924-2006-annex',
        grade: 'secondary',
      },
    ],
    statements: [
      {
        id: 'may-be-laxative',
        numbers: { polyolsMassFraction: 0.99, limitMassFraction: 0.1 },
        rule: 'eu-1169-2011-annex-3',
        grade: 'secondary',
      },
    ],
    doses: [],
  },
};
