/** The parts of a described plan. */
export type SectionId =
  | 'cautions'
  | 'advice'
  | 'formula'
  | 'composition'
  | 'kitchen'
  | 'steps'
  | 'time'
  | 'acid'
  | 'windows'
  | 'yield'
  | 'keeping'
  | 'label'
  | 'more-cautions'
  | 'defaults'
  | 'warnings'
  | 'models';

/** One of the five lines of the first answer. */
export type AnswerLine = {
  /** Which of the five. */
  readonly id: 'stop' | 'weighs' | 'makes' | 'keeps' | 'watch';
  /** Stands before it. */
  readonly label: string;
  /** The line itself. */
  readonly text: string;
  /** Sections that explain it. */
  readonly opens?: readonly SectionId[] | undefined;
};

/** Lines that belong together under one head. */
export type Section = {
  /** Stable id. */
  readonly id: SectionId;
  /** Its head. */
  readonly title: string;
  /** In order; a line may begin with spaces where it belongs under the one before. */
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
