import type { PlanDocument } from '../../job/plan/types.js';
import { describeLabel } from '../label/describe-label.js';
import { isUs } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatNumber } from '../units/number.js';

/** What a label prints of it, by the rules of the reader's region. */
export function labelLines({ label }: PlanDocument, options: DisplayOptions): readonly string[] {
  const us = isUs(options);
  const rules = us ? label.us : label.eu;
  const { carbohydrateG, sugarsG, polyolsG } = rules.per100G;
  const whole = (value: number) => formatNumber(value, 0, options);
  const energy = ({ energyKcal, energyKJ }: typeof rules.per100G) =>
    us ? `${whole(energyKcal)} kcal` : `${whole(energyKJ)} kJ (${whole(energyKcal)} kcal)`;
  const tenth = (value: number) => formatNumber(value, 1, options);
  // What no test of this sweet comes near is not worth a line here.
  const near = { ...rules, claims: rules.claims.filter(({ kind }) => kind !== 'not-met') };
  const { claims, statements, doses, note } = describeLabel(near, options);
  const piece = rules.perPiece;
  return [
    `100 g by ${us ? 'US' : 'EU'} rules: ${energy(rules.per100G)}, carbohydrate ${tenth(carbohydrateG)} g, of which sugars ${tenth(sugarsG)} g${polyolsG > 0 ? `, sugar alcohols ${tenth(polyolsG)} g` : ''}.`,
    ...(piece === undefined ? [] : [`One piece: ${energy(piece)}.`]),
    ...statements,
    ...claims,
    ...doses,
    note,
  ];
}
