/**
 * All saved plans as the screens see them. An edit shows at once and is written behind it; edits that are not on disk yet are laid over
 * whatever another tab has written meanwhile, so nothing that was typed here is lost while a write waits or fails.
 */
import { computed, signal } from '@preact/signals';
import type { AnswerKey, DraftAnswers } from '../../design/answers';
import { applyEdit, type PlanEdit } from '../../design/plan-edit';
import { copyOf, isDeleted, newSavedPlan, type SavedPlan } from '../../design/saved-plan';
import type { ReadRecord } from '../../storage/read-record';
import type { Records } from '../../storage/records';
import { StorageError } from '../../storage/storage-error';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';

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

export type Entry = ReadRecord<SavedPlan>;

export function createLibrary(options: LibraryOptions) {
  const { records, light, now, newId, tell } = options;
  const entries = signal<ReadonlyMap<string, Entry>>(new Map());
  /** Plans as last known from storage, without what waits. */
  const stored = new Map<string, SavedPlan>();
  const waiting = new Map<string, readonly PlanEdit[]>();
  let writing: Promise<void> | null = null;
  let everSaved = false;

  const show = (id: string, entry: Entry | undefined): void => {
    const next = new Map(entries.value);
    if (entry === undefined) next.delete(id);
    else next.set(id, entry);
    entries.value = next;
  };
  const showPlan = (plan: SavedPlan): void => show(plan.id, { kind: 'good', record: plan });
  const planOf = (id: string): SavedPlan | undefined => {
    const entry = entries.value.get(id);
    return entry?.kind === 'good' ? entry.record : undefined;
  };
  const overlaid = (plan: SavedPlan): SavedPlan => (waiting.get(plan.id) ?? []).reduce(applyEdit, plan);

  async function writeOne(id: string, edits: readonly PlanEdit[]): Promise<boolean> {
    return light.during(async () => {
      if (records === null) throw new StorageError('not-allowed');
      const base = stored.get(id);
      if (base === undefined) throw new StorageError('other', 'no such plan');
      const saved = await records.edit(base, edits);
      stored.set(id, saved);
      const rest = (waiting.get(id) ?? []).slice(edits.length);
      if (rest.length === 0) waiting.delete(id);
      else waiting.set(id, rest);
      showPlan(overlaid(saved));
      tell({ store: 'plans', id });
    });
  }

  async function writeAll(): Promise<void> {
    for (let next = waiting.entries().next(); !next.done; next = waiting.entries().next()) {
      const [id, edits] = next.value;
      if (!(await writeOne(id, edits))) return; // kept waiting; the next edit or "try again" writes it
      if (!everSaved) options.onFirstSave();
      everSaved = true;
    }
  }

  /** Writes what waits. Resolves when nothing does, or when a write failed. */
  function flush(): Promise<void> {
    writing ??= writeAll().finally(() => {
      writing = null;
    });
    return writing;
  }

  return {
    entries: computed(() => entries.value),
    /** Readable plans that are not deleted, the last touched first. */
    plans: computed(() =>
      [...entries.value.values()]
        .flatMap((entry) => (entry.kind === 'good' && !isDeleted(entry.record) ? [entry.record] : []))
        .sort((a, b) => b.updatedAt - a.updatedAt),
    ),
    deleted: computed(() =>
      [...entries.value.values()].flatMap((entry) =>
        entry.kind === 'good' && isDeleted(entry.record) ? [entry.record] : [],
      ),
    ),
    /** What cannot be read: of a newer version, or broken. */
    unreadable: computed(() => [...entries.value].filter(([, entry]) => entry.kind !== 'good')),
    planOf,
    flush,

    async load(): Promise<void> {
      if (records === null) return;
      const found = await records.plans();
      for (const { id, read } of found) if (read.kind === 'good') stored.set(id, read.record);
      entries.value = new Map(found.map(({ id, read }) => [id, read]));
      everSaved = found.length > 0;
    },

    /** Another tab has written this plan. */
    async reread(id: string): Promise<void> {
      const found = await records?.plan(id);
      if (found === undefined) {
        if (!waiting.has(id)) show(id, undefined);
        return;
      }
      if (found.read.kind !== 'good') return show(id, found.read);
      stored.set(id, found.read.record);
      showPlan(overlaid(found.read.record));
    },

    /** A new plan with its first answers; in the list from this call on. */
    create(answers: DraftAnswers, ...edits: readonly NewEdit[]): string {
      const id = newId();
      const plan = newSavedPlan(id, now(), answers);
      stored.set(id, plan);
      showPlan(plan);
      waiting.set(id, []);
      this.edit(id, ...edits);
      return id;
    },

    edit(id: string, ...edits: readonly NewEdit[]): void {
      const plan = planOf(id);
      if (plan === undefined) return;
      const at = now();
      const timed = edits.map((edit) => ({ ...edit, at }) as PlanEdit);
      waiting.set(id, [...(waiting.get(id) ?? []), ...timed]);
      showPlan(timed.reduce(applyEdit, plan));
      void flush();
    },

    answer(
      id: string,
      key: AnswerKey,
      answer: DraftAnswers,
      more: { unsure?: boolean; pointOut?: boolean } = {},
    ): void {
      this.edit(id, { kind: 'answer', key, answer, ...more });
    },

    copy(id: string, copyName: string): string | undefined {
      const plan = planOf(id);
      if (plan === undefined) return undefined;
      const copy = copyOf(plan, newId(), now(), copyName);
      stored.set(copy.id, copy);
      showPlan(copy);
      waiting.set(copy.id, []);
      void flush();
      return copy.id;
    },

    /** Brings plans from a file or a link in. True when they are on disk. */
    async bring(plans: readonly SavedPlan[]): Promise<boolean> {
      const done = await light.during(async () => {
        if (records === null) throw new StorageError('not-allowed');
        await records.add(plans);
      });
      if (!done) return false;
      for (const plan of plans) {
        stored.set(plan.id, plan);
        showPlan(plan);
        tell({ store: 'plans', id: plan.id });
      }
      return true;
    },

    /** For good: there is no way back. */
    async destroy(id: string): Promise<void> {
      const done = await light.during(async () => {
        if (records !== null) await records.destroy(id);
      });
      if (!done) return;
      waiting.delete(id);
      stored.delete(id);
      show(id, undefined);
      tell({ store: 'plans', id });
    },
  };
}
export type Library = ReturnType<typeof createLibrary>;
