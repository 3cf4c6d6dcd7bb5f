import {
  SYRUP_VISCOSITY_CONSTANTS,
  VISCOSITY_CONSTANTS,
  VISCOSITY_JOIN_CONSTANTS,
} from './viscosity-constants.js';

/** The two constants of a WLF curve. */
export type Wlf = readonly [c1: number, c2K: number];

/** Halfway between the other two: dry sugar is less fragile than syrup. */
export function candyCurve(): Wlf {
  const { candyC1, candyC2K } = VISCOSITY_CONSTANTS;
  return [candyC1.value, candyC2K.value];
}

/** Fitted to sucrose and water. */
export function syrupCurve(): Wlf {
  const { syrupC1, syrupC2K } = VISCOSITY_CONSTANTS;
  return [syrupC1.value, syrupC2K.value];
}

/** For any glass former. */
export function universalCurve(): Wlf {
  const { universalC1, universalC2K } = VISCOSITY_CONSTANTS;
  return [universalC1.value, universalC2K.value];
}

/** log₁₀ of Pa·s at a distance above the glass transition; below it straight on, for bands only. */
export function log10OfWlf(aboveGlassK: number, [c1, c2K]: Wlf): number {
  const glass = VISCOSITY_CONSTANTS.glassLog10PaS.value;
  return glass - (c1 * aboveGlassK) / (c2K + Math.max(0, aboveGlassK));
}

/** How far above the glass transition a viscosity is reached, K. */
export function aboveGlassK(log10PaS: number, [c1, c2K]: Wlf): number {
  const fallen = VISCOSITY_CONSTANTS.glassLog10PaS.value - log10PaS;
  return (c2K * fallen) / (c1 - fallen);
}

/**
 * Sucrose in water, log₁₀ of Pa·s.
 *
 * @equation log₁₀ η = 22.46·x − 0.114 + (30 − t)/(91 + t)·(1.1 + 43.1·x^1.25), mPa·s
 */
export function log10OfSyrup(dissolvedMassFraction: number, temperatureC: number): number {
  const {
    perMoleFraction: a,
    atZero: b,
    referenceC,
    singularBelowZeroC,
    slope: c,
    slopePerPower: d,
    power: n,
    sucroseMolarMassGPerMol: Msuc,
    waterMolarMassGPerMol: Mw,
  } = SYRUP_VISCOSITY_CONSTANTS;
  const sugar = dissolvedMassFraction / Msuc.value;
  const x = sugar / (sugar + (1 - dissolvedMassFraction) / Mw.value);
  const t = temperatureC;
  const phi = (referenceC.value - t) / (singularBelowZeroC.value + t);
  const log10MPaS = a.value * x + b.value + phi * (c.value + d.value * x ** n.value);
  return log10MPaS - 3;
}

/** 1 up to where the syrup equation holds, 0 from where only the glass curve does. */
export function syrupWeight(dissolvedMassFraction: number): number {
  const { syrupUpTo, candyFrom } = VISCOSITY_JOIN_CONSTANTS;
  const weight = (candyFrom.value - dissolvedMassFraction) / (candyFrom.value - syrupUpTo.value);
  return Math.min(1, Math.max(0, weight));
}
