import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type Photo, photoVersion } from '../../src/design/photo';
import { newSavedPlan } from '../../src/design/saved-plan';
import { type Db, openStores, steps } from '../../src/storage/open';
import { readSavedPlan } from '../../src/storage/plan-history';
import { createRecords } from '../../src/storage/records';
import { storageErrorOf } from '../../src/storage/storage-error';

const ids = { a: '11111111-1111-4111-8111-111111111111', b: '22222222-2222-4222-8222-222222222222' };
const quiet = { onBlocked: () => undefined, onTakenOver: () => undefined, onLost: () => undefined };
const photo = (id: string, planId: string, at: number): Photo => ({
  version: photoVersion,
  id,
  planId,
  at,
  widthPx: 4,
  heightPx: 3,
  jpeg: Uint8Array.of(255, 216, at),
  takenAwayAt: null,
});
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
    expect([...db.objectStoreNames]).toEqual(['onHand', 'photos', 'plans', 'settings']);
    expect(db.version).toBe(steps.length);
  });

  test('of the first version keeps its plans, parts and settings, and can then hold pictures', async () => {
    const old = await openDB(`${name}-old`, 1, {
      upgrade: (opened, _old, _new, tx) => steps[0]!(opened as never, tx as never),
    });
    const { plan, part, settings } = JSON.parse(readFileSync('tests/fixtures/saved-plans/v1.json', 'utf8'));
    await old.put('plans', plan);
    await old.put('onHand', part);
    await old.put('settings', settings, 'settings');
    old.close();
    const records = createRecords(await openStores(quiet, `${name}-old`));
    expect((await records.plans())[0]?.read).toMatchObject({
      kind: 'good',
      record: { id: plan.id, answers: plan.answers },
    });
    expect((await records.parts())[0]?.read).toEqual({ kind: 'good', record: part });
    expect(await records.settings()).toEqual({ kind: 'good', record: settings });
    await records.putPhoto(photo(ids.a, plan.id, 5));
    expect((await records.photosOf(plan.id)).photos).toEqual([photo(ids.a, plan.id, 5)]);
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

  test('a plan of an older version is read, and edited without being read before', async () => {
    const { plan: raw } = JSON.parse(readFileSync('tests/fixtures/saved-plans/v1.json', 'utf8'));
    await db.put('plans', raw);
    const read = readSavedPlan(raw);
    expect(await createRecords(db).plans()).toEqual([{ id: raw.id, read }]);
    expect(await createRecords(db).plan(raw.id)).toEqual({ id: raw.id, read });
    const saved = await createRecords(db).edit(newSavedPlan(raw.id, 1), [{ kind: 'deleted', on: true, at: 2 }]);
    expect(read).toMatchObject({ kind: 'good', record: { answers: saved.answers, ticks: saved.ticks } });
    expect(await db.get('plans', raw.id)).toEqual(saved);
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

  test('a broken plan is set aside, stays as it is, and the others are read', async () => {
    const raw = { ...newSavedPlan(ids.a, 1), answers: { bands: ['41m'] } };
    await db.put('plans', raw);
    await db.put('plans', newSavedPlan(ids.b, 1));
    const records = createRecords(db);
    const [broken, good] = await records.plans();
    expect(broken?.read).toEqual({ kind: 'broken', raw });
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

describe('pictures', () => {
  test('belong to their plan, come oldest first, and go one by one or with the plan', async () => {
    const records = createRecords(db);
    const [c, d] = ['33333333-3333-4333-8333-333333333333', '44444444-4444-4444-8444-444444444444'];
    await records.add([newSavedPlan(ids.a, 1), newSavedPlan(ids.b, 1)]);
    await records.putPhoto(photo(c, ids.a, 9));
    await records.putPhoto(photo(d, ids.a, 3));
    await records.putPhoto(photo(ids.b, ids.b, 4));
    expect((await records.photosOf(ids.a)).photos.map(({ at }) => at)).toEqual([3, 9]);
    await records.removePhoto(d);
    expect((await records.photosOf(ids.a)).photos.map(({ id }) => id)).toEqual([c]);
    await records.destroy(ids.a);
    expect((await records.photosOf(ids.a)).photos).toEqual([]);
    expect((await records.photosOf(ids.b)).photos).toHaveLength(1);
  });

  test('of the first version are shown as they were, and one taken away is still on disk', async () => {
    const { takenAwayAt: _, ...first } = photo(ids.b, ids.a, 5);
    await db.put('photos', { ...first, version: 1 } as never);
    const records = createRecords(db);
    expect((await records.photosOf(ids.a)).photos).toEqual([photo(ids.b, ids.a, 5)]);
    await records.putPhoto({ ...photo(ids.b, ids.a, 5), takenAwayAt: 7 });
    const again = createRecords(await openStores(quiet, name));
    expect((await again.photosOf(ids.a)).photos).toMatchObject([{ takenAwayAt: 7 }]);
  });

  test('that cannot be read, broken or newer, are counted and stay', async () => {
    await db.put('photos', { id: ids.a, planId: ids.a });
    await db.put('photos', { ...photo(ids.b, ids.a, 5), version: photoVersion + 1 } as never);
    expect(await createRecords(db).photosOf(ids.a)).toEqual({ photos: [], unreadable: 2 });
    expect(await db.get('photos', ids.a)).toEqual({ id: ids.a, planId: ids.a });
  });
});
