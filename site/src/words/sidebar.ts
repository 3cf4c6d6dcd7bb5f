/** The documentation's table of contents. */
export const sidebar = [
  { label: 'How far off we are', link: '/evidence/' },
  {
    label: 'Models',
    items: [
      { label: 'Water and steam', link: '/evidence/water/' },
      { label: 'Air pressure', link: '/evidence/air/' },
      { label: 'Boiling', link: '/evidence/boiling/' },
      { label: 'Stages', link: '/evidence/stages/' },
      { label: 'Starch syrups', link: '/evidence/saccharides/' },
      { label: 'Glass', link: '/evidence/glass/' },
      { label: 'Sweetness', link: '/evidence/sweetness/' },
      { label: 'Density', link: '/evidence/density/' },
      { label: 'Thermometers', link: '/evidence/thermometer/' },
      { label: 'Measures', link: '/evidence/measures/' },
      { label: 'Ingredients', link: '/evidence/ingredients/' },
    ],
  },
  {
    label: 'What it says',
    items: [
      { label: 'Advice', link: '/advice/' },
      { label: 'Cautions', link: '/cautions/' },
      { label: 'Problems in a batch', link: '/problems/' },
      { label: 'Warnings', link: '/warnings/' },
      { label: 'Errors in code', link: '/errors/' },
    ],
  },
  {
    label: 'Decisions',
    collapsed: true,
    autogenerate: { directory: 'evidence/decisions' },
  },
  { label: 'Bibliography', link: '/evidence/bibliography/' },
];
