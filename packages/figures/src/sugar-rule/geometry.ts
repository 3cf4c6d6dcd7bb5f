import type { StageRange } from 'vitrose';
import { type KitchenLadder, kitchenLadder, seaLevelEnds } from '../ladder/kitchen-ladder.js';
import { pressureOf } from '../ladder/read-kitchen.js';
import { lastSyrup } from '../ladder/rung-at.js';
import { backThroughKnots, throughKnots } from '../scale/knots.js';
import { type LinearScale, linearScale } from '../scale/linear.js';
import type { SugarRuleState } from './state.js';

/** Where everything on a sugar rule stands, in units of the drawing: `zoom` px each. */
export type SugarRuleGeometry = {
  readonly state: SugarRuleState;
  readonly ladder: KitchenLadder;
  /** A rule with room is drawn larger, letters and all. */
  readonly zoom: number;
  readonly width: number;
  readonly height: number;
  /** Ends of the strip of textures. */
  readonly top: number;
  readonly bottom: number;
  /** Where the two strips meet. */
  readonly joint: number;
  /** The outer edge of the degrees; the reading stands beyond it. */
  readonly edge: number;
  /** From the temperature at which sucrose as dry boils at sea level, °C. */
  readonly scale: LinearScale;
  /** The upper end of the sliding strip. */
  readonly slideTop: number;
  /** Where the slide ends and dry sugar begins; the bottom where no dry sugar is drawn. */
  readonly slideBottom: number;
  readonly dryTop: number;
};

const LEAST_WIDTH = 320;
const MOST_WIDTH = 400;
const LEAST_HEIGHT = 480;
const USUAL_HEIGHT = 680;
const HEAD = 56;
const FOOT = 4;
/** Room for a reading of three digits. */
const READING = 64;

/** Works out a sugar rule; drag and drawing share it. */
export function sugarRuleGeometry(state: SugarRuleState): SugarRuleGeometry {
  const zoom = zoomOf(state);
  const [widthPx, heightPx] = rulePx(state);
  const [width, height] = [widthPx / zoom, heightPx / zoom];
  const ladder = kitchenLadder(pressureOf(state), state.mixture);
  const [top, bottom] = [HEAD, height - FOOT];
  const scale = linearScale(seaLevelEnds(ladder), [top, bottom]);
  const edge = width - READING;
  const joint = Math.round(edge - Math.min(72, Math.max(54, width * 0.17)));
  const first = ladder.rungs[0];
  const syrup = lastSyrup(ladder.rungs);
  const dry = ladder.rungs.find((rung) => rung.id === 'clear-liquid');
  const y = (hereC: number): number => scale.at(backThroughKnots(ladder.knots, hereC));
  // At sea level the strips begin level with each other. Up a mountain the slide has come down by
  // what the boil has lost, and never so far that thread is left without degrees.
  const startC = Math.min(ladder.knots[0]?.[0] ?? 100, (first?.lowC ?? 100) - 1);
  return {
    state,
    ladder,
    zoom,
    width,
    height,
    top,
    bottom,
    joint,
    edge,
    scale,
    slideTop: Math.max(top - 8, y(startC)),
    slideBottom: dry === undefined || syrup === undefined ? bottom : scale.at(syrup.highSeaLevelC),
    dryTop: dry === undefined ? bottom : scale.at(dry.lowSeaLevelC),
  };
}

/** The size of the drawing on the page, px: a rule is not drawn broader than its words need. */
export function rulePx(state: SugarRuleState): readonly [number, number] {
  const { widthPx = LEAST_WIDTH, heightPx = USUAL_HEIGHT } = state;
  return [
    Math.min(Math.max(LEAST_WIDTH, widthPx), MOST_WIDTH * zoomOf(state)),
    Math.max(LEAST_HEIGHT, heightPx),
  ];
}

function zoomOf({ widthPx = LEAST_WIDTH, heightPx = USUAL_HEIGHT }: SugarRuleState): number {
  return Math.max(1, Math.min(widthPx / LEAST_WIDTH, heightPx / USUAL_HEIGHT));
}

/** Where a temperature of this kitchen stands, in units of the drawing. */
export function placeOf({ ladder, scale }: SugarRuleGeometry, hereC: number): number {
  return scale.at(backThroughKnots(ladder.knots, hereC));
}

/** The temperature of this kitchen at a place, in units of the drawing. */
export function hereAt({ ladder, scale }: SugarRuleGeometry, place: number): number {
  return throughKnots(ladder.knots, scale.valueAt(place));
}

/**
 * Where a temperature stands on the rule, px from its top as it is drawn.
 *
 * @param hereC - True temperature in this kitchen, °C.
 */
export function yAtTemperature(geometry: SugarRuleGeometry, hereC: number): number {
  return placeOf(geometry, hereC) * geometry.zoom;
}

/**
 * The temperature at a place on the rule: the other way round.
 *
 * @param yPx - From the top of the drawing, px; beyond the strips the nearer end is meant.
 * @returns true temperature in this kitchen, °C.
 */
export function temperatureAtY(geometry: SugarRuleGeometry, yPx: number): number {
  const { zoom, top, bottom } = geometry;
  return hereAt(geometry, Math.min(bottom, Math.max(top, yPx / zoom)));
}

/** The upper and the lower end of a rung, in units of the drawing. */
export function rungEnds(
  { scale }: SugarRuleGeometry,
  rung: StageRange,
): readonly [top: number, bottom: number] {
  return [scale.at(rung.lowSeaLevelC), scale.at(rung.highSeaLevelC)];
}
