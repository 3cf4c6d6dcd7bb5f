// The constants of each model, straight from the folder of the model: they are no part of the
// public surface, where every one of them would weigh on each import. Read at build only.

import { INGREDIENT_IDS, ingredient } from 'vitrose';
import { ingredientName, speciesName, stageName } from 'vitrose/words';
import * as acids from '../../../packages/core/src/matter/acids/index.js';
import * as air from '../../../packages/core/src/matter/air/index.js';
import * as measures from '../../../packages/core/src/matter/measures/index.js';
import * as saccharides from '../../../packages/core/src/matter/saccharides/index.js';
import * as water from '../../../packages/core/src/matter/water/index.js';
import * as boiling from '../../../packages/core/src/models/boiling/index.js';
import * as browning from '../../../packages/core/src/models/browning/index.js';
import * as density from '../../../packages/core/src/models/density/index.js';
import * as glass from '../../../packages/core/src/models/glass/index.js';
import * as graining from '../../../packages/core/src/models/graining/index.js';
import * as heat from '../../../packages/core/src/models/heat/index.js';
import * as inversion from '../../../packages/core/src/models/inversion/index.js';
import * as moisture from '../../../packages/core/src/models/moisture/index.js';
import * as nutrition from '../../../packages/core/src/models/nutrition/index.js';
import * as stages from '../../../packages/core/src/models/stages/index.js';
import * as sweetness from '../../../packages/core/src/models/sweetness/index.js';
import * as syrups from '../../../packages/core/src/models/syrups/index.js';
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
    ['A chain of glucose units', saccharides.CHAIN_CONSTANTS],
  ],
  syrups: [
    [
      'Sucrose that splits',
      { 'water taken up, of the sucrose split': syrups.INVERT_CONSTANTS.waterPerSucrose },
    ],
    [
      'Dextrose that crystallises',
      {
        'dextrose that water holds at 20 °C':
          syrups.DEXTROSE_CRYSTAL_CONSTANTS.solubilityMassFraction,
        'share of dextrose, either way': syrups.DEXTROSE_CRYSTAL_CONSTANTS.profileShare,
        'rule of the trade, from DE':
          syrups.DEXTROSE_CRYSTAL_CONSTANTS.practiceFromDextroseEquivalent,
        'rule of the trade, to DE': syrups.DEXTROSE_CRYSTAL_CONSTANTS.practiceToDextroseEquivalent,
      },
    ],
    ['Legal names', legalNames()],
  ],
  glass: [
    ['Mixing and water', glassMixing()],
    ['Dry substances, °C', glass.DRY_GLASS],
    ['How far it may be off', glass.GLASS_BAND_CONSTANTS],
  ],
  viscosity: [
    ['Candy mass, by WLF', wlf()],
    ['Sucrose solutions', syrupViscosity()],
    ['Where one hands over to the other, and how far both may be off', viscosityJoin()],
    ['How thick each step wants it, log₁₀ of Pa·s', glass.WORKING_VISCOSITIES],
    ['Wrapped below the glass transition', { 'by, K': glass.WRAP_BELOW_GLASS }],
  ],
  moisture: [
    ['Isotherms of amorphous sugar, 25 °C', isotherms()],
    ['Who stands in for whom', standIns()],
    ['Where the boiling model takes over, and who may be asked', moisture.SORPTION_CONSTANTS],
    ['Share of the water that may be wrong', moisture.SORPTION_BAND],
    [
      'A surface over its glass transition, K',
      {
        'sticks from': moisture.STICKY_CONSTANTS.startsK,
        'is sticky at': moisture.STICKY_CONSTANTS.stickyK,
      },
    ],
    ['Water vapour through films at 38 °C and 0.90, g/(m²·day)', moisture.WRAP_FILMS],
    ['Packs', packs()],
    ['A bare piece', barePiece()],
    ['Diffusion of water in sucrose', diffusion()],
  ],
  graining: [
    ['Time to graining', grainingNumbers()],
    ['From time to a word, points', graining.GRAINING_SCORE_CONSTANTS],
    ['Saturation of sucrose beside other solids', graining.SATURATION_CONSTANTS],
    ['Where the zones of supersaturation begin', graining.SUPERSATURATION_ZONES],
    ['Solubility of sucrose, the other equation', graining.CHARLES_SOLUBILITY_CONSTANTS],
    ['Saturated solutions, per cent', solubilities()],
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
    [
      'Glucose by strength',
      {
        'short of sugar when weak': sweetness.GLUCOSE_STRENGTH_CONSTANTS.short,
        'fading for each per cent': sweetness.GLUCOSE_STRENGTH_CONSTANTS.fadePerPercent,
      },
    ],
    ['Intense sweeteners', intenseNumbers()],
    ['How it is tasted', tastingNumbers()],
    ['Most that two raise each other, at equal parts', sweetness.SYNERGY_MOST],
    ['Caps of the European Union without added sugar, mg/kg', sweetness.EU_SWEETENER_CAPS],
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
    ['Baumé', { 'modulus of the scale': density.BAUME_CONSTANTS.modulus }],
    ['Refraction', refraction()],
    ['A refractometer that is not at 20 °C', refractometerWarmth()],
    ['Glucose syrup', glucoseSyrupDensity()],
    ['Commercial Baumé of glucose syrup', commercialBaume()],
    [
      'A sugar refractometer in glucose syrup',
      {
        'reads too high by all of it at DE': density.OVERREAD_CONSTANTS.fullAtDextroseEquivalent,
        'by nothing at DE': density.OVERREAD_CONSTANTS.noneAtDextroseEquivalent,
        'share of it that may be wrong': density.OVERREAD_CONSTANTS.plusMinusShare,
      },
    ],
    ['Candy mass, g/mL', density.CANDY_DENSITY],
    [
      'A piece somebody weighed',
      { 'share that may be wrong': density.WEIGHED_CONSTANTS.plusMinusShare },
    ],
    ['A charge before the boil', density.CHARGE_CONSTANTS],
    ['Solubility of sucrose', graining.SUCROSE_SOLUBILITY_CONSTANTS],
  ],
  heat: [
    ['Specific heat of solutions', heat.SPECIFIC_HEAT_CONSTANTS],
    ['Specific heat of the melt', heat.DRY_MELT_CONSTANTS],
    ['Specific heat of crystals', heat.SUGAR_CRYSTAL_CONSTANTS],
    ['Steam out of a hot syrup', heat.STEAM_CONSTANTS],
    ['Crystals that dissolve', heat.DISSOLUTION_CONSTANTS],
    ['Share of a hob that reaches the pan', heat.HOB_EFFICIENCY],
    ['The pan', heat.PAN_CONSTANTS],
    ['The kitchen around it', heat.PAN_ASSUMPTIONS],
    [
      'How far it may be off',
      {
        'minutes of a boil, share': heat.BOIL_DOWN_SPREAD,
        'a kettle test, share': heat.KETTLE_TEST_SPREAD,
        'minutes of cooling, times': heat.COOLING_SPREAD_TIMES,
      },
    ],
    ['Cooling, W for each square metre and kelvin', heat.COOLING_W_PER_M2K],
    ['A cooling piece', heat.PIECE_CONSTANTS],
    ['Where it cools', { 'air of the room, °C': heat.COOLING_AIR_C }],
  ],
  acids: [
    ['Molar masses and constants of acids', acidNumbers()],
    ['Water, and how far it may be off', acidityNumbers()],
    ['pH without acid of the cook’s', acids.SYRUP_PH],
    ['Cream of tartar in 100 g of water, g', tartrate()],
    ['Grams as sour as a gram of citric acid', acids.EQUAL_SOURNESS],
    ['How far mouths differ', { 'either way, share': acids.SOURNESS_CONSTANTS.plusMinus }],
    ['Usual doses, g in 100 g of sweets', acids.ACID_DOSES],
  ],
  inversion: [
    [
      'The law',
      {
        'log of the rate at pH 0, 1/min': inversion.INVERSION_CONSTANTS.log10PerMin,
        'fall with 1/T, K': inversion.INVERSION_CONSTANTS.slopeK,
        'water taken by a gram of sucrose, g': inversion.INVERSION_CONSTANTS.waterPerSucrose,
      },
    ],
    [
      'The dry end, an estimate',
      {
        'slowed from, mass fraction dissolved': inversion.DRY_END_CONSTANTS.fromMassFraction,
        'tenfold for each, mass fraction': inversion.DRY_END_CONSTANTS.tenfoldPerMassFraction,
        'middle over low, times': inversion.DRY_END_CONSTANTS.middleOverLow,
      },
    ],
  ],
  browning: [
    ['Activation energy, kJ/mol', browning.BROWNING_ENERGY_KJ_PER_MOL],
    [
      'The scale',
      {
        'a minute counts as one at, °C': browning.THERMAL_LOAD_CONSTANTS.referenceC,
        'gas constant, J/(mol·K)': browning.THERMAL_LOAD_CONSTANTS.gasConstantJPerMolK,
      },
    ],
    ['Where textbooks let browning begin, °C', browning.BROWNING_ONSETS],
  ],
  thermometer: [
    ['One check or two', thermometer.THERMOMETER_CONSTANTS],
    ['Lag', thermometer.LAG_CONSTANTS],
    ['Emergent stem', thermometer.STEM_CONSTANTS],
  ],
  measures: [['Grams per millilitre', measures.GRAMS_PER_ML]],
  nutrition: [
    ['Energy in the United States, kcal/g', nutrition.US_KCAL_PER_G],
    ['Energy in the European Union, kcal/g', nutrition.EU_KCAL_PER_G],
    ['Energy in the European Union, kJ/g', nutrition.EU_KJ_PER_G],
    [
      'Both',
      {
        'kJ for each kcal, in the United States': nutrition.KJ_PER_KCAL,
        'insoluble, at the least, kcal/g': nutrition.ENERGY_CONSTANTS.leastOfInsoluble,
        'long chains in a hydrogenated syrup, at the least':
          nutrition.ENERGY_CONSTANTS.longShareOfHydrolysate,
        'salt for each g of sodium': nutrition.SALT_PER_SODIUM,
      },
    ],
    ['Sodium, mass fraction', nutrition.SODIUM_MASS_FRACTION],
    ['Reference amounts in the United States, g', nutrition.US_REFERENCE_AMOUNTS_G],
    ['Limits of claims', claimLimits()],
    ['Glycaemic index, glucose = 100', nutrition.GLYCAEMIC_INDEX],
    [
      'Glycaemic index of starch syrups',
      {
        'either way': nutrition.GLYCAEMIC_CONSTANTS.plusMinus,
        maltodextrin: nutrition.GLYCAEMIC_CONSTANTS.maltodextrin,
        'syrup solids': nutrition.GLYCAEMIC_CONSTANTS.syrupSolids,
      },
    ],
    ['Sugar alcohols in one sitting, g for each kg of body', nutrition.POLYOL_GUIDE],
    [
      'The guide for a child',
      {
        'body mass, kg': nutrition.POLYOL_SHARE_CONSTANTS.childKg,
        'wrong by a factor of': nutrition.POLYOL_SHARE_CONSTANTS.factorEitherWay,
      },
    ],
    ['Xylitol and dogs, mg for each kg of dog', nutrition.XYLITOL_DOG_MG_PER_KG],
    ['Acceptable in a day, mg for each kg of body', nutrition.DAILY_LIMITS_MG_PER_KG],
  ],
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
  syrups: [
    ['Syrups and powders', syrups.SYRUP_DOMAIN_DRY_SOLIDS, 'mass fraction of dry solids'],
    ['Syrups and powders', syrups.SYRUP_DOMAIN_DEXTROSE_EQUIVALENT, 'DE'],
    [
      'Syrups the rule about dextrose is for',
      syrups.DEXTROSE_CRYSTAL_TESTED_DRY_SOLIDS,
      'mass fraction of dry solids',
    ],
  ],
  glass: [
    ['Water it was tested over', glass.GLASS_TESTED_WATER_MASS_FRACTION, 'mass fraction'],
    ['Starch syrups it was tested over', glass.GLASS_TESTED_DEXTROSE_EQUIVALENT, 'DE'],
  ],
  viscosity: [
    ['Temperatures it can be asked for', glass.VISCOSITY_DOMAIN_C, '°C'],
    ['Temperatures it was tested over', glass.VISCOSITY_TESTED_C, '°C'],
    ['Dissolved solids it was tested over', glass.VISCOSITY_TESTED_DISSOLVED, 'mass fraction'],
  ],
  moisture: [
    ['Temperatures it can be asked for', moisture.SORPTION_DOMAIN_C, '°C'],
    ['Temperatures the isotherms hold for', moisture.SORPTION_TESTED_C, '°C'],
    ['Transmission of a film', moisture.WVTR_DOMAIN_G_PER_M2_DAY, 'g/(m²·day)'],
  ],
  graining: [
    ['Stores it can be asked for', graining.GRAINING_DOMAIN_C, '°C'],
    ['Solubility of sucrose', graining.SUCROSE_SOLUBILITY_DOMAIN_C, '°C'],
    ['Other solids on a gram of water, tested over', graining.OTHER_SOLIDS_TESTED, 'g'],
  ],
  sweetness: [
    ['Tasting temperatures it was tested over', sweetness.TASTING_TEMPERATURE_TESTED_C, '°C'],
    ['Strength of glucose it was tested over', sweetness.SUCROSE_EQUIVALENCE_TESTED, '% sugar'],
    ['Strength in the mouth a sweet has', sweetness.TASTING_CONCENTRATION_TESTED, 'g/100 mL'],
  ],
  density: [
    ['Solution, tested over', density.DENSITY_TESTED_BRIX, '°Bx'],
    ['Solution, tested over', density.DENSITY_TESTED_C, '°C'],
    ['Prism of a refractometer that can be corrected', density.REFRACTOMETER_READS_C, '°C'],
    ['Prism, tested over', density.REFRACTOMETER_TESTED_C, '°C'],
    ['Glucose syrup, tested over', density.SYRUP_DENSITY_TESTED_DEXTROSE_EQUIVALENT, 'DE'],
    [
      'Glucose syrup in a refractometer, tested over',
      density.SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
      'mass fraction of dry solids',
    ],
  ],
  heat: [
    ['Temperatures it can be asked for', heat.HEAT_DOMAIN_C, '°C'],
    ['Pressures a boil can be asked for', heat.BOIL_DOWN_DOMAIN_PA, 'Pa'],
    ['Hobs', heat.HOB_DOMAIN_W, 'W'],
    ['A piece has one temperature', heat.COOLING_TESTED_BIOT, 'Biot number'],
  ],
  acids: [
    ['Temperatures it can be asked for', acids.ACIDITY_DOMAIN_C, '°C'],
    ['Alkalinity of the water', acids.ALKALINITY_DOMAIN_MMOL_PER_L, 'mmol/L'],
    ['pH a buffer can be asked for', acids.BUFFER_DOMAIN_PH, ''],
  ],
  inversion: [
    ['Temperatures the law was tested over', inversion.INVERSION_TESTED_C, '°C'],
    ['Dissolved solids it was tested over', inversion.INVERSION_TESTED_DISSOLVED, 'mass fraction'],
    ['Temperatures it can be asked for', inversion.INVERSION_DOMAIN_C, '°C'],
  ],
  browning: [
    ['Temperatures browning was measured over', browning.THERMAL_LOAD_TESTED_C, '°C'],
    ['Temperatures it can be asked for', browning.THERMAL_LOAD_DOMAIN_C, '°C'],
  ],
  thermometer: [
    ['Readings it can be asked for', thermometer.THERMOMETER_DOMAIN_C, '°C'],
    ['From ice to boil', thermometer.THERMOMETER_SCALE_DOMAIN_K, 'K'],
  ],
  measures: [['Quantities', measures.QUANTITY_DOMAIN, 'of the unit']],
  nutrition: [
    ['Portions', nutrition.PORTION_DOMAIN_G, 'g'],
    ['Bodies', nutrition.BODY_MASS_DOMAIN_KG, 'kg'],
    ['Dogs', nutrition.DOG_MASS_DOMAIN_KG, 'kg'],
  ],
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

