import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { ownedPartVersion } from '../../src/design/owned-part';
import { photoVersion } from '../../src/design/photo';
import { savedPlanVersion } from '../../src/design/saved-plan';
import { settingsVersion } from '../../src/design/settings';
import { ownedPartSteps, readOwnedPart, readSettings, settingsSteps } from '../../src/storage/histories';
import { photoSteps } from '../../src/storage/photo-history';
import { readSavedPlan, savedPlanSteps } from '../../src/storage/plan-history';
import { type RecordSteps, readRecord } from '../../src/storage/read-record';
import { recordProblems } from '../../src/storage/record-problems';

const dir = 'tests/fixtures/saved-plans';
const kept = readdirSync(dir)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({ version: Number(name.slice(1, -5)), file: JSON.parse(readFileSync(`${dir}/${name}`, 'utf8')) }));

describe('records of every past version', () => {
  test('each version that ever was has its kept file, so each step of each history runs below', () => {
    expect(savedPlanVersion).toBe(savedPlanSteps.length + 1);
    expect(ownedPartVersion).toBe(ownedPartSteps.length + 1);
    expect(settingsVersion).toBe(settingsSteps.length + 1);
    expect(photoVersion).toBe(photoSteps.length + 1);
    const newest = Math.max(savedPlanVersion, ownedPartVersion, settingsVersion);
    expect(kept.map(({ version }) => version)).toEqual(Array.from({ length: newest }, (_, index) => index + 1));
  });

  test.each(kept)('version $version is read as the newest', ({ file }) => {
    expect(readSavedPlan(file.plan)).toMatchObject({ kind: 'good', record: { version: savedPlanVersion } });
    expect(readOwnedPart(file.part)).toMatchObject({ kind: 'good', record: { version: ownedPartVersion } });
    expect(readSettings(file.settings)).toMatchObject({ kind: 'good', record: { version: settingsVersion } });
  });

  test('a record of the newest version comes out as it went in', () => {
    const newest = kept.at(-1)?.file;
    expect(readSavedPlan(newest.plan)).toEqual({ kind: 'good', record: newest.plan });
    expect(readOwnedPart(newest.part)).toEqual({ kind: 'good', record: newest.part });
    expect(readSettings(newest.settings)).toEqual({ kind: 'good', record: newest.settings });
  });
});

describe('a history of three versions', () => {
  const schema = z.strictObject({ version: z.literal(3), spanM: z.number() });
  const ran: number[] = [];
  const steps: RecordSteps = [
    ({ span, ...rest }) => {
      ran.push(1);
      return { ...rest, version: 2, spanCm: span };
    },
    ({ spanCm, ...rest }) => {
      ran.push(2);
      if (typeof spanCm !== 'number') throw new TypeError('no span');
      return { ...rest, version: 3, spanM: spanCm / 100 };
    },
  ];

  test('runs the steps after the record, in order, and no others', () => {
    ran.length = 0;
    expect(readRecord({ version: 1, span: 2400 }, schema, steps)).toEqual({
      kind: 'good',
      record: { version: 3, spanM: 24 },
    });
    expect(ran).toEqual([1, 2]);
    expect(readRecord({ version: 2, spanCm: 900 }, schema, steps)).toMatchObject({ record: { spanM: 9 } });
    expect(ran).toEqual([1, 2, 2]);
  });

  test('keeps what a newer version wrote, whole', () => {
    const raw = { version: 4, spanM: 3, wings: 2 };
    expect(readRecord(raw, schema, steps)).toEqual({ kind: 'newer', raw, version: 4 });
  });

  test.each([
    ['no version', { spanM: 3 }, 'version'],
    ['a version that is no number', { version: 'three', spanM: 3 }, 'version'],
    ['a wrong value', { version: 3, spanM: 'long' }, 'spanM'],
    ['a shape its version never had', { version: 1, span: 'long' }, ''],
    ['nothing at all', null, 'version'],
  ])('keeps a broken record (%s) whole, and where it is broken can be told', (_what, raw, key) => {
    expect(readRecord(raw, schema, steps)).toEqual({ kind: 'broken', raw });
    expect(recordProblems(raw, schema, steps)).toMatchObject([{ key }]);
  });
});
