// The constants of each model, straight from the folder of the model: they are no part of the
// public surface, where every one of them would weigh on each import. Read at build only.

import { INGREDIENT_IDS, ingredient } from 'vitrose';
import { ingredientName, stageName } from 'vitrose/words';
import * as air from '../../../packages/core/src/matter/air/index.js';
import * as measures from '../../../packages/core/src/matter/measures/index.js';
import * as saccharides from '../../../packages/core/src/matter/saccharides/index.js';
import * as water from '../../../packages/core/src/matter/water/index.js';
import * as boiling from '../../../packages/core/src/models/boiling/index.js';
import * as density from '../../../packages/core/src/models/density/index.js';
import * as glass from '../../../packages/core/src/models/glass/index.js';
import * as graining from '../../../packages/core/src/models/graining/index.js';
import * as stages from '../../../packages/core/src/models/stages/index.js';
import * as sweetness from '../../../packages/core/src/models/sweetness/index.js';
import * as thermometer from '../../../packages/core/src/models/thermometer/index.js';
import type { ModelSlug } from './model-pages.js';

/** Named groups of constants, as an object each. */
export type ConstantGroups = readonly (readonly [title: string, constants: object])[];

/** A range a model was tested over, or can be asked over. */
export type RangeLine = readonly [what: string, span: readonly [number, number], unit: string];

export const MODEL_CONSTANTS: Readonly<Record<ModelSlug, ConstantGroups>> = {
  water: [
    ['Vapour pressure', water.VAPOUR_PRESSURE_CONSTANTS],
    ['Latent heat, kJ/kg at °C', water.LATENT_HEAT_TABLE],
  ],
  air: [
    ['Standard atmosphere', air.STANDARD_PRESSURE_CONSTANTS],
    ['Station pressure from a weather report', air.STATION_PRESSURE_CONSTANTS],
  ],
  boiling: [
    ['The sucrose equation', boiling.BOILING_CONSTANTS],
    [
      'Solutes: molar mass g/mol, interaction beside sucrose, what it may be wrong by',
      {
        reference: boiling.REFERENCE_SOLUTE,
        sugar: boiling.NORRISH_SUGARS,
        polyol: boiling.NORRISH_POLYOLS,
        'long chains': boiling.LONG_CHAINS,
        'polyol nobody measured': boiling.ASSUMED_POLYOLS,
        'other nobody measured': boiling.ASSUMED_SOLUTES,
      },
    ],
    [
      'How far it may be off',
      { 'half band, K': boiling.BOILING_SPREAD, 'wider for polyols, times': boiling.POLYOL_SPREAD },
    ],
  ],
  stages: [
    ['Rungs of the ladder at sea level, °F', rungs()],
    ['Kitchen rules', stages.KITCHEN_RULE_CONSTANTS],
    ['Where stage names hold', stages.STAGE_NAME_CONSTANTS],
  ],
  saccharides: [
    ['Dextrose equivalent', saccharides.DEXTROSE_EQUIVALENT_CONSTANTS],
    [
      'Molar mass',
      {
        'glucose times a hundred, g/mol': saccharides.GLUCOSE_TIMES_HUNDRED_G_PER_MOL,
        'long-chain share': saccharides.LONG_CHAIN_SHARE,
      },
    ],
    [
      'Reducing power of one, two and three units, dextrose = 100',
      {
        'by theory': saccharides.THEORY_REDUCING_ENDS,
        'by the copper method': saccharides.COPPER_REDUCING_ENDS,
      },
    ],
    ['Typical syrups: mass shares of DP1, DP2, DP3, DP4 and longer', profiles()],
  ],
  glass: [
    ['Mixing and water', glassMixing()],
    ['Dry substances, °C', glass.DRY_GLASS],
    ['How far it may be off', glass.GLASS_BAND_CONSTANTS],
  ],
  sweetness: [
    ['Sweetness beside sucrose', sweetness.SWEETNESS],
    ['Starch syrup by dextrose equivalent', sweetness.SYRUP_SWEETNESS_CONSTANTS],
    [
      'Fructose by temperature',
      {
        'sweetness at 0 °C': sweetness.FRUCTOSE_SWEETNESS_CONSTANTS.at0C,
        'fall for each K': sweetness.FRUCTOSE_SWEETNESS_CONSTANTS.fallPerK,
      },
    ],
  ],
  density: [
    [
      'Solutions of sucrose',
      {
        'above water, row by power of temperature': {
          value: density.SUCROSE_DENSITY_COEFFICIENTS.map((row) => row.join(' ')),
          source: 'icumsa-1994',
          grade: 'secondary',
        },
        'water by temperature': {
          value: density.WATER_DENSITY_COEFFICIENTS,
          source: 'kell-1975',
          grade: 'secondary',
        },
      },
    ],
    ['Candy mass, g/mL', density.CANDY_DENSITY],
    ['A charge before the boil', density.CHARGE_CONSTANTS],
    ['Solubility of sucrose', graining.SUCROSE_SOLUBILITY_CONSTANTS],
  ],
  thermometer: [
    ['One check or two', thermometer.THERMOMETER_CONSTANTS],
    ['Lag', thermometer.LAG_CONSTANTS],
    ['Emergent stem', thermometer.STEM_CONSTANTS],
  ],
  measures: [['Grams per millilitre', measures.GRAMS_PER_ML]],
  ingredients: [
    [
      'Dry solids as sold, mass fraction',
      Object.fromEntries(
        INGREDIENT_IDS.map((id) => [ingredientName(id), ingredient(id).drySolidsMassFraction]),
      ),
    ],
  ],
};

