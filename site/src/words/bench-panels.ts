type Region = 'world' | 'us';

const same = (text: string) => (_region: Region) => text;
const by = (world: string, us: string) => (region: Region) => (region === 'us' ? us : world);

/** What the parts under the drawing of the boil say beside the library's own sentences. */
export const panelWords = {
  clock: 'Against the clock',
  windows: 'What it does at which temperature',
  keeping: 'How it keeps',
  withoutXylitol: 'Make it without xylitol: see what that costs and gains',
  acid: {
    title: 'Acid and sugar',
    label: 'All of the acid goes in',
    first: 'at the first boil',
    last: 'last, off the heat',
    note: 'The switch only shows: the other plan stands beside yours below, and nothing changes until you take it.',
  },
  beside: {
    title: 'Beside another plan',
    label: 'Lay beside it',
    nothing: 'nothing',
    here: 'On the table',
    caption: (other: string) => `The plan on the table, and beside it: ${other}`,
    differs: '(differs)',
    take: 'Make it so',
    taken: (other: string) => `Done: ${other}. Undo takes it back.`,
    refused: 'That cannot be planned as it stands.',
    of: {
      before: same('before the last change'),
      'acid-first': same('acid at the first boil'),
      'acid-last': same('acid last'),
      'without-xylitol': same('without xylitol'),
      dried: by('dried glucose syrup', 'dried corn syrup'),
      liquid: by('liquid glucose syrup', 'liquid corn syrup'),
      'sea-level': same('in a kitchen by the sea'),
      mountain: same('in a kitchen at 1 500 m'),
    },
  },
  label: {
    title: 'Taste and label',
    rules: 'By the rules of',
    eu: 'the EU',
    us: 'the US',
    caption: {
      eu: 'Worked out by EU rules, before rounding',
      us: 'Worked out by US rules, before rounding',
    },
    per100: '100 g',
    perPiece: 'one piece',
    rows: {
      energyKJ: 'Energy',
      energyKcal: 'Energy',
      fatG: 'Fat',
      carbohydrateG: 'Carbohydrate',
      sugarsG: 'of which sugars',
      addedSugarsG: 'of which added sugars',
      polyolsG: 'of which sugar alcohols',
      fibreG: 'Fibre',
      saltG: 'Salt',
      proteinG: 'Protein',
    },
    others: (count: number) =>
      count === 1 ? 'One claim it does not keep' : `${count} claims it does not keep`,
  },
  jar: {
    title: 'For the jar',
    ingredients: 'Made of',
    animals: 'Keep it away from animals. If one has eaten any, call a vet at once.',
    keep: 'Keep closed, dry and cool.',
    contains: 'May set off an allergy:',
    made: 'Made on:',
    print: 'Print the jar label',
    note: 'A draft for your own jar. For sale, your food law says what a label must bear.',
  },
} as const;
