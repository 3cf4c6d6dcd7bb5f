import { totalG } from '../../matter/mixture/assemble.js';
import { SYRUP_INSTEAD, syrupInstead } from '../changes/syrup-instead.js';
import { speciesShare } from '../plan/cautions.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice, Change, Remedy } from './types.js';

/** Cream of tartar per sucrose: common practice, 1–2 g per kg. */
const TARTAR_PER_SUCROSE = 0.002;

/** Sucrose alone grains while it is worked; acid in the boil makes its own doctor. */
export function noDoctor(context: AdviceContext): Advice | undefined {
  const { lines, finished, batch } = context;
  const stirred = batch.handling?.stirredAfterBoil ?? false;
  const { wholeDoctorShare, sugarSweetShare } = ADVICE_THRESHOLDS;
  const sucroseShare = speciesShare(finished, 'sucrose') / finished.drySolidsMassFraction;
  const doctorShare =
    1 - (speciesShare(finished, 'sucrose') * finished.massG) / totalG(finished.solids);
  const acidInTheBoil = lines.some(
    ({ record, late, massG }) => record.kind === 'acid' && !late && massG > 0,
  );
  if (
    sucroseShare < sugarSweetShare.value ||
    doctorShare >= wholeDoctorShare.value ||
    acidInTheBoil
  )
    return undefined;
  return {
    code: 'no-doctor',
    // Stirred, nothing holds it: every grain on the spoon is a seed.
    severity: stirred ? 'will-fail' : 'may-disappoint',
    path: '/formula',
    numbers: { doctorShare, wantedShare: SYRUP_INSTEAD },
    remedies: [
      ...moreSyrup(context),
      remedy(
        'add-cream-of-tartar',
        [
          {
            path: '/formula/-',
            value: {
              ingredient: 'cream-of-tartar',
              when: 'first-boil',
              shareOfIngredient: { ingredient: 'sucrose', share: TARTAR_PER_SUCROSE },
            },
          },
        ],
        { sharePerSucrose: TARTAR_PER_SUCROSE },
      ),
    ],
  };
}

function moreSyrup(context: AdviceContext): readonly Remedy[] {
  const changes = syrupInstead(context);
  return changes.length === 0
    ? []
    : [remedy('add-glucose-syrup', changes, { share: SYRUP_INSTEAD })];
}

/** Dextrose is a small, soft sugar; a syrup of the same name on the label is mostly long chains. */
export function dextroseNotSyrup({ lines, outcome }: AdviceContext): Advice | undefined {
  const dry = outcome.baseG * (1 - outcome.baseMoisture);
  const dextrose = lines.filter(
    ({ id, late }) => !late && (id === 'glucose' || id === 'dextrose-monohydrate'),
  );
  const dextroseShare =
    dextrose.reduce((sum, { massG, drySolids }) => sum + massG * drySolids.value, 0) / dry;
  if (dextroseShare <= ADVICE_THRESHOLDS.dextroseShare.value) return undefined;
  const changes = dextrose.flatMap(({ path, line }): Change[] => [
    { path: `${path}/ingredient`, value: 'dried-glucose-syrup' },
    ...(line.drySolidsMassFraction === undefined
      ? []
      : [{ path: `${path}/drySolidsMassFraction`, value: null }]),
  ]);
  return {
    code: 'dextrose-not-syrup',
    severity: 'may-disappoint',
    path: dextrose[0]?.path,
    numbers: { dextroseShare },
    remedies: [remedy('syrup-for-dextrose', changes)],
  };
}
