import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  completeAnswers,
  feedPointOf,
  isAnswered,
  nextQuestion,
  type Question,
  routeOf,
  safeDefault,
  unusedAnswers,
} from '../../src/advice/route';
import { feedPositionsOf } from '../../src/advice/system';
import type { DraftAnswers } from '../../src/design/answers';
import { readAnswers } from '../../src/design/read-answers';

/** A value the question's screen could give, chosen by a seed; undefined stands for "not sure". */
function answerTo(question: Question, seed: number): unknown {
  switch (question.kind) {
    case 'many-of':
      return question.options.filter((_, index) => ((seed + index) * 7) % 3 === 0).concat(question.options.slice(0, 1));
    case 'one-of':
      return question.options[seed % question.options.length];
    case 'yes-no':
      return seed % 2 === 0;
    case 'ohms':
      return { r: 1 + (seed % 4000), x: (seed % 1000) - 500 };
    case 'parts':
      return [{ part: 'core', core: 'ft240-31', count: 1 + (seed % 3) }];
    case 'text':
      return question.id === 'country' ? 'DE' : `plan ${seed}`;
    case 'frequency':
      return { '40m': 7 + (seed % 200) / 1000 };
    case 'count':
      return seed % 121;
    case 'share':
      return question.id === 'feedFraction' ? 0.02 + (seed % 48) / 100 : (seed % 101) / 100;
    case 'power':
      return 1 + (seed % 3000);
    default:
      return 0.5 + (seed % 400) / 10;
  }
}

describe('the route', () => {
  test('starts with bands, radiator, feed point and shack end, in that order', () => {
    const first = routeOf({ radiator: 'straight-wire' }).map((question) => question.id);
    expect(first).toEqual(['bands', 'radiator', 'fedAt', 'shackEnd']);
    expect(nextQuestion({})?.id).toBe('bands');
    expect(nextQuestion({ bands: ['40m'] })?.id).toBe('radiator');
    expect(nextQuestion({ bands: ['40m'], radiator: 'loop' })?.id).toBe('fedAt');
    expect(nextQuestion({ bands: ['40m'], radiator: 'loop', fedAt: 'corner' })?.id).toBe('shackEnd');
  });

  test('does not ask where a radiator with a single feed point is fed, and fills it in', () => {
    const draft: DraftAnswers = { bands: ['80m'], radiator: 'inverted-l', shackEnd: 'radio' };
    expect(routeOf(draft).some((question) => question.id === 'fedAt')).toBe(false);
    expect(completeAnswers(draft)?.fedAt).toBe('base');
  });

  test('asks anew for the feed point when another radiator lacks the answered one, and keeps the answer', () => {
    const draft: DraftAnswers = { bands: ['40m'], radiator: 'loop', fedAt: 'off-centre', shackEnd: 'radio' };
    expect(feedPointOf(draft)).toBeUndefined();
    expect(completeAnswers(draft)).toBeNull();
    expect(draft.fedAt).toBe('off-centre');
  });

  test('asks only what can matter: a dipole is not asked for radials, a vertical is', () => {
    const ids = (draft: DraftAnswers) => routeOf({ bands: ['20m'], shackEnd: 'radio', ...draft }).map(({ id }) => id);
    expect(ids({ radiator: 'straight-wire', fedAt: 'centre' })).not.toContain('radialCount');
    expect(ids({ radiator: 'vertical', fedAt: 'base' })).toContain('radialCount');
    expect(ids({ radiator: 'straight-wire', fedAt: 'centre' })).toContain('feedLineRoute');
    expect(ids({ radiator: 'straight-wire', fedAt: 'centre', feedLine: 'open-wire' })).not.toContain('feedLineRoute');
    expect(ids({ radiator: 'straight-wire', fedAt: 'end', lengthChoice: 'fixed' })).toContain('wireLengthM');
  });

  test('names the answers that are kept but not used', () => {
    const draft: DraftAnswers = {
      bands: ['40m'],
      radiator: 'straight-wire',
      fedAt: 'centre',
      shackEnd: 'radio',
      radialCount: 16,
      loopShape: 'square',
    };
    expect(unusedAnswers(draft).sort()).toEqual(['loopShape', 'radialCount']);
  });

  test('every radiator is offered only feed points it has, and "not sure" leads on from every first question', () => {
    let draft: DraftAnswers = {};
    for (let asked = 0; asked < 4; asked++) {
      const question = nextQuestion(draft);
      if (question === null) break;
      draft = { ...draft, ...safeDefault(question.id, draft) };
    }
    expect(nextQuestion(draft)).toBeNull();
    expect(readAnswers(completeAnswers(draft))).toHaveProperty('answers');
    for (const radiator of Object.keys(feedPositionsOf) as (keyof typeof feedPositionsOf)[]) {
      const question = routeOf({ radiator }).find(({ id }) => id === 'fedAt');
      expect(question?.options ?? feedPositionsOf[radiator]).toEqual(feedPositionsOf[radiator]);
    }
  });

  test('has no dead end: any answers in any order, with changes of mind, end in a record the schema accepts', () => {
    const move = fc.record({ pick: fc.nat(40), seed: fc.nat(100_000), notSure: fc.boolean() });
    fc.assert(
      fc.property(fc.array(move, { minLength: 1, maxLength: 40 }), (moves) => {
        let draft: DraftAnswers = {};
        for (const { pick, seed, notSure } of moves) {
          const route = routeOf(draft);
          const question = route[pick % route.length];
          if (question === undefined) throw new Error('a route is never empty');
          if (!notSure) draft = { ...draft, [question.id]: answerTo(question, seed) };
        }
        for (let left = 0; nextQuestion(draft) !== null; left++) {
          expect(left).toBeLessThan(4);
          const question = nextQuestion(draft);
          if (question !== null) draft = { ...draft, ...safeDefault(question.id, draft) };
        }
        const answers = completeAnswers(draft);
        expect(answers).not.toBeNull();
        expect(readAnswers(answers)).toHaveProperty('answers');
        for (const question of routeOf(draft))
          if (isAnswered(question.id, draft)) expect(draft[question.id]).toBeDefined();
      }),
      { numRuns: 300 },
    );
  });
});
