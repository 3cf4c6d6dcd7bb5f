/** The page shown where there is none. */
export const MISSING_WORDS = {
  title: 'There is no such page',
  text: 'It may have moved, or the address was cut short.',
  ways: [
    { label: 'The front page', path: '' },
    { label: 'Evidence: every model and how far off it is', path: 'evidence/' },
  ],
} as const;
