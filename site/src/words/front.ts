/** The front page. `world` and `us` are the same sentence in two regions. */
export const FRONT_WORDS = {
  title: 'Vitrose: where to stop the boil in your kitchen',
  description:
    'Boiled sweets worked out before anything is hot: what your thermometer should show, what the sweet keeps, and how far off we have been.',
  heading: 'Where to stop the boil in your kitchen',
  readingLabel: 'My boiling water reads',
  recipeLabel: 'and I’m making',
  stopAt: 'Stop at',
  between: (low: string, high: string) => `between ${low} and ${high}`,
  leaves: (grams: string) => `it leaves about ${grams} g of water in 100`,
  echo: (celsius: string) => `${celsius} °C, then.`,
  because: (shift: number, printed: string) =>
    shift === 0
      ? `In your kitchen syrup boils as it does by the sea: this is the recipe’s ${printed}.`
      : `In your kitchen syrup boils about ${shift} degree${shift === 1 ? '' : 's'} ${shift < 0 ? 'hotter' : 'cooler'}, so this is the recipe’s ${printed}.`,
  noScripts: 'Scripts are off, so this stays one worked example: a kitchen at 1 500 m.',
  tooLow: 'Water that boils below 80 °C is higher up than anyone cooks. Is the probe in the water?',
  tooHigh: 'Water in an open pan does not get that hot. Let it boil for a minute and read again.',
  unreadable: 'A number, please: 95.8, or 204 F.',
  doors: [
    {
      id: 'cook',
      name: 'Cook',
      line: 'The lemon drops of this page, planned to the gram.',
    },
    {
      id: 'teach',
      name: 'Teach',
      line: 'Hard crack climbs a mountain.',
    },
    {
      id: 'build',
      name: 'Build',
      line: 'Four lines, no dependency.',
    },
  ],
  toBench: 'Plan your own on the bench',
  toStages: 'Why a stage is a texture, not a temperature',
  toEvidence: 'Every function, and what it rests on',
  altitude: 'Altitude',
  hardCrackFrom: 'Hard crack begins at',
  waterBoils: 'Water boils at',
  cardWeighs: 'At the stop',
  cardMakes: 'Makes',
  cardKeeps: 'Keeps',
  drops: (count: number, each: string) => `${count} drops of ${each}`,
  hardUpTo: (celsius: number) => `hard up to about ${celsius} °C`,
  doorsLabel: 'Three ways in',
  offHeading: 'How far off we have been',
  offLead:
    'Every row of every printed table we hold, beside what the library says. The line is what was printed.',
  offMore: 'Table by table, with sources',
} as const;

/** What can be made on the front page: a name for a sentence, by region. */
export const FRONT_RECIPE_NAMES = {
  'lemon-drops': 'lemon drops',
  lollipops: 'lollipops',
  'aniseed-drops': 'aniseed drops',
  fondant: 'fondant',
} as const;
