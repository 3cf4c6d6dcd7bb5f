import type { EvidenceTable } from '../../types.js';

/** Share of burner energy that reaches the pan. */
export const heatEfficiencyTable = {
  id: 'heat-efficiency',
  title: 'Share of burner energy that reaches the pan',
  source: {
    authors: 'US Environmental Protection Agency',
    year: '2021',
    title: 'Residential induction cooking tops',
    locator: 'benefits',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  address:
    'https://www.energystar.gov/partner_resources/brand_owner_resources/spec_dev_effort/2021_residential_induction_cooking_tops',
  units: { low: 'fraction', high: 'fraction', use: 'fraction' },
  rows: [
    { kind: 'gas', low: 0.32, high: 0.4, use: 0.36 },
    { kind: 'electric resistance', low: 0.74, high: 0.8, use: 0.75 },
    { kind: 'induction', low: 0.84, high: 0.85, use: 0.85 },
  ],
  notes: [
    'Printed: about 32, 75 to 80 and 85 %. An older test of the energy department, quoted second-hand: 40, 74, 84 %.',
    'Measured with water in a fitting pan; a small pan on a large flame is worse.',
  ],
  check: {
    rows: 3,
    sums: {
      low: 1.9,
      high: 2.05,
      use: 1.96,
    },
  },
} as const satisfies EvidenceTable;
