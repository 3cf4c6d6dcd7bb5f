/** Conversions, at the edges only: inside the library there is one unit for each quantity. */

export { feetFromMetres, metresFromFeet } from './length.js';
export { gFromLb, gFromOz, lbFromG, ozFromG } from './mass.js';
export {
  hpaFromPa,
  inHgFromPa,
  mmHgFromPa,
  paFromHpa,
  paFromInHg,
  paFromMmHg,
} from './pressure.js';
export {
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  fahrenheitDifferenceFromKelvin,
  fahrenheitFromCelsius,
  kelvinDifferenceFromFahrenheit,
  kelvinFromCelsius,
} from './temperature.js';
export {
  mlFromUsCup,
  mlFromUsFluidDram,
  mlFromUsFluidOunce,
  mlFromUsTablespoon,
  mlFromUsTeaspoon,
  usCupsFromMl,
  usFluidDramsFromMl,
  usFluidOuncesFromMl,
  usTablespoonsFromMl,
  usTeaspoonsFromMl,
} from './volume.js';
