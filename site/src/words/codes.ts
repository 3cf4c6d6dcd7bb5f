/** What the pages of codes share: one word list for five families. */
export const CODE_WORDS = {
  example: 'An example',
  place: 'Where',
  remedies: 'What can be done',
  changes: 'It changes',
  batch: 'The batch',
  call: 'This call',
  raises: 'The warning it carries',
  throws: 'The error it throws',
  moments: 'When it matters',
  known: 'How it is known',
  noExample:
    'No batch within the limits of the format gets here. The code is kept for programs that ask the models past them.',
  tooLong: (characters: number) =>
    `The document is ${characters} characters long and is not shown here.`,
  families: {
    advice: {
      title: 'Advice',
      lead: 'What a plan says about a batch that can be cooked and might disappoint. Each comes with what can be done.',
      back: 'All advice',
      serves: ['cook', 'developer'],
    },
    cautions: {
      title: 'Cautions',
      lead: 'What can hurt, and what to do. Each stands in the step where the hand is.',
      back: 'All cautions',
      serves: ['cook', 'teacher', 'parent'],
    },
    problems: {
      title: 'Problems in a batch',
      lead: 'Why a batch cannot be read or planned, and what to change. A reader gets all of them at once.',
      back: 'All problems',
      serves: ['cook', 'developer'],
    },
    warnings: {
      title: 'Warnings',
      lead: 'A model was asked beyond what it was tested on. The answer stands, with less behind it.',
      back: 'All warnings',
      serves: ['developer'],
    },
    errors: {
      title: 'Errors in code',
      lead: 'A function was given a number that cannot be meant. It throws a ModelRangeError that names its page here.',
      back: 'All errors',
      serves: ['developer'],
    },
  },
} as const;

/** A family of codes: the first part of its address. */
export type CodeFamily = keyof typeof CODE_WORDS.families;
