import type { Air, Hob, Kitchen, Mould, Pan, Thermometer, Water } from '../../job/batch/types.js';

/**
 * A kitchen on its own: `vitrose.kitchen/1`. What stays the same from batch to batch, under the
 * names a batch document uses, so that it can be laid into one as it is.
 */
export type KitchenDocument = {
  readonly format: 'vitrose.kitchen/1';
  readonly kitchen?: Kitchen | undefined;
  readonly thermometer?: Thermometer | undefined;
  readonly hob?: Hob | undefined;
  readonly pan?: Pan | undefined;
  readonly room?: Air | undefined;
  readonly water?: Water | undefined;
  readonly mould?: Mould | undefined;
};
