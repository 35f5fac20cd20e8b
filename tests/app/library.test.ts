import { describe, expect, test, vi } from 'vitest';
import { createLibrary, type NewEdit } from '../../src/app/stores/library';
import { createSaveLight } from '../../src/app/stores/save-light';
import { applyEdit, type PlanEdit } from '../../src/design/plan-edit';
import type { SavedPlan } from '../../src/design/saved-plan';
import type { Records } from '../../src/storage/records';
import { StorageError } from '../../src/storage/storage-error';

type Write = 'edit' | 'destroy';

/** Records in memory, whose writes wait until they are let through. */
function heldRecords() {
  const kept = new Map<string, SavedPlan>();
  let failure: StorageError | null = null;
  let release: (() => void)[] = [];
  let held: readonly Write[] = [];
  const turn = async (write: Write): Promise<void> => {
    if (held.includes(write)) await new Promise<void>((resolve) => release.push(resolve));
  };
  const records = {
    plans: async () => [...kept.values()].map((record) => ({ id: record.id, read: { kind: 'good', record } })),
    plan: async (id: string) => {
      const record = kept.get(id);
      return record === undefined ? undefined : { id, read: { kind: 'good', record } };
    },
    edit: async (fresh: SavedPlan, edits: readonly PlanEdit[]) => {
      await turn('edit');
      if (failure !== null) throw failure;
      const plan = edits.reduce(applyEdit, kept.get(fresh.id) ?? fresh);
      kept.set(plan.id, plan);
      return plan;
    },
    destroy: async (id: string) => {
      await turn('destroy');
      if (failure !== null) throw failure;
      kept.delete(id);
    },
  } as unknown as Records;
  return {
    records,
    kept,
    hold: (...writes: readonly Write[]) => {
      held = writes;
    },
    waiting: () => release.length,
    letThrough: () => {
      held = [];
      for (const each of release) each();
      release = [];
    },
    fail: (error: StorageError | null) => {
      failure = error;
    },
  };
}

let clock = 100;
let ids = 0;
function setUp(records: Records | null) {
  const light = createSaveLight(() => clock);
  const told = vi.fn();
  const onFirstSave = vi.fn();
  const library = createLibrary({
    records,
    light,
    now: () => clock++,
    newId: () => `00000000-0000-4000-8000-${String(ids++).padStart(12, '0')}`,
    tell: told,
    onFirstSave,
  });
  return { light, library, told, onFirstSave };
}
const bands: NewEdit = { kind: 'answer', key: 'bands', answer: { bands: ['40m'] } };

