import { describe, expect, test } from 'vitest';
import { newSavedPlan, type SavedPlan } from '../../src/design/saved-plan';
import { exportText, type ImportContext, readImport } from '../../src/storage/export-file';

const ids = ['a', 'b', 'c'].map((letter) => `${letter.repeat(8)}-1111-4111-8111-111111111111`);
const fresh = 'ffffffff-1111-4111-8111-111111111111';
const empty: ImportContext = { planHere: () => undefined, partHere: () => false, newId: () => fresh, at: 99 };
const plan = (id: string, name: string): SavedPlan => newSavedPlan(id, 7, { name, bands: ['40m'] });
const holding = (...plans: SavedPlan[]): ImportContext => ({
  ...empty,
  planHere: (id) => plans.find((each) => each.id === id),
});

describe('one file with everything', () => {
  const plans = [plan(ids[0], 'Pear orchard'), plan(ids[1], 'Hill bag')];
  const parts = [{ version: 1, id: ids[2], addedAt: 1, part: { part: 'beads', count: 30, line: 'rg-58' } }];
  const file = exportText({ plans, parts }, 0);

  test('comes back whole on an empty phone', () => {
    expect(readImport(file, empty)).toEqual({ plans, parts, alreadyHere: [], refused: [] });
  });

  test('brings nothing twice where it came from', () => {
    const read = readImport(file, { ...holding(...plans), partHere: () => true });
    expect(read).toEqual({ plans: [], parts: [], alreadyHere: ['Pear orchard', 'Hill bag'], refused: [] });
  });

  test('brings a plan that is different here as a second one, and leaves the first alone', () => {
    const read = readImport(file, holding({ ...plans[0], updatedAt: 50 }));
    expect(read).toMatchObject({ plans: [{ id: fresh, answers: { name: 'Pear orchard' } }, { id: ids[1] }] });
  });

  test('refuses the broken and the newer by name, place and reason, and takes the rest', () => {
    const bad = { ...plan(ids[0], 'Bent'), answers: { name: 'Bent', bands: ['41m'], heightM: -1 } };
    const newer = { version: 9, id: ids[2], answers: { name: 'From the future' } };
    const read = readImport(exportText({ plans: [bad, newer, plans[1]], parts: [{ version: 1 }] }, 0), empty);
    expect(read).toMatchObject({
      plans: [{ id: ids[1] }],
      refused: [
        { place: 1, list: 'plans', name: 'Bent', newer: false },
        { place: 2, list: 'plans', name: 'From the future', newer: true, problems: [] },
        { place: 1, list: 'parts', newer: false },
      ],
    });
    const problems = typeof read === 'string' ? [] : read.refused[0].problems;
    expect(problems.map(({ key, code }) => `${key} ${code}`)).toEqual([
      'answers.bands[0] not-one-of',
      'answers.heightM too-small',
    ]);
  });

  test('an id that something unreadable holds is not given to another plan', () => {
    const read = readImport(file, { ...empty, planHere: (id) => (id === ids[0] ? 'taken' : undefined) });
    expect(read).toMatchObject({ plans: [{ id: fresh }, { id: ids[1] }] });
  });
});

test('a record of answers by itself comes in as a plan', () => {
  const answers = { bands: ['20m'], radiator: 'vertical', fedAt: 'base', shackEnd: 'radio' };
  expect(readImport(JSON.stringify(answers), empty)).toMatchObject({ plans: [{ id: fresh, answers }], refused: [] });
  expect(readImport(JSON.stringify({ ...answers, fedAt: 'nowhere' }), empty)).toMatchObject({
    plans: [],
    refused: [{ problems: [{ key: 'fedAt', code: 'not-one-of' }] }],
  });
});

test.each([
  ['not-json', 'PK\u0003\u0004 a picture'],
  ['not-json', '{"kind":"halyard-plans","plans":['],
  ['not-ours', '[1,2,3]'],
  ['not-ours', '{"shopping":["milk"]}'],
  ['newer-file', '{"kind":"halyard-plans","version":2,"plans":[]}'],
  ['too-big', ' '.repeat(20_000_001)],
])('says %s of a file that is none of ours', (refusal, text) => {
  expect(readImport(text, empty)).toBe(refusal);
});
