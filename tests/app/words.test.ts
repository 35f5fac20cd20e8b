import { describe, expect, test } from 'vitest';
import { routeOf } from '../../src/advice/route';
import { answerText } from '../../src/app/answer-text';
import { parseRoute, to } from '../../src/app/routes';
import { partFields, partKindIds, readPart, startingValues } from '../../src/app/screens/on-hand/part-form';
import { feedPositionIds, radiatorIds } from '../../src/design/choices';
import { questionWords } from '../../src/words/en/questions';
import { createFormat } from '../../src/words/format';

const format = createFormat('metric');

/** Every question that any pair of radiator and feed point leads to, each once. */
const asked = new Map(
  radiatorIds.flatMap((radiator) =>
    feedPositionIds.flatMap((fedAt) =>
      routeOf({
        bands: ['40m'],
        radiator,
        fedAt,
        shackEnd: 'radio',
        lengthChoice: 'fixed',
        mode: 'voice',
      }).map((question) => [question.id, question] as const),
    ),
  ),
);

describe('the words of the questions', () => {
  test.each([...asked.values()].map((question) => [question.id, question] as const))(
    '%s has a title, a meaning, a way to find out, and words for every choice',
    (id, question) => {
      const words = questionWords(id);
      for (const text of [words.title, words.meaning, words.findOut, words.short])
        expect(text.length).toBeGreaterThan(2);
      const choices = question.kind === 'yes-no' ? [true, false] : question.options;
      for (const choice of choices) expect(words.options?.[String(choice)], String(choice)).toMatch(/\w/);
    },
  );

  test('none says a bare "balun", and none is longer than two lines of a phone', () => {
    for (const id of asked.keys()) {
      const { title, meaning } = questionWords(id);
      expect(`${title} ${meaning}`).not.toMatch(/balun/i);
      expect(title.length, title).toBeLessThanOrEqual(60);
    }
  });
});

test('answers read as people say them', () => {
  const draft = { bands: ['40m', '20m', '15m'], heightM: 8, indoors: true, powerW: 100, feedFraction: 0.25 } as const;
  const texts = (['bands', 'heightM', 'indoors', 'powerW', 'feedFraction', 'spanM'] as const).map((key) =>
    answerText(key, { ...draft, bands: [...draft.bands] }, format),
  );
  expect(texts.map((text) => text?.replaceAll('\u00a0', ' ') ?? null)).toEqual([
    '40, 20, and 15 m',
    '8.00 m (26 ft 3 in)',
    'Yes',
    '100 W',
    '25 %',
    null,
  ]);
});

test('every address leads back to the place it was made for', () => {
  const id = '00000000-0000-4000-8000-000000000000';
  expect(parseRoute(to.plans)).toEqual({ screen: 'plans' });
  expect(parseRoute(to.newPlan)).toEqual({ screen: 'new', unsure: false });
  expect(parseRoute(to.unsureAtOnce)).toEqual({ screen: 'new', unsure: true });
  expect(parseRoute(to.ask(id, 'bands'))).toEqual({ screen: 'ask', planId: id, question: 'bands', unsure: false });
  expect(parseRoute(to.unsure(id, 'bands'))).toMatchObject({ screen: 'ask', unsure: true });
  expect(parseRoute(to.surer(id))).toEqual({ screen: 'surer', planId: id });
  expect(parseRoute(to.job(id, 'cut', '2'))).toEqual({ screen: 'cut', planId: id, rest: ['2'] });
  expect(parseRoute(to.receive('v1~b40m~~abc'))).toEqual({ screen: 'receive', code: 'v1~b40m~~abc' });
  expect(parseRoute('#/nowhere')).toEqual({ screen: 'plans' });
});

describe('the form of a part', () => {
  const filled: Readonly<Record<string, string>> = {
    ratio: '4:1',
    ratingW: '100',
    count: '2',
    turns: '12',
    diameterM: '15 cm',
    lengthM: '100 ft',
  };
  test.each(partKindIds)('makes a part of each kind from typed fields: %s', (kind) => {
    const read = readPart(kind, { ...startingValues(kind), ...filled }, { unit: 'm', format });
    expect(read).toMatchObject({ part: { part: kind } });
  });

  test.each(partKindIds)('tells every field that is missing: %s', (kind) => {
    const read = readPart(kind, startingValues(kind), { unit: 'm', format });
    const typed = partFields[kind].filter(({ type }) => type !== 'choice' && type !== 'power').map(({ key }) => key);
    expect('wrong' in read ? [...read.wrong.keys()] : []).toEqual(typed);
  });
});
