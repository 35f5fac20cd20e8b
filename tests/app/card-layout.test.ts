import { describe, expect, test } from 'vitest';
import { cardContent, cardText } from '../../src/app/handover/card-content';
import { cardLayout, type Measure, wrapped } from '../../src/app/handover/card-layout';
import { sayIn } from '../../src/app/say';
import type { Answers } from '../../src/design/answers';
import { makePlan } from '../../src/plan/make-plan';

/** Every letter as wide as a bold one of the app's typeface is at most. */
const measure: Measure = (text, { size }) => text.length * size * 0.6;
const words = { danger: 'Danger', cut: 'Cut', chokes: 'Chokes', code: 'Scan for the whole plan' };

const answers: Answers = {
  bands: ['40m', '20m', '15m', '10m'],
  radiator: 'sloper',
  fedAt: 'end',
  lengthChoice: 'resonant',
  shackEnd: 'radio-tuner',
  powerW: 100,
  mode: 'data',
};

describe.each(['metric', 'imperial'] as const)('the card of a sloper, %s first', (units) => {
  const plan = makePlan({ ...answers, units });
  const content = cardContent(plan, 'A sloper with a name that is long enough to take two lines', sayIn(units));
  const { width, height, items } = cardLayout({ content, words, drawingShape: 0.6, hasCode: true }, measure);

  test('holds every cut and every choke in both units', () => {
    expect(content.cuts).toHaveLength(plan.cuts.length);
    expect(content.chokes).toHaveLength(plan.chain.filter(({ device }) => device === 'choke').length);
    const order = units === 'metric' ? /m \(.*(ft|in)\)$/ : /(ft|in) \(.*m\)$/;
    for (const { length } of content.cuts) expect(length.replaceAll('\u00a0', ' ')).toMatch(order);
  });

  test('tells the danger before the first length of the antenna', () => {
    const texts = items.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
    expect(texts.indexOf(words.danger)).toBeLessThan(texts.indexOf(words.cut));
    expect(content.danger.length).toBeGreaterThan(0);
    expect(cardText(content).indexOf(content.danger[0].text)).toBeLessThan(cardText(content).indexOf(plan.summary));
  });

  test('keeps everything inside and no text on another', () => {
    const texts = items.flatMap((item) => (item.kind === 'text' ? [item] : []));
    for (const item of texts) {
      expect(item.x).toBeGreaterThanOrEqual(0);
      expect(item.x + measure(item.text, item.style)).toBeLessThanOrEqual(width);
      expect(item.y).toBeLessThan(height);
    }
    for (const [index, one] of texts.entries()) {
      for (const other of texts.slice(index + 1)) {
        const apart = Math.abs(one.y - other.y) >= Math.min(one.style.size, other.style.size) * 0.9;
        const [left, right] = one.x < other.x ? [one, other] : [other, one];
        expect(apart || left.x + measure(left.text, left.style) <= right.x, `${one.text} / ${other.text}`).toBe(true);
      }
    }
  });
});

test('lines break between words only, and a longer word stands alone', () => {
  const style = { weight: 450, size: 10 } as const;
  expect(wrapped('one two incomprehensibilities six', 60, style, measure)).toEqual([
    'one two',
    'incomprehensibilities',
    'six',
  ]);
});