describe('the list of plans', () => {
  test('shows an answer at once, and says saved only when it is written', async () => {
    const disk = heldRecords();
    const { library, light, told, onFirstSave } = setUp(disk.records);
    disk.hold('edit');
    const id = library.create({}, bands);
    expect(library.planOf(id)?.answers).toEqual({ bands: ['40m'] });
    expect(light.state.value.kind).toBe('writing');
    expect(told).not.toHaveBeenCalled();
    disk.letThrough();
    await library.flush();
    expect(light.state.value.kind).toBe('saved');
    expect(disk.kept.get(id)?.answers).toEqual({ bands: ['40m'] });
    expect(told).toHaveBeenCalledWith({ store: 'plans', id });
    expect(onFirstSave).toHaveBeenCalledOnce();
  });

  test('keeps what could not be written, says why, and writes it when tried again', async () => {
    const disk = heldRecords();
    const { library, light } = setUp(disk.records);
    disk.fail(new StorageError('full'));
    const id = library.create({}, bands);
    await library.flush();
    expect(light.state.value).toMatchObject({ kind: 'failed', error: { failure: 'full' } });
    expect(library.planOf(id)?.answers).toEqual({ bands: ['40m'] });
    disk.fail(null);
    await library.flush();
    expect(light.state.value.kind).toBe('saved');
    expect(disk.kept.get(id)?.answers).toEqual({ bands: ['40m'] });
  });

  test('lays waiting answers over what another tab has written', async () => {
    const disk = heldRecords();
    const { library } = setUp(disk.records);
    const id = library.create({}, bands);
    await library.flush();
    disk.hold('edit');
    library.answer(id, 'spanM', { spanM: 24 });
    const theirs = disk.kept.get(id);
    if (theirs === undefined) throw new Error('the plan was not written');
    disk.kept.set(id, applyEdit(theirs, { kind: 'answer', key: 'heightM', answer: { heightM: 8 }, at: clock++ }));
    await library.reread(id);
    expect(library.planOf(id)?.answers).toEqual({ bands: ['40m'], spanM: 24, heightM: 8 });
    disk.letThrough();
    await library.flush();
    expect(disk.kept.get(id)?.answers).toEqual({ bands: ['40m'], spanM: 24, heightM: 8 });
  });

  test('copies the answers of a plan and nothing of what was done with it', async () => {
    const disk = heldRecords();
    const { library } = setUp(disk.records);
    const id = library.create({}, bands, { kind: 'tick', key: 'shop:wire', on: true });
    const copy = library.copy(id, 'Hill bag');
    await library.flush();
    expect(disk.kept.get(copy ?? '')).toMatchObject({ answers: { name: 'Hill bag', bands: ['40m'] }, ticks: {} });
  });

  test('hides a deleted plan until it is put back', () => {
    const { library } = setUp(heldRecords().records);
    const id = library.create({}, bands);
    library.edit(id, { kind: 'deleted', on: true });
    expect([library.plans.value.length, library.deleted.value.length]).toEqual([0, 1]);
    library.edit(id, { kind: 'deleted', on: false });
    expect([library.plans.value.length, library.deleted.value.length]).toEqual([1, 0]);
  });

  test('destroys a plan for good while an edit of it is still being written', async () => {
    const disk = heldRecords();
    const { library } = setUp(disk.records);
    const id = library.create({}, bands);
    await library.flush();
    disk.hold('edit');
    library.answer(id, 'spanM', { spanM: 24 });
    const gone = library.destroy(id);
    disk.letThrough();
    await gone;
    await library.flush();
    expect(disk.kept.has(id)).toBe(false);
    expect(library.entries.value.has(id)).toBe(false);
  });

  test('writes nothing that is typed into a plan while it is being destroyed', async () => {
    const disk = heldRecords();
    const { library } = setUp(disk.records);
    const id = library.create({}, bands);
    await library.flush();
    disk.hold('destroy', 'edit');
    const gone = library.destroy(id);
    await vi.waitFor(() => expect(disk.waiting()).toBe(1));
    library.answer(id, 'heightM', { heightM: 8 });
    disk.letThrough();
    await gone;
    await library.flush();
    expect(disk.kept.has(id)).toBe(false);
    expect(library.entries.value.has(id)).toBe(false);
  });

  test('keeps and writes what was typed into a plan that could not be destroyed', async () => {
    const disk = heldRecords();
    const { library } = setUp(disk.records);
    const id = library.create({}, bands);
    await library.flush();
    disk.fail(new StorageError('full'));
    const tried = library.destroy(id);
    library.answer(id, 'spanM', { spanM: 24 });
    await tried;
    disk.fail(null);
    await library.flush();
    expect(library.planOf(id)?.answers).toEqual({ bands: ['40m'], spanM: 24 });
    expect(disk.kept.get(id)?.answers).toEqual({ bands: ['40m'], spanM: 24 });
  });

  test('keeps plans on the screen where nothing can be stored at all', async () => {
    const { library, light } = setUp(null);
    const id = library.create({}, bands);
    await library.flush();
    expect(light.state.value).toMatchObject({ kind: 'failed', error: { failure: 'not-allowed' } });
    expect(library.planOf(id)?.answers).toEqual({ bands: ['40m'] });
  });
});
