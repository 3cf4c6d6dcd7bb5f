/**
 * Figures of boiled sugar, drawn as SVG by pure functions of a state.
 *
 * @module figures
 */
export { BoilingCurve } from './boiling-curve/boiling-curve.js';
export { describeBoilingCurve } from './boiling-curve/describe.js';
export type { BoilingCurveState } from './boiling-curve/state.js';
export { CookTime } from './cook-time/cook-time.js';
export { describeCookTime } from './cook-time/describe.js';
export type { CookMoment, CookMomentId, CookPoint, CookTimeState } from './cook-time/state.js';
export { describeKeepingBars } from './keeping-bars/describe.js';
export { KeepingBars } from './keeping-bars/keeping-bars.js';
export type { KeepingBarsState } from './keeping-bars/state.js';
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
export { describeTemperatureAxis } from './temperature-axis/describe.js';
export type {
  TemperatureAxisState,
  WorkingWindow,
  WorkingWindowId,
} from './temperature-axis/state.js';
export { TemperatureAxis } from './temperature-axis/temperature-axis.js';
