/** What the tests use of a package that ships no types. Call `SetUnitSystem(SI)` first. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(unitSystem: number): void;
    /** Saturation pressure over water or ice, Pa, at a temperature in °C. */
    GetSatVapPres(temperatureC: number): number;
    /** Standard pressure, Pa, at an elevation in m. */
    GetStandardAtmPressure(elevationM: number): number;
  };
  export default psychrolib;
}
