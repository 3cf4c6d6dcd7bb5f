type Region = 'world' | 'us';

const same = (text: string) => (_region: Region) => text;
const by = (world: string, us: string) => (region: Region) => (region === 'us' ? us : world);

/** What the parts under the drawing of the boil say beside the library's own sentences. */
export const panelWords = {
  clock: 'Against the clock',
  windows: {
    title: 'What it does at which temperature',
    mass: (mass: string, reading: string) =>
      `These are temperatures of the mass itself. At the stop it is ${mass}, and your thermometer shows ${reading}.`,
  },
  keeping: 'How it keeps',
  withoutXylitol: 'Make it without xylitol: see what it costs and gains',
  acid: {
    title: 'Acid and sugar',
    label: 'Acid',
    first: 'at the first boil',
    last: 'last, off the heat',
    note: 'This only shows the other way, beside yours in the next part. Nothing changes until you say so there.',
    shown: 'The other way stands beside yours in the next part. Nothing has changed.',
    asNow: 'This is how it stands. Nothing is laid beside it.',
  },
  beside: {
    title: 'Beside another plan',
    label: 'Lay beside it',
    nothing: 'nothing',
    here: 'this plan',
    caption: (other: string) => `This plan, and beside it: ${other}. What differs has a mark.`,
    same: (other: string) => `This plan, and beside it: ${other}. Nothing here differs.`,
    differs: '(differs)',
    inLine: (line: number) => `, line ${line}`,
    onlyToSee: 'Only to see: a kitchen cannot be moved. Yours is set further up.',
    take: 'Make it so',
    taken: (other: string) =>
      `Done: ${other}. Beside it stands what was before. Undo takes it back.`,
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
      energy: 'Energy',
      fat: 'Fat',
      sodium: 'Sodium',
      carbohydrate: 'Carbohydrate',
      fibre: 'Fibre',
      sugars: 'Sugars',
      addedSugars: 'Added sugars',
      polyols: 'Sugar alcohols',
      protein: 'Protein',
      salt: 'Salt',
    },
    mustSay: 'What a label must say',
    claims: 'Claims and limits',
    others: (count: number) =>
      count === 1 ? 'One claim it does not meet' : `${count} claims it does not meet`,
  },
  jar: {
    title: 'For the jar',
    ingredients: 'Made of',
    animals: 'Keep it away from all animals.',
    keep: (upTo: string) => `Keep closed, dry and cool: hard up to about ${upTo}.`,
    keepSoft: 'Keep closed, dry and cold.',
    contains: 'Contains (allergens):',
    made: 'Made on:',
    print: 'Print the jar label',
    note: 'A draft for your own jar: cut it out along the line. For sale, your food law says what a label must bear.',
  },
} as const;
