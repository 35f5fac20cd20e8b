/** All saved plans as the screens see and change them. An edit shows at once and is written behind it. */
import type { AnswerKey, DraftAnswers } from '../../design/answers';
import type { PlanEdit } from '../../design/plan-edit';
import { copyOf, newSavedPlan, type SavedPlan } from '../../design/saved-plan';
import type { Records } from '../../storage/records';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';
import { savingTo } from './saving';
import { createShelf } from './shelf';
import { createShelfWriter } from './shelf-writer';

/** An edit before the library has put the time on it. */
export type Timeless<E> = E extends unknown ? Omit<E, 'at'> : never;
export type NewEdit = Timeless<PlanEdit>;

export interface LibraryOptions {
  /** Null when storage cannot be used: plans then live as long as the page. */
  readonly records: Records | null;
  readonly light: SaveLight;
  readonly now: () => number;
  readonly newId: () => string;
  readonly tell: (written: Written) => void;
  readonly onFirstSave: () => void;
}

export function createLibrary({ records, light, now, newId, tell, onFirstSave }: LibraryOptions) {
  const shelf = createShelf();
  const save = savingTo(records, light);
  const tellOf = (id: string): void => tell({ store: 'plans', id });
  let everSaved = false;
  const flush = createShelfWriter(shelf, save, (id) => {
    tellOf(id);
    if (!everSaved) onFirstSave();
    everSaved = true;
  });

  function edit(id: string, ...edits: readonly NewEdit[]): void {
    const at = now();
    shelf.edit(
      id,
      edits.map((each) => ({ ...each, at }) as PlanEdit),
    );
    void flush();
  }

  function begin(plan: SavedPlan, ...edits: readonly NewEdit[]): string {
    shelf.begin(plan);
    edit(plan.id, ...edits);
    return plan.id;
  }

  return {
    entries: shelf.entries,
    plans: shelf.plans,
    deleted: shelf.deleted,
    unreadable: shelf.unreadable,
    planOf: shelf.planOf,
    flush,
    edit,

    async load(): Promise<void> {
      if (records === null) return;
      const found = await records.plans();
      shelf.fill(found);
      everSaved = found.length > 0;
    },

    /** Another tab has written this plan. */
    async reread(id: string): Promise<void> {
      shelf.reread(id, (await records?.plan(id))?.read);
    },

    /** A new plan with its first answers; in the list from this call on. */
    create: (answers: DraftAnswers, ...edits: readonly NewEdit[]): string =>
      begin(newSavedPlan(newId(), now(), answers), ...edits),

    answer(
      id: string,
      key: AnswerKey,
      answer: DraftAnswers,
      more: { unsure?: boolean; pointOut?: boolean } = {},
    ): void {
      edit(id, { kind: 'answer', key, answer, ...more });
    },

    copy(id: string, copyName: string): string | undefined {
      const plan = shelf.planOf(id);
      return plan === undefined ? undefined : begin(copyOf(plan, newId(), now(), copyName));
    },

    /** Brings plans from a file or a link in. True when they are on disk. */
    async bring(plans: readonly SavedPlan[]): Promise<boolean> {
      if (!(await save((to) => to.add(plans)))) return false;
      for (const plan of plans) {
        shelf.put(plan);
        tellOf(plan.id);
      }
      return true;
    },

    /** For good: there is no way back. */
    async destroy(id: string): Promise<void> {
      shelf.hold(id);
      await flush(); // what is just being written would bring it back
      const done = await light.during(async () => {
        await records?.destroy(id);
      });
      if (!done) return shelf.letGo(id); // what waits is written with the next edit or "try again"
      shelf.remove(id);
      tellOf(id);
    },
  };
}
export type Library = ReturnType<typeof createLibrary>;
