import type { BenchProps } from '../bench-context.js';
import type { LaidBeside } from './use-beside.js';

/** What is laid beside the plan on the table, by its id; empty for nothing. */
export type Lay = (id: string) => void;

/** What a part is given that shows another plan. */
export type BesideProps = BenchProps & LaidBeside & { readonly lay: Lay };
