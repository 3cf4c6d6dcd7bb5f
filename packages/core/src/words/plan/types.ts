/** The parts of a described plan. */
export type SectionId =
  | 'cautions'
  | 'advice'
  | 'formula'
  | 'composition'
  | 'kitchen'
  | 'steps'
  | 'yield'
  | 'keeping'
  | 'more-cautions'
  | 'defaults'
  | 'warnings'
  | 'models';

/** One of the five lines of the first answer. */
export type AnswerLine = {
  readonly id: 'stop' | 'weighs' | 'makes' | 'keeps' | 'watch';
  readonly label: string;
  readonly text: string;
  /** Sections that explain it. */
  readonly opens?: readonly SectionId[] | undefined;
};

/** Lines that belong together under one head. */
export type Section = {
  readonly id: SectionId;
  readonly title: string;
  readonly lines: readonly string[];
};

/** A plan in words. */
export type DescribedPlan = {
  /** The five lines. */
  readonly answer: readonly AnswerLine[];
  /** Everything that opens from them; a section with nothing to say is left out. */
  readonly sections: readonly Section[];
  /** The whole as a page for a terminal: plain text, at most 78 columns. */
  readonly text: string;
};
