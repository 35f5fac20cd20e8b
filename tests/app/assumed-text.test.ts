/** What was assumed is told with a value or with what is done without one: never a bare name. */
import { expect, test } from 'vitest';
import { assumedText } from '../../src/app/assumed-text';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { createFormat } from '../../src/words/format';

/** An invented antenna of which only the four first questions were answered. */
const bare: Answers = {
  units: 'metric',
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
};

test('every assumption has its name and something after it', () => {
  const texts = makePlan(bare).assumed.map((each) => assumedText(each, createFormat('metric')));
  expect(texts.length).toBeGreaterThan(10);
  for (const text of texts) expect(text).toMatch(/^[A-Z][^:]*: \S/);
  expect(texts).toContain('Room: room enough');
});
