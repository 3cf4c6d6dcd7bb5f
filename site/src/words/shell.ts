/** Words around every page: name, ways in, skip link, theme, region, the bar of a new version. */
export const SHELL_WORDS = {
  name: 'Vitrose',
  skip: 'Skip to the content',
  home: 'Vitrose, front page',
  mainNavigation: 'Parts of the site',
  nav: [
    { label: 'Bench', path: 'bench/' },
    { label: 'Evidence', path: 'evidence/' },
  ],
  toDark: 'Dark',
  toLight: 'Light',
  themeLabel: 'Change to',
  region: 'Words and units',
  regionWorld: '°C, boiled sweets',
  regionUs: '°F, hard candy',
  newVersion: 'A newer version is ready.',
  useIt: 'Use it',
  footer: 'Numbers are estimates with a band. Your thermometer and your judgement come first.',
  nothingLeaves: 'Nothing you enter leaves this device.',
  serves: 'For',
} as const;

/** Whom a page serves, as its head says. */
export const READERS = {
  cook: 'the cook',
  teacher: 'the teacher',
  parent: 'the parent',
  developer: 'the developer',
} as const;

/** One of the people pages are written for. */
export type Reader = keyof typeof READERS;
