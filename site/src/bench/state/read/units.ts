import {
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  feetFromMetres,
  gFromLb,
  gFromOz,
  hpaFromPa,
  inHgFromPa,
  lbFromG,
  metresFromFeet,
  mmHgFromPa,
  ozFromG,
  paFromHpa,
  paFromInHg,
  paFromMmHg,
} from 'vitrose';

/** A unit a reader may type. */
export type Unit = {
  readonly sign: string;
  /** Words for it, in lower case. */
  readonly words: readonly string[];
  readonly toDocument: (value: number) => number;
  readonly fromDocument: (value: number) => number;
};

/** Everything a field can hold, and how it is written. */
export type QuantityId =
  | 'temperature'
  | 'elevation'
  | 'pressure'
  | 'mass'
  | 'length'
  | 'volume'
  | 'percent'
  | 'count'
  | 'minutes'
  | 'days'
  | 'seconds'
  | 'power'
  | 'area'
  | 'alkalinity'
  | 'plain';

const times = (sign: string, factor: number, ...words: string[]): Unit => ({
  sign,
  words: [sign.toLowerCase(), ...words],
  toDocument: (value) => value * factor,
  fromDocument: (value) => value / factor,
});

/** Units of each quantity, the reader's own first; the others are tried when that is impossible. */
export function unitsOf(id: QuantityId, units: 'metric' | 'us'): readonly [Unit, ...Unit[]] {
  const us = units === 'us';
  const order = (metric: Unit, american: Unit, ...rest: Unit[]): readonly [Unit, ...Unit[]] =>
    us ? [american, metric, ...rest] : [metric, american, ...rest];
  switch (id) {
    case 'temperature':
      return order(times('°C', 1, 'c', 'celsius', 'deg c', 'degrees c', 'degrees celsius'), {
        sign: '°F',
        words: ['°f', 'f', 'fahrenheit', 'deg f', 'degrees f', 'degrees fahrenheit'],
        toDocument: celsiusFromFahrenheit,
        fromDocument: fahrenheitFromCelsius,
      });
    case 'elevation':
      return order(
        times('m', 1, 'metre', 'metres', 'meter', 'meters', 'masl'),
        {
          sign: 'ft',
          words: ['ft', 'foot', 'feet', "'", '′'],
          toDocument: metresFromFeet,
          fromDocument: feetFromMetres,
        },
        times('km', 1000),
      );
    case 'pressure':
      return order(
        {
          sign: 'hPa',
          words: ['hpa', 'mbar', 'mb', 'millibar'],
          toDocument: paFromHpa,
          fromDocument: hpaFromPa,
        },
        {
          sign: 'inHg',
          words: ['inhg', 'in hg', 'in', 'inches', '"'],
          toDocument: paFromInHg,
          fromDocument: inHgFromPa,
        },
        {
          sign: 'mmHg',
          words: ['mmhg', 'mm hg', 'torr', 'mm'],
          toDocument: paFromMmHg,
          fromDocument: mmHgFromPa,
        },
        times('kPa', 1000),
      );
    case 'mass':
      return order(
        times('g', 1, 'gram', 'grams', 'gr'),
        {
          sign: 'oz',
          words: ['oz', 'ounce', 'ounces'],
          toDocument: gFromOz,
          fromDocument: ozFromG,
        },
        times('kg', 1000, 'kilo', 'kilos'),
        {
          sign: 'lb',
          words: ['lb', 'lbs', 'pound', 'pounds'],
          toDocument: gFromLb,
          fromDocument: lbFromG,
        },
      );
    case 'length':
      return order(times('cm', 10), times('in', 25.4, 'inch', 'inches', '"', '″'), times('mm', 1));
    case 'volume':
      return us
        ? [
            times('qt', 946.352946, 'quart', 'quarts'),
            times('ml', 1, 'millilitres', 'milliliters', 'cc'),
            times('l', 1000, 'litre', 'litres', 'liter', 'liters'),
            times('cup', 236.5882365, 'cups'),
          ]
        : [
            times('ml', 1, 'millilitres', 'milliliters', 'cc'),
            times('l', 1000, 'litre', 'litres', 'liter', 'liters'),
            times('cl', 10),
            times('qt', 946.352946, 'quart', 'quarts'),
          ];
    case 'percent':
      return [times('%', 0.01, 'percent', 'per cent', 'pc')];
    case 'count':
      return [times('', 1, 'pieces', 'piece', 'drops', 'sweets')];
    case 'minutes':
      return [times('min', 1, 'minute', 'minutes', "'", '′'), times('s', 1 / 60, 'sec', 'seconds')];
    case 'seconds':
      return [times('s', 1, 'sec', 'second', 'seconds'), times('min', 60, 'minute', 'minutes')];
    case 'power':
      return [times('W', 1, 'watt', 'watts'), times('kW', 1000, 'kilowatt', 'kilowatts')];
    case 'area':
      return order(
        times('cm²', 1, 'cm2', 'sq cm', 'square centimetres', 'square centimeters'),
        times('in²', 6.4516, 'in2', 'sq in', 'square inches'),
      );
    case 'alkalinity':
      return [
        times('mmol/L', 1, 'mmol', 'mmol per litre', 'mmol per liter'),
        // Calcium carbonate, 100.09 g/mol, takes up two protons.
        times('mg/L CaCO₃', 1 / 50.045, 'mg/l caco3', 'mg/l as caco3', 'ppm caco3', 'ppm'),
      ];
    case 'days':
      return [
        times('days', 1, 'day', 'd'),
        times('weeks', 7, 'week', 'w'),
        times('months', 30.4375, 'month'),
      ];
    default:
      return [times('', 1, 'x', '×', 'times')];
  }
}
