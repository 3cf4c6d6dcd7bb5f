import type { Ingredient, IngredientId } from '../../matter/ingredients/types.js';
import type { MeasureUnit } from '../../matter/measures/types.js';
import type { Conversion, Profile } from '../../matter/saccharides/types.js';
import type { WrapFilmId } from '../../models/moisture/index.js';
import type { StageId } from '../../models/stages/types.js';

/**
 * What the cook has and wants: `vitrose.batch/1`. Only `formula` and `cook` are required; the plan
 * lists every default it took. Temperatures °C, masses g, pressures Pa, fractions 0–1.
 */
export type BatchDocument = {
  readonly format: 'vitrose.batch/1';
  readonly name?: string | undefined;
  /** Free words of the cook, kept as they are. */
  readonly note?: string | undefined;
  readonly formula: readonly FormulaLine[];
  readonly cook: Cook;
  readonly kitchen?: Kitchen | undefined;
  readonly thermometer?: Thermometer | undefined;
  readonly hob?: Hob | undefined;
  readonly pan?: Pan | undefined;
  readonly room?: Air | undefined;
  readonly store?: Store | undefined;
  readonly wrap?: Wrap | undefined;
  readonly handling?: Handling | undefined;
  readonly water?: Water | undefined;
  readonly mould?: Mould | undefined;
  readonly pieces?: Pieces | undefined;
  /** Ingredients of one's own, under the names the formula uses. */
  readonly ingredients?: Readonly<Record<string, OwnIngredient>> | undefined;
};

/** One line of the formula: what, how much, when. */
export type FormulaLine = LineDetails & Amount;

/** Everything of a line but the amount. */
export type LineDetails = {
  /** An ingredient the library knows, or a name from `ingredients`. */
  readonly ingredient: IngredientId | (string & {});
  /** Everything that is not water, as sold; the default of the ingredient otherwise. */
  readonly drySolidsMassFraction?: number | undefined;
  /** Starch syrups only, 0–100. */
  readonly dextroseEquivalent?: number | undefined;
  readonly conversion?: Conversion | undefined;
  readonly profile?: Profile | undefined;
  readonly when?: When | undefined;
  /** The cook's own words for the amount, kept as they are: `½ cup`. */
  readonly asWritten?: string | undefined;
};

/** Exactly one way to say how much. */
export type Amount =
  | { readonly massG: number }
  | { readonly measure: Measure }
  | {
      /** This line's dry solids in the dry solids of the cooked base, 0–1. */ readonly shareOfDrySolids: number;
    }
  | { /** As weighed, of the finished mass, 0–1. */ readonly shareOfFinished: number }
  | { readonly shareOfIngredient: ShareOfIngredient }
  | { readonly makeUpWaterFor: MakeUpWater };

/** Spoons, cups, drams and other weights. */
export type Measure = {
  readonly quantity: number;
  readonly unit: MeasureUnit;
  /** How it lies in the spoon: `granulated`, `brown-packed`; the first form of the table otherwise. */
  readonly form?: string | undefined;
};

/** As weighed, of another ingredient as weighed: water at 0.33 of the sucrose. */
export type ShareOfIngredient = { readonly ingredient: string; readonly share: number };

/** The water that turns a dried syrup into a syrup of these solids. Only water can do that. */
export type MakeUpWater = { readonly ingredient: string; readonly drySolidsMassFraction: number };

/** When a line goes into the pan. */
export type When = 'start' | 'first-boil' | 'off-heat' | { readonly atC: number };

/** Where to stop: exactly one target. `underVacuumPa` is what a gauge shows below the air around it. */
export type Cook = CookTarget & { readonly underVacuumPa?: number | undefined };

/** The four ways to say where to stop. */
export type CookTarget =
  | { readonly toStage: StageId; readonly aim?: Aim | undefined }
  | { /** A number printed for sea level. */ readonly toSeaLevelC: number }
  | { /** Water in the finished sweet, 0–1. */ readonly toMoistureMassFraction: number }
  | { /** The finished sweet stays hard up to about here. */ readonly toGlassTransitionC: number };

/** Where in the range of a stage. */
export type Aim = 'low' | 'middle' | 'high';

