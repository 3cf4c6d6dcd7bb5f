import { OptionDefaults } from 'typedoc';

/** Checks that everything public is documented; `typedoc --emit none` writes nothing. */
export default {
  entryPoints: [
    'src/index.ts',
    'src/documents/index.ts',
    'src/words/index.ts',
    'src/sources/index.ts',
  ],
  tsconfig: 'tsconfig.library.json',
  disableGit: true,
  sourceLinkTemplate: '{path}#L{line}',
  blockTags: [...OptionDefaults.blockTags, '@equation', '@source'],
  validation: { notExported: true, invalidLink: true, notDocumented: true, rewrittenLink: true },
  treatWarningsAsErrors: true,
  treatValidationWarningsAsErrors: true,
  // The registries are read through `SOURCES`; only their keys are public, as `SourceId`.
  intentionallyNotExported: [
    'GENERAL_SOURCES',
    'WATER_SOURCES',
    'BOILING_SOURCES',
    'STAGE_SOURCES',
    'SYRUP_SOURCES',
    'KEEPING_SOURCES',
    'CAUTION_SOURCES',
    'JOB_SOURCES',
    'PAN_SOURCES',
    'HEAT_SOURCES',
    'ACID_SOURCES',
    'MOISTURE_SOURCES',
    'GRAINING_SOURCES',
    'TASTE_SOURCES',
    'NUTRITION_SOURCES',
  ],
  // Not each property: its name carries the unit, and @returns says the rest.
  requiredToBeDocumented: [
    'Function',
    'Variable',
    'TypeAlias',
    'Interface',
    'Class',
    'Enum',
    'EnumMember',
    'Method',
    'Accessor',
  ],
};
