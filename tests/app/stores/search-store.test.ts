/** The search behind the list of antennas: figures come in, nothing moves, and it can be stopped, left and gone on with. */
import { expect, test } from 'vitest';
import { createSearchStore, type StartSearch } from '../../../src/app/stores/search-store';
import { InputError } from '../../../src/base/input-error';
import type { Answers } from '../../../src/design/answers';
import type { Candidate } from '../../../src/plan/candidate-points';

const site: Answers = { bands: ['20m'], shackEnd: 'radio' };

const candidate = (name: string, radiatedW: number | null): Candidate => ({
  system: 'sloper',
  answers: { ...site, name },
  rank: 1,
  solved: radiatedW !== null,
  score: {
    stops: 0,
    supportM: 8,
    tooHigh: false,
    bandsServed: 1,
    bandsWithoutTuner: 1,
    bandsBeyondTuner: 0,
    bandsByHand: 0,
    usefulDb: radiatedW,
    radiatedShare: null,
    entryCurrentMa: null,
    partsToBuy: 1,
    points: radiatedW ?? 0,
  },
  bands: [{ band: '20m', served: true, swrAtRadio: null, radiatedW, usefulDb: radiatedW, entryCurrentMa: null }],
  place: '',
  reasons: [`as ${name} stood with ${radiatedW}`],
});

function faked() {
  const started: {
    known: readonly Candidate[];
    found: (candidates: readonly Candidate[], done: number) => void;
    end(): void;
    broken(error: Error): void;
    cancelled: boolean;
  }[] = [];
  const start: StartSearch = (_, known, found) => {
    let end = (): void => undefined;
    let broken = (_: Error): void => undefined;
    const result = new Promise<readonly Candidate[]>((resolve, reject) => {
      end = () => resolve([]);
      broken = reject;
    });
    const job = { known, found, end, broken, cancelled: false };
    started.push(job);
    const cancel = (): void => {
      job.cancelled = true;
      broken(new InputError('cancelled'));
    };
    return { result, cancel };
  };
  return { store: createSearchStore(async () => start), started };
}

const settled = () => new Promise<void>((resolve) => setTimeout(resolve));
const byWatts = (found: readonly Candidate[]) => [...found].sort((a, b) => b.score.points - a.score.points);
const names = (list: readonly Candidate[] | null) => list?.map(({ answers }) => answers.name);

test('figures come in while order and reasons stay; the operator puts the list in order', async () => {
  const { store, started } = faked();
  store.look('a', site);
  await settled();
  started[0]?.found([candidate('one', null), candidate('two', null)], 0);
  expect(store.stateOf('a')).toMatchObject({ kind: 'working', done: 0 });
  started[0]?.found([candidate('one', 10), candidate('two', 40)], 2);
  started[0]?.end();
  await settled();
  const { shown, kind, isSettled } = store.stateOf('a');
  expect({ kind, isSettled, names: names(shown) }).toEqual({ kind: 'done', isSettled: false, names: ['one', 'two'] });
  expect(shown?.map(({ bands }) => bands[0]?.radiatedW)).toEqual([10, 40]);
  expect(shown?.[1]?.reasons).toEqual(['as two stood with null']);
  expect(store.movesIn('a', byWatts)).toBe(2);
  store.settle('a', byWatts);
  expect(names(store.stateOf('a').shown)).toEqual(['two', 'one']);
  expect(store.stateOf('a')).toMatchObject({ isSettled: true });
  expect(store.movesIn('a', byWatts)).toBe(0);
});

test('stopped, it keeps what it has, and goes on from there', async () => {
  const { store, started } = faked();
  store.look('a', site);
  await settled();
  started[0]?.found([candidate('one', 10), candidate('two', null)], 1);
  store.stop('a');
  await settled();
  expect(started[0]?.cancelled).toBe(true);
  expect(store.stateOf('a')).toMatchObject({ kind: 'stopped', done: 1 });
  store.look('a', site); // back on the screen, it stays stopped
  await settled();
  expect(started).toHaveLength(1);
  store.goOn('a', site);
  await settled();
  expect(started[1]?.known.map(({ solved }) => solved)).toEqual([true, false]);
});

test('left, it is called off, and goes on when somebody looks again; finished, it does not start anew', async () => {
  const { store, started } = faked();
  const leave = store.look('a', site);
  await settled();
  leave();
  expect(started[0]?.cancelled).toBe(true);
  store.look('a', site);
  await settled();
  expect(started).toHaveLength(2);
  started[1]?.end();
  await settled();
  store.look('a', site);
  await settled();
  expect(started).toHaveLength(2);
  expect(store.stateOf('a').kind).toBe('done');
});

test('other answers are another search, and the one before is called off', async () => {
  const { store, started } = faked();
  store.look('a', site);
  await settled();
  started[0]?.found([candidate('one', null)], 0);
  store.look('b', site);
  await settled();
  expect(started[0]?.cancelled).toBe(true);
  expect(started[1]?.known).toEqual([]);
  started[0]?.found([candidate('one', 10)], 1); // too late
  expect(store.stateOf('b')).toMatchObject({ kind: 'working', shown: null });
});

test('a worker that breaks is told, and tried again when somebody looks again', async () => {
  const { store, started } = faked();
  store.look('a', site);
  await settled();
  started[0]?.broken(new InputError('internal'));
  await settled();
  expect(store.stateOf('a').kind).toBe('failed');
  store.look('a', site);
  await settled();
  expect(started).toHaveLength(2);
});
