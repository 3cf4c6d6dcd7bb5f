/**
 * Figures of boiled sugar, drawn as SVG by pure functions of a state.
 *
 * @module figures
 */
export { BoilingCurve } from './boiling-curve/boiling-curve.js';
export { describeBoilingCurve } from './boiling-curve/describe.js';
export type { BoilingCurveState } from './boiling-curve/state.js';
export type { Units } from './ladder/temperature-words.js';
export { describeSugarRule } from './sugar-rule/describe.js';
export { ruleFaviconSvg } from './sugar-rule/favicon.js';
export {
  type SugarRuleGeometry,
  sugarRuleGeometry,
  temperatureAtY,
  yAtTemperature,
} from './sugar-rule/geometry.js';
export type { SugarRuleState } from './sugar-rule/state.js';
export { SugarRule } from './sugar-rule/sugar-rule.js';
export { SugarRuleDrawing } from './sugar-rule/sugar-rule-drawing.js';
