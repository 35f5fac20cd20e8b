import { expect, test } from 'vitest';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';
import { planAsText, shoppingAsText } from '../../src/plan/plain-text';
import { createFormat } from '../../src/words/format';

const answers: Answers = {
  bands: ['40m', '20m'],
  radiator: 'inverted-v',
  fedAt: 'end',
  shackEnd: 'radio',
  station: 'portable',
};
const plan = makePlan(answers);
const text = planAsText(plan, { name: 'Pear orchard', format: createFormat('metric') });

test('danger stands before the first length to cut', () => {
  expect(text.indexOf('DANGER FIRST')).toBeGreaterThan(0);
  expect(text.indexOf('DANGER FIRST')).toBeLessThan(text.indexOf(plan.summary));
  expect(text).toContain(plan.cautions.find(({ lines }) => lines.includes(2))?.lineTexts[0].act);
});

test('every piece, device and band of the plan is in it', () => {
  for (const { name } of plan.cuts) expect(text).toContain(name);
  for (const { name } of plan.chain) expect(text).toContain(name);
  for (const { text: warning } of plan.warnings) expect(text).toContain(warning);
});

test('every length in metres has its feet beside it', () => {
  const metres = text.match(/\d\u00a0m(?![a-zA-Z²])/g) ?? [];
  const both = text.match(/\d\u00a0m \(/g) ?? [];
  expect(metres.length).toBeGreaterThan(10);
  expect(both.length).toBe(metres.length);
});

test('it holds no code, no NaN and ends with the local codes', () => {
  expect(text).not.toMatch(/NaN|undefined|null|\[object/);
  expect(text.trimEnd().endsWith('this app.')).toBe(true);
});

test('the shopping list says of each part whether it is here', () => {
  const [first] = plan.parts;
  const format = createFormat('imperial');
  const listed = plan.parts.map((part) => ({ ...part, isHere: part === first }));
  const list = shoppingAsText(listed, { name: null, format });
  expect(first.unit).toBe('metre');
  expect(list).toContain(`[have] ${format.length(first.quantity)} of ${first.name} (for ${first.use})`);
  expect(list.match(/^\[buy\]/gm)).toHaveLength(plan.parts.length - 1);
  expect(list.match(/^ {6}or: /gm)?.length).toBe(plan.parts.filter(({ substitute }) => substitute !== '').length);
});