export const MODEL_RANGES: Readonly<Record<ModelSlug, readonly RangeLine[]>> = {
  water: [
    ['Vapour pressure', water.VAPOUR_PRESSURE_DOMAIN_C, '°C'],
    ['Boiling point', water.WATER_BOILING_DOMAIN_PA, 'Pa'],
    ['Latent heat', water.LATENT_HEAT_DOMAIN_C, '°C'],
  ],
  air: [
    ['Altitude it can be asked for', air.STANDARD_PRESSURE_DOMAIN_M, 'm'],
    ['Altitude it was tested over', air.STANDARD_PRESSURE_TESTED_M, 'm'],
    ['Weather report it was tested over', air.SEA_LEVEL_PRESSURE_TESTED_PA, 'Pa'],
  ],
  boiling: [
    ['Dissolved solids it was tested over', boiling.DISSOLVED_TESTED, 'mass fraction'],
    ['Temperatures it was tested over', boiling.BOIL_TESTED_C, '°C'],
    ['Pressures it was tested over', boiling.BOIL_TESTED_PA, 'Pa'],
  ],
  stages: [
    ['Temperatures a stage can be asked for', stages.SUGAR_STAGE_DOMAIN_C, '°C'],
    ['Kitchen rules', stages.KITCHEN_RULES_DOMAIN_C, '°C'],
  ],
  saccharides: [
    ['Acid-cut syrups, tested over', saccharides.DEXTROSE_EQUIVALENT_TESTED.acid, 'DE'],
    ['Enzyme-cut syrups, tested over', saccharides.DEXTROSE_EQUIVALENT_TESTED.enzyme, 'DE'],
    ['Molar mass, tested over', saccharides.MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT, 'DE'],
  ],
  glass: [
    ['Water it was tested over', glass.GLASS_TESTED_WATER_MASS_FRACTION, 'mass fraction'],
    ['Starch syrups it was tested over', glass.GLASS_TESTED_DEXTROSE_EQUIVALENT, 'DE'],
  ],
  sweetness: [
    ['Tasting temperatures it was tested over', sweetness.TASTING_TEMPERATURE_TESTED_C, '°C'],
  ],
  density: [
    ['Solution, tested over', density.DENSITY_TESTED_BRIX, '°Bx'],
    ['Solution, tested over', density.DENSITY_TESTED_C, '°C'],
  ],
  thermometer: [
    ['Readings it can be asked for', thermometer.THERMOMETER_DOMAIN_C, '°C'],
    ['From ice to boil', thermometer.THERMOMETER_SCALE_DOMAIN_K, 'K'],
  ],
  measures: [['Quantities', measures.QUANTITY_DOMAIN, 'of the unit']],
  ingredients: [],
};

/** The ladder with the source its file names over it. */
function rungs(): object {
  return Object.fromEntries(
    stages.STAGE_RUNGS.map(({ id, lowF, highF }) => [
      stageName(id),
      {
        value: `${lowF} to ${highF}`,
        source: lowF >= stages.DRY_SUGAR_FROM_F ? 'mcgee-2004' : 'stage-chart-medians',
        grade: lowF >= stages.DRY_SUGAR_FROM_F ? 'secondary' : 'derived',
      },
    ]),
  );
}

/** Printed syrups, each row with the source that stands at its end. */
function profiles(): object {
  const rows = [
    ...saccharides.ACID_PROFILES.map((row) => ['acid', row] as const),
    ...saccharides.ENZYME_PROFILES.map((row) => ['enzyme', row] as const),
    ['high maltose', saccharides.HIGH_MALTOSE_PROFILE] as const,
  ];
  return Object.fromEntries(
    rows.map(([cut, [dextroseEquivalent, dp1, dp2, dp3, dp4plus, source, grade]]) => [
      `${cut}, DE ${dextroseEquivalent}`,
      { value: [dp1, dp2, dp3, dp4plus], source, grade },
    ]),
  );
}

/** Named for readers: the k of the equation is a number, and only its letter looks like kelvin. */
function glassMixing(): object {
  const {
    waterGlassC,
    sugarKPerC,
    sugarKAt0C,
    syrupK,
    syrupGlassAtZeroC,
    syrupGlassFall,
    syrupGlassPower,
  } = glass.GLASS_CONSTANTS;
  return {
    'glass transition of water, °C': waterGlassC,
    'k of a sugar, for each °C of its own transition': sugarKPerC,
    'k of a sugar at 0 °C': sugarKAt0C,
    'k of long chains': syrupK,
    'starch syrup at DE 0, °C': syrupGlassAtZeroC,
    'its fall': syrupGlassFall,
    'power of DE': syrupGlassPower,
  };
}
