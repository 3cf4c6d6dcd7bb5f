import { syrupBlendExamplesTable } from './syrup-blend-examples.js';
import { syrupDeContributionsTable } from './syrup-de-contributions.js';
import { syrupDeFromProfileChecksTable } from './syrup-de-from-profile-checks.js';
import { syrupDensityTable } from './syrup-density.js';
import { syrupLegalDefinitionsTable } from './syrup-legal-definitions.js';
import { syrupMolarMassTable } from './syrup-molar-mass.js';
import { syrupProfilesTable } from './syrup-profiles.js';
import { syrupProfilesDetailedTable } from './syrup-profiles-detailed.js';
import { syrupRefractiveIndexTable } from './syrup-refractive-index.js';
import { syrupSolidsBaumeTable } from './syrup-solids-baume.js';
import { syrupSweetnessTable } from './syrup-sweetness.js';
import { syrupViscosityTable } from './syrup-viscosity.js';

export {
  syrupBlendExamplesTable,
  syrupDeContributionsTable,
  syrupDeFromProfileChecksTable,
  syrupDensityTable,
  syrupLegalDefinitionsTable,
  syrupMolarMassTable,
  syrupProfilesDetailedTable,
  syrupProfilesTable,
  syrupRefractiveIndexTable,
  syrupSolidsBaumeTable,
  syrupSweetnessTable,
  syrupViscosityTable,
};

/** Every table of this family. */
export const SYRUP_TABLES = [
  syrupBlendExamplesTable,
  syrupDeContributionsTable,
  syrupDeFromProfileChecksTable,
  syrupDensityTable,
  syrupLegalDefinitionsTable,
  syrupMolarMassTable,
  syrupProfilesTable,
  syrupProfilesDetailedTable,
  syrupRefractiveIndexTable,
  syrupSolidsBaumeTable,
  syrupSweetnessTable,
  syrupViscosityTable,
] as const;