/** Acids with the constant of each proton in a row. */
function acidNumbers(): object {
  return Object.fromEntries(
    Object.entries(acids.ACIDS).flatMap(([species, { molarMassGPerMol, pKa }]) => {
      const name = speciesName(species);
      return [
        [`${name}, g/mol`, molarMassGPerMol],
        ...pKa.map((one, index) => [`${name}, pKa ${index + 1}`, one]),
      ];
    }),
  );
}

function acidityNumbers(): object {
  return {
    'ion product of water': acids.ACIDITY_CONSTANTS.waterIonProduct,
    'pH, either way': acids.ACIDITY_CONSTANTS.plusMinusPH,
    'sodium citrate with its crystal water, g/mol': acids.SODIUM_CITRATE_DIHYDRATE_G_PER_MOL,
  };
}

function tartrate(): object {
  return Object.fromEntries(
    acids.TARTRATE_SOLUBILITY.map(({ temperatureC, gPer100GWater }) => [
      `at ${temperatureC} °C`,
      gPer100GWater,
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

/** Every limit a claim is held against, by law. */
function claimLimits(): object {
  return Object.fromEntries(
    (
      [
        ['EU', nutrition.EU_RULES],
        ['US', nutrition.US_RULES],
      ] as const
    ).flatMap(([law, { claims }]) =>
      claims.flatMap(({ id, conditions }) =>
        conditions.map(({ quantity, per, passes, limit }) => [
          `${law}, ${id}: ${quantity} in ${per}, ${passes}`,
          limit,
        ]),
      ),
    ),
  );
}

/** Named for readers: decades of days, and kelvins from the glass transition. */
function grainingNumbers(): object {
  const {
    logDaysAtGlass,
    growthShareOfViscosity,
    viscosityDecades,
    viscosityMidK,
    mostDecades,
    decadesPerKInGlass,
    decadesPerDoctorPercent,
    seededDecades,
    bandDecades,
  } = graining.GRAINING_CONSTANTS;
  return {
    'at the glass transition, decades of days': logDaysAtGlass,
    'growth as a power of viscosity': growthShareOfViscosity,
    'viscosity, decades in all': viscosityDecades,
    'half of them at, K': viscosityMidK,
    'never faster by more than, decades': mostDecades,
    'in the glass, decades for each K': decadesPerKInGlass,
    'doctor, decades for each per cent': decadesPerDoctorPercent,
    'seeds, decades': seededDecades,
    'band either way, decades': bandDecades,
  };
}

/** Printed rows, each under its substance and temperature. */
function solubilities(): object {
  return Object.fromEntries(
    Object.entries(graining.SOLUBILITY_ROWS).flatMap(([species, rows]) =>
      rows.map(([temperatureC, value, source, grade]) => [
        `${species}, ${temperatureC} °C`,
        { value, source, grade },
      ]),
    ),
  );
}

/** Both numbers of each curve, and how far a dose can be trusted. */
function intenseNumbers(): object {
  return Object.fromEntries(
    Object.entries(sweetness.INTENSE_RESPONSE).flatMap(([name, response]) => [
      [`${name}: never sweeter than sugar at, %`, response.maximumPercent],
      [`${name}: half of that at, mg/L`, response.halfMgPerL],
      [`${name}: a dose is right within, times`, response.rightWithin],
    ]),
  );
}

/** Named for readers. */
function tastingNumbers(): object {
  const { concentrationGPer100Ml, boosterLowGPer100Ml, ceilingShare } = sweetness.TASTING_CONSTANTS;
  return {
    'of the sweet in 100 mL of saliva, g': concentrationGPer100Ml,
    'the same, weak, g': boosterLowGPer100Ml,
    'no dose beyond, share of its maximum': ceilingShare,
  };
}

/** Each definition as the figures it asks for, with the rule it stands in. */
function legalNames(): object {
  const { SYRUP_DEFINITIONS } = syrups;
  const rules: readonly syrups.SyrupDefinition[] = SYRUP_DEFINITIONS;
  const percent = (share: number): string => `${Number((share * 100).toFixed(3))} %`;
  const asked = (rule: syrups.SyrupDefinition): string =>
    [
      rule.dextroseEquivalentFrom === undefined ? '' : `DE from ${rule.dextroseEquivalentFrom}`,
      rule.dextroseEquivalentBelow === undefined ? '' : `DE under ${rule.dextroseEquivalentBelow}`,
      rule.drySolidsFrom === undefined ? '' : `dry solids from ${percent(rule.drySolidsFrom)}`,
      rule.glucoseOfDrySolidsFrom === undefined
        ? ''
        : `glucose in them from ${percent(rule.glucoseOfDrySolidsFrom)}`,
      rule.invertOfDrySolidsAbove === undefined
        ? ''
        : `invert in them over ${percent(rule.invertOfDrySolidsAbove)}`,
      rule.invertOfDrySolidsTo === undefined ? '' : `and to ${percent(rule.invertOfDrySolidsTo)}`,
      rule.sulphatedAshOfDrySolidsTo === undefined
        ? ''
        : `sulphated ash to ${percent(rule.sulphatedAshOfDrySolidsTo)}, which nothing here can tell`,
    ]
      .filter((part) => part !== '')
      .join('; ');
  return Object.fromEntries(
    rules.map((rule) => [
      `${rule.id.replaceAll('-', ' ')}, ${rule.rule}`,
      { value: asked(rule), source: rule.source, grade: rule.grade },
    ]),
  );
}

function refraction(): object {
  const { REFRACTION_COEFFICIENTS, REFRACTION_POINTS, SYRUP_REFRACTION_COEFFICIENTS } = density;
  const { at20C, perK, perK2, source, grade } = SYRUP_REFRACTION_COEFFICIENTS;
  return {
    'sucrose by power of strength': {
      ...REFRACTION_COEFFICIENTS,
      value: REFRACTION_COEFFICIENTS.coefficients,
    },
    'sucrose beyond 85 °Bx': { ...REFRACTION_POINTS, value: REFRACTION_POINTS.points },
    'glucose syrup at 20 °C, by power of strength': { value: at20C, source, grade },
    'glucose syrup for each K more': { value: perK, source, grade },
    'glucose syrup for each K more, squared': { value: perK2, source, grade },
  };
}

function refractometerWarmth(): object {
  const { perK, perKPerBrix, perKPerBrix2, perK2, plusMinusBrix, warmPlusMinusBrix } =
    density.REFRACTOMETER_TEMPERATURE_CONSTANTS;
  return {
    'for each K': perK,
    'for each K and °Bx': perKPerBrix,
    'for each K and °Bx squared': perKPerBrix2,
    'for each K squared': perK2,
    'either way below 20 °C, °Bx': plusMinusBrix,
    'either way from 25 °C, °Bx': warmPlusMinusBrix,
  };
}

function glucoseSyrupDensity(): object {
  const { excess, excessPerDextroseEquivalent, atDextroseEquivalent, atDrySolids, plusMinusShare } =
    density.SYRUP_DENSITY_CONSTANTS;
  return {
    'denser than sucrose by': excess,
    'at DE': atDextroseEquivalent,
    'and a mass fraction of dry solids of': atDrySolids,
    'less for each DE more': excessPerDextroseEquivalent,
    'share that may be wrong': plusMinusShare,
  };
}

function commercialBaume(): object {
  const { readAtC, waterAtC, added, solidsPlusMinus } = density.COMMERCIAL_BAUME_CONSTANTS;
  return {
    'read at, °C': readAtC,
    'beside water at, °C': waterAtC,
    'degrees added': added,
    'dry solids at 43 degrees, % by DE': {
      ...density.COMMERCIAL_SOLIDS_AT_43,
      value: density.COMMERCIAL_SOLIDS_AT_43.points,
    },
    'points of dry solids by degrees': {
      ...density.COMMERCIAL_SOLIDS_BESIDE_43,
      value: density.COMMERCIAL_SOLIDS_BESIDE_43.points,
    },
    'dry solids, either way, mass fraction': solidsPlusMinus,
  };
}

/** Three pairs of the same equation: the one used, and the two it lies between. */
function wlf(): object {
  const v = glass.VISCOSITY_CONSTANTS;
  return {
    'at the glass transition, log₁₀ of Pa·s': v.glassLog10PaS,
    'C₁ used here': v.candyC1,
    'C₂ used here, K': v.candyC2K,
    'C₁ of any glass former': v.universalC1,
    'C₂ of any glass former, K': v.universalC2K,
    'C₁ fitted to syrups': v.syrupC1,
    'C₂ fitted to syrups, K': v.syrupC2K,
  };
}

function syrupViscosity(): object {
  const v = glass.SYRUP_VISCOSITY_CONSTANTS;
  return {
    'for each mole fraction of sucrose': v.perMoleFraction,
    'at none': v.atZero,
    'middle temperature, °C': v.referenceC,
    'runs off below zero at, °C': v.singularBelowZeroC,
    'slope with temperature': v.slope,
    'more of it with strength': v.slopePerPower,
    'power of strength': v.power,
    'molar mass of sucrose, g/mol': v.sucroseMolarMassGPerMol,
    'molar mass of water, g/mol': v.waterMolarMassGPerMol,
  };
}

function viscosityJoin(): object {
  const v = glass.VISCOSITY_JOIN_CONSTANTS;
  return {
    'solution up to, dissolved': v.syrupUpTo,
    'candy mass from, dissolved': v.candyFrom,
    'sucrose solution, decades': v.sucroseSyrupDecades,
    'more for other sugars, decades': v.otherSyrupDecades,
    'candy mass, decades': v.candyDecades,
  };
}

/** Each isotherm with its three numbers, named for readers. */
function isotherms(): object {
  return Object.fromEntries(
    Object.entries(moisture.ISOTHERMS).map(([id, { monolayerGPer100G, c, k, ...about }]) => [
      id.replaceAll('-', ' '),
      { ...about, 'monolayer, g on 100 g': monolayerGPer100G, 'its C': c, 'its K': k },
    ]),
  );
}

function standIns(): object {
  return Object.fromEntries(
    Object.entries(moisture.STAND_IN_ISOTHERMS).map(([id, isotherm]) => [
      speciesName(id),
      { value: isotherm.replaceAll('-', ' '), source: 'assumption', grade: 'assumed' },
    ]),
  );
}

function packs(): object {
  const v = moisture.WRAP_CONSTANTS;
  return {
    'transmission is measured at, °C': v.measuredAtC,
    'and at a humidity of': v.measuredAtHumidity,
    'a film may let through more or less, times': v.filmError,
    'leaking seals let through, times': v.leakingSeals,
    'tighter in a store of 25 °C, times': v.tighterAt25C,
    'water on the isotherm, times': v.isothermError,
  };
}

function barePiece(): object {
  const v = moisture.PICK_UP_CONSTANTS;
  return {
    'mass transfer in still air, m/s': v.stillAirMPerS,
    'solids in the skin, kg/m³': v.solidsKgPerM3,
    'more or less, times': v.errorFactor,
    'gas constant of water vapour, J/(kg·K)': v.waterVapourJPerKgK,
  };
}

/** The letters of the equation, spaced so that none is taken for a unit. */
function diffusion(): object {
  const v = moisture.DIFFUSION_CONSTANTS;
  return {
    'A at full humidity': v.a0,
    'A, its step': v.a1,
    'A, for each part of dryness': v.a2,
    'B at full humidity, K': v.b0K,
    'B, for each part of dryness': v.b1,
    'B, for its square': v.b2,
    'T₀ at full humidity, K': v.t0K,
    'T₀, for each part of dryness': v.t1,
    'T₀, for its power': v.t2,
    'the power': v.power,
  };
}
