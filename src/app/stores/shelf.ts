/**
 * Plans in memory, as the screens see them: what storage holds of each, with the edits laid over it that are not on disk yet. So nothing that
 * was typed here is lost while a write waits or fails, whatever another tab has written meanwhile.
 */
import { computed, signal } from '@preact/signals';
import { applyEdit, type PlanEdit } from '../../design/plan-edit';
import { isDeleted, type SavedPlan } from '../../design/saved-plan';
import type { ReadRecord } from '../../storage/read-record';

type Entry = ReadRecord<SavedPlan>;

export function createShelf() {
  const entries = signal<ReadonlyMap<string, Entry>>(new Map());
  /** Plans as last known from storage, without what waits. */
  const stored = new Map<string, SavedPlan>();
  const waiting = new Map<string, readonly PlanEdit[]>();
  /** Plans about to be destroyed: a write would bring them back. */
  const held = new Set<string>();
  const readable = computed(() =>
    [...entries.value.values()].flatMap((entry) => (entry.kind === 'good' ? [entry.record] : [])),
  );

  const show = (id: string, entry: Entry): void => {
    entries.value = new Map(entries.value).set(id, entry);
  };
  const planOf = (id: string): SavedPlan | undefined => {
    const entry = entries.value.get(id);
    return entry?.kind === 'good' ? entry.record : undefined;
  };
  /** What storage holds of this plan now. */
  const put = (plan: SavedPlan): void => {
    stored.set(plan.id, plan);
    show(plan.id, { kind: 'good', record: (waiting.get(plan.id) ?? []).reduce(applyEdit, plan) });
  };

  return {
    entries: computed(() => entries.value),
    /** Readable plans that are not deleted, the last touched first. */
    plans: computed(() => readable.value.filter((plan) => !isDeleted(plan)).sort((a, b) => b.updatedAt - a.updatedAt)),
    deleted: computed(() => readable.value.filter(isDeleted)),
    /** What cannot be read: of a newer version, or broken. */
    unreadable: computed(() => [...entries.value].filter(([, entry]) => entry.kind !== 'good')),
    planOf,
    put,
    /** All that storage holds, at the start. */
    fill(found: readonly { readonly id: string; readonly read: Entry }[]): void {
      for (const { id, read } of found) if (read.kind === 'good') stored.set(id, read.record);
      entries.value = new Map(found.map(({ id, read }) => [id, read]));
    },
    /** A record that another tab has written, or taken away. */
    reread(id: string, read: Entry | undefined): void {
      if (read?.kind === 'good') put(read.record);
      else if (read !== undefined) show(id, read);
      else if (!waiting.has(id)) this.remove(id);
    },
    /** A plan that is not on disk yet: it is written with its first edits, or as it is. */
    begin(plan: SavedPlan): void {
      waiting.set(plan.id, []);
      put(plan);
    },
    edit(id: string, edits: readonly PlanEdit[]): void {
      const plan = planOf(id);
      if (plan === undefined) return;
      waiting.set(id, [...(waiting.get(id) ?? []), ...edits]);
      show(id, { kind: 'good', record: edits.reduce(applyEdit, plan) });
    },
    /** From now on nothing of this plan is written, until it is removed or let go. */
    hold(id: string): void {
      held.add(id);
    },
    letGo(id: string): void {
      held.delete(id);
    },
    /** The plan that waits longest, of those not held: as stored, and the edits to be written. */
    nextWaiting(): {
      readonly id: string;
      readonly base: SavedPlan | undefined;
      readonly edits: readonly PlanEdit[];
    } | null {
      const next = [...waiting].find(([id]) => !held.has(id));
      return next === undefined ? null : { id: next[0], base: stored.get(next[0]), edits: next[1] };
    },
    /** So many of its edits are on disk, which now holds this. */
    written(saved: SavedPlan, count: number): void {
      const rest = (waiting.get(saved.id) ?? []).slice(count);
      if (rest.length === 0) waiting.delete(saved.id);
      else waiting.set(saved.id, rest);
      put(saved);
    },
    remove(id: string): void {
      held.delete(id);
      waiting.delete(id);
      stored.delete(id);
      const next = new Map(entries.value);
      next.delete(id);
      entries.value = next;
    },
  };
}
export type Shelf = ReturnType<typeof createShelf>;