/** One of four ways to know the air pressure at the pan. */
export type Kitchen =
  | { readonly elevationM: number }
  | { /** A barometer at the pan. */ readonly pressurePa: number }
  | {
      /** What a weather service prints. */ readonly seaLevelPressurePa: number;
      readonly elevationM: number;
    }
  | { /** True temperature, from a trusted second thermometer. */ readonly waterBoilsAtC: number };

/** What kind of thermometer, and what it shows in boiling and in ice water. Readings are readings. */
export type Thermometer = {
  readonly kind?: ThermometerKind | undefined;
  readonly boilingWaterReadingC?: number | undefined;
  readonly iceWaterReadingC?: number | undefined;
  /** The end of its scale. */
  readonly maxC?: number | undefined;
  /** Seconds until it has settled on a new temperature. */
  readonly readsInS?: number | undefined;
};

/** How a thermometer feels the mass; it decides how deep the mass must stand. */
export type ThermometerKind = 'probe' | 'thermocouple' | 'dial' | 'liquid-in-glass' | 'infrared';

/** A hob by its power, or by how fast it boils water in this pan. */
export type Hob =
  | { readonly kind: 'gas' | 'resistance' | 'induction'; readonly powerW: number }
  | {
      readonly kind: 'timed';
      readonly waterG: number;
      readonly fromC: number;
      readonly boilsInMin: number;
    };

/** The pan. */
export type Pan = {
  readonly diameterMm?: number | undefined;
  readonly capacityMl?: number | undefined;
  /** Empty, with spoon and probe if they stay in. */
  readonly emptyMassG?: number | undefined;
};

/** The air of a room. */
export type Air = {
  readonly temperatureC?: number | undefined;
  /** 0–1. */
  readonly relativeHumidity?: number | undefined;
};

/** Where the sweets wait, and for how long; the room and 180 days otherwise. */
export type Store = Air & { readonly forDays?: number | undefined };

/** How a piece is closed in. Twist wrap counts as open. */
export type Wrap =
  | 'none'
  | 'twist'
  | {
      readonly film: WrapFilmId;
      readonly areaCm2: number;
      readonly sealFactor?: number | undefined;
    };

/** What is done to the mass after the boil. */
export type Handling = { readonly stirredAfterBoil?: boolean | undefined };

/** The water of this kitchen. */
export type Water = { readonly alkalinityMmolPerL?: number | undefined };

/** A mould by its cavities. */
export type Mould = {
  readonly kind?: MouldKind | undefined;
  readonly cavityMl?: number | undefined;
  /** Cavities of one mould. */
  readonly cavities?: number | undefined;
  /** How many of these moulds there are. */
  readonly moulds?: number | undefined;
  /** The hottest mass it bears. */
  readonly maxC?: number | undefined;
};

/** What a mould is made of; it decides what heat it bears when no limit is given. */
export type MouldKind =
  | 'silicone'
  | 'metal'
  | 'polycarbonate'
  | 'plastic'
  | 'starch'
  | 'sugar-bed'
  | 'slab';

/** How many pieces of what size, and what is lost on the way. */
export type Pieces = {
  readonly massG?: number | undefined;
  readonly cavityMl?: number | undefined;
  readonly count?: number | undefined;
  readonly finishedMassG?: number | undefined;
  /** Left on pan and tools, 0–1. */
  readonly lossFraction?: number | undefined;
  /** Broken or misfilled, 0–1. */
  readonly breakFraction?: number | undefined;
};

/** An ingredient of one's own: what the label or the certificate says. */
export type OwnIngredient = {
  readonly kind: Ingredient['kind'];
  readonly name?: string | undefined;
  /** Everything that is not water, as sold, 0–1. */
  readonly drySolidsMassFraction: number;
  /** Shares of species in the dry part; with `apart` they sum to 1, unless it is a starch syrup. */
  readonly solids?: Ingredient['solids'] | undefined;
  readonly apart?: Ingredient['apart'] | undefined;
  /** Starch syrup solids of this dextrose equivalent. */
  readonly dextroseEquivalent?: number | undefined;
  readonly conversion?: Conversion | undefined;
  readonly maxAdditionC?: number | undefined;
};
