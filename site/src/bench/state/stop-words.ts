import type { DescribedPlan } from 'vitrose/words';

/** The first line of the answer, taken apart so that its number can stand large. */
export type StopWords = {
  /** `143` */
  readonly reading: string;
  /** `°C` */
  readonly unit: string;
  /** `289 °F` */
  readonly other: string;
  readonly low: string;
  readonly high: string;
  /** A sentence more, where the number rests on the model. */
  readonly more: string;
};

const LINE =
  /^(\S+) (°[CF]) · (\S+ °[CF]) on your thermometer, between (\S+) and (\S+?)\.(?: (.*))?$/;

/** Takes the line apart; nothing where the library says it in another way. */
export function stopWords({ answer }: DescribedPlan): StopWords | undefined {
  const found = LINE.exec(answer.find(({ id }) => id === 'stop')?.text ?? '');
  if (found === null) return undefined;
  const [, reading = '', unit = '', other = '', low = '', high = '', more = ''] = found;
  return { reading, unit, other, low, high, more };
}
