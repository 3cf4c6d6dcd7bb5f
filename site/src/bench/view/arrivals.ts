import type { BatchDocument } from 'vitrose';
import { benchLaterWords } from '../../words/bench-later.js';
import { arrive, startWith } from '../state/arrive.js';
import { keptKitchen, keptRecipe, type Shelf } from '../state/kitchen-store.js';
import { inKitchen, kitchenOf } from '../state/recipe.js';
import { unpacked } from '../state/share-link.js';
import type { Edit } from './use-arrival.js';
import { shelf } from './use-storage.js';

/** Lays on the table the recipe and the kitchen this device keeps. */
export async function layKept(kept: Shelf, start: BatchDocument, edit: Edit): Promise<void> {
  const documents = await import('vitrose/documents');
  const kitchen = keptKitchen(kept, documents);
  const recipe = keptRecipe(kept, documents);
  if (kitchen === undefined && recipe === undefined) return;
  edit((state) => {
    const batch = inKitchen(recipe ?? start, kitchen ?? kitchenOf(start));
    const next = startWith(batch, state.manner, kitchen === undefined ? 'nobodys' : 'mine');
    return { ...next, round: state.round + 1 };
  });
}

/** Opens the recipe the address carries, if it carries one. */
export async function openLink(edit: Edit): Promise<void> {
  const found = await unpacked(location.hash);
  if (found.kind === 'none') return;
  if (found.kind === 'refused') {
    const { version, tooLong, tooLarge, broken } = benchLaterWords.arrival;
    const words = { version, 'too-long': tooLong, 'too-large': tooLarge, broken };
    edit((state) => ({ ...state, trouble: [words[found.why]] }));
    return;
  }
  await openText(found.text, 'link', edit);
}

/** Opens a batch from its text, or says everything that stands in the way. */
export async function openText(text: string, from: 'link' | 'file', edit: Edit): Promise<void> {
  const documents = await import('vitrose/documents');
  const { explainProblem } = await import('../state/explain.js');
  const reading = documents.readBatch(text);
  const kept = shelf();
  edit((state) =>
    reading.kind === 'problems'
      ? {
          ...state,
          trouble: reading.problems.map((one) => explainProblem(one, state.manner).text),
        }
      : arrive(
          state,
          reading.batch,
          from,
          kept === undefined ? undefined : keptKitchen(kept, documents),
        ),
  );
}
