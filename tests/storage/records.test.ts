import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { newSavedPlan } from '../../src/design/saved-plan';
import { type Db, openStores, steps } from '../../src/storage/open';
import { createRecords } from '../../src/storage/records';
import { storageErrorOf } from '../../src/storage/storage-error';

const ids = { a: '11111111-1111-4111-8111-111111111111', b: '22222222-2222-4222-8222-222222222222' };
const quiet = { onBlocked: () => undefined, onTakenOver: () => undefined, onLost: () => undefined };
let number = 0;
let name = '';
let db: Db;

beforeEach(async () => {
  name = `test-${number++}`;
  db = await openStores(quiet, name);
});

describe('the database', () => {
  test('runs every step, and the number of steps is its version', async () => {
    const ran: number[] = [];
    const watched = await openDB(`${name}-watched`, steps.length, {
      upgrade(opened, _old, _new, tx) {
        steps.forEach((step, index) => {
          ran.push(index);
          step(opened as never, tx as never);
        });
      },
    });
    expect(ran).toEqual(steps.map((_, index) => index));
    expect([...watched.objectStoreNames]).toEqual([...db.objectStoreNames]);
    expect([...db.objectStoreNames]).toEqual(['onHand', 'plans', 'settings']);
    expect(db.version).toBe(steps.length);
  });

  test('lets a newer version through and says that it was taken over', async () => {
    const onTakenOver = vi.fn();
    await openStores({ ...quiet, onTakenOver }, `${name}-shared`);
    const newer = await openDB(`${name}-shared`, steps.length + 1);
    expect(newer.version).toBe(steps.length + 1);
    expect(onTakenOver).toHaveBeenCalledOnce();
    await expect(openStores(quiet, `${name}-shared`)).rejects.toSatisfy(
      (error) => storageErrorOf(error).failure === 'taken-over',
    );
  });
});

describe('plans', () => {
  test('an edit of a plan that is not there yet starts from the fresh one', async () => {
    const records = createRecords(db);
    const saved = await records.edit(newSavedPlan(ids.a, 10), [
      { kind: 'answer', key: 'bands', answer: { bands: ['40m'] }, at: 11 },
    ]);
    expect(saved.answers).toEqual({ bands: ['40m'] });
    expect(await records.plan(ids.a)).toEqual({ id: ids.a, read: { kind: 'good', record: saved } });
  });

  test("two tabs that edit the same plan keep each other's answers, and the later one wins on the same question", async () => {
    const one = createRecords(db);
    const two = createRecords(await openStores(quiet, name));
    const fresh = newSavedPlan(ids.a, 10);
    await one.edit(fresh, [{ kind: 'answer', key: 'heightM', answer: { heightM: 8 }, at: 30 }]);
    // The second tab's answer to the height was given earlier but arrives later.
    const merged = await two.edit(fresh, [
      { kind: 'answer', key: 'heightM', answer: { heightM: 5 }, at: 20 },
      { kind: 'answer', key: 'spanM', answer: { spanM: 24 }, at: 21 },
    ]);
    expect(merged.answers).toEqual({ heightM: 8, spanM: 24 });
  });

  test('a plan of a newer version is read as such and refuses to be overwritten', async () => {
    const raw = { id: ids.a, version: 99, answers: { name: 'From the future', wings: 2 } };
    await db.put('plans', raw);
    const records = createRecords(db);
    expect((await records.plans())[0]?.read).toEqual({ kind: 'newer', raw, version: 99 });
    await expect(records.edit(newSavedPlan(ids.a, 1), [{ kind: 'deleted', on: true, at: 2 }])).rejects.toMatchObject({
      failure: 'record-newer',
    });
    expect(await db.get('plans', ids.a)).toEqual(raw);
  });

  test('a broken plan is set aside with its reasons, stays as it is, and the others are read', async () => {
    const raw = { ...newSavedPlan(ids.a, 1), answers: { bands: ['41m'] } };
    await db.put('plans', raw);
    await db.put('plans', newSavedPlan(ids.b, 1));
    const records = createRecords(db);
    const [broken, good] = await records.plans();
    expect(broken?.read).toMatchObject({ kind: 'broken', problems: [{ key: 'answers.bands[0]', code: 'not-one-of' }] });
    expect(good?.read.kind).toBe('good');
    await expect(records.edit(newSavedPlan(ids.a, 1), [])).rejects.toMatchObject({ failure: 'record-broken' });
    expect(await db.get('plans', ids.a)).toEqual(raw);
  });

  test('adding refuses an id that is taken and then adds nothing', async () => {
    const records = createRecords(db);
    await records.add([newSavedPlan(ids.a, 1)]);
    await expect(records.add([newSavedPlan(ids.b, 1), newSavedPlan(ids.a, 2)])).rejects.toBeDefined();
    expect((await records.plans()).map(({ id }) => id)).toEqual([ids.a]);
  });

  test('destroying removes the plan for good', async () => {
    const records = createRecords(db);
    await records.add([newSavedPlan(ids.a, 1)]);
    await records.destroy(ids.a);
    expect(await records.plan(ids.a)).toBeUndefined();
  });
});

describe('parts and settings', () => {
  test('come back as they were put', async () => {
    const records = createRecords(db);
    const part = { version: 1, id: ids.b, addedAt: 5, part: { part: 'core', core: 'ft240-43', count: 2 } } as const;
    await records.putPart(part);
    expect(await records.parts()).toEqual([{ id: ids.b, read: { kind: 'good', record: part } }]);
    await records.removePart(ids.b);
    expect(await records.parts()).toEqual([]);
    expect(await records.settings()).toEqual({ kind: 'good', record: { version: 1 } });
    await records.putSettings({ version: 1, units: 'imperial' });
    expect(await records.settings()).toEqual({ kind: 'good', record: { version: 1, units: 'imperial' } });
  });
});

test.each([
  ['QuotaExceededError', 'full'],
  ['SecurityError', 'not-allowed'],
  ['InvalidStateError', 'taken-over'],
  ['DataError', 'other'],
])("the browser's %s is told as %s", (errorName, failure) => {
  expect(storageErrorOf(new DOMException('invented', errorName)).failure).toBe(failure);
});
