import { describe, expect, test } from 'vitest';
import { readAnswers } from '../../src/design/read-answers';
import { problemLine, shortProblemLine } from '../../src/words/en/problems';

const whole = { bands: ['40m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' };
const linesOf = (raw: unknown): string[] => {
  const read = readAnswers(raw);
  return 'problems' in read ? read.problems.map((problem) => problemLine(problem, 'answers')) : [];
};

describe('an answers record from outside', () => {
  test('is taken as it is when the schema knows all of it', () => {
    expect(readAnswers(whole)).toEqual({ answers: whole });
    expect(linesOf({ bands: ['20m'], shackEnd: 'radio' })).toEqual([]); // no radiator: which antenna?
  });

  test('has every problem listed, each with its key, what is wrong and what is allowed', () => {
    const lines = linesOf({
      bands: [],
      radiator: 'kite',
      shackEnd: 'radio',
      spanM: -3,
      powerW: '100',
      colour: 'red',
      heightM: null,
      onHand: [{ part: 'choke', core: 'ft240-31', count: 1, turns: 0, line: 'rg-58' }],
      focusMHz: { '41m': 7 },
    });
    const keys = lines.map((line) => line.slice(0, line.indexOf(':')));
    expect(keys.sort()).toEqual(
      ['bands', 'colour', 'fedAt', 'focusMHz.41m', 'heightM', 'onHand[0].turns', 'powerW', 'radiator', 'spanM'].sort(),
    );
    for (const line of lines) expect(line).toMatch(/^[\w.[\]]+: .+; .+$/);
    expect(lines.find((line) => line.startsWith('spanM'))).toBe('spanM: is -3, too small; allowed: above 0');
    expect(lines.find((line) => line.startsWith('radiator'))).toContain('straight-wire, inverted-v');
    expect(lines.find((line) => line.startsWith('heightM'))).toContain('leave the key out');
  });

  test('may leave a key out in place of null only where it is not required', () => {
    const chosen = 'allowed: radio, radio-tuner, wide-tuner, wide-tuner-4to1, balanced-tuner, feed-point-tuner';
    expect(linesOf({ ...whole, shackEnd: null })).toEqual([`shackEnd: is null; it is required, ${chosen}`]);
    expect(linesOf({ ...whole, bands: null })).toEqual(['bands: is null; it is required, allowed: a list']);
    expect(linesOf({ ...whole, fedAt: null })[0]).toMatch(/^fedAt: is null; it is required, allowed: centre, /);
    expect(linesOf({ bands: ['20m'], shackEnd: 'radio', fedAt: null })[0]).toContain('leave the key out');
    const [core, spare] = linesOf({
      ...whole,
      onHand: [
        { part: 'core', core: null, count: 1 },
        { part: 'transformer', ratio: 4, kind: 'voltage', ratingW: null },
      ],
    });
    expect(core).toMatch(/^onHand\[0\]\.core: is null; it is required, allowed: /);
    expect(spare).toMatch(/^onHand\[1\]\.ratingW: is null; leave the key out/);
  });

  test('a screen tells a long list by its count and the first few, a short one whole', () => {
    const onScreen = (raw: unknown): string[] => {
      const read = readAnswers(raw);
      return 'problems' in read ? read.problems.map((problem) => shortProblemLine(problem, 'answers')) : [];
    };
    const [core = ''] = onScreen({ ...whole, onHand: [{ part: 'core', core: 'ft999-1', count: 1 }] });
    expect(core).toMatch(
      /^onHand\[0\]\.core: is "ft999-1"; allowed: one of \d\d known names, such as ft[\d-]+, ft[\d-]+, ft[\d-]+$/,
    );
    const wrong = { ...whole, mode: 'drums', powerW: -1 };
    expect(onScreen(wrong)).toEqual(linesOf(wrong));
  });

  test('has one line to a problem whatever its keys and values hold', () => {
    const odd = { ...whole, 'a\nb': 1, '': 2, mode: 'a\nb', name: '' };
    expect(linesOf(odd)).toEqual([
      'name: is "", too small; allowed: at least 1 character',
      'mode: is "a\\nb"; allowed: voice, cw, data, fm, am',
      '"a\\nb": is not a key of this record; remove it or correct its name, the schema lists all keys',
      '"": is not a key of this record; remove it or correct its name, the schema lists all keys',
    ]);
    expect(linesOf({ ...whole, powerW: Number.POSITIVE_INFINITY })).toEqual(['powerW: is Infinity; allowed: a number']);
  });

  test('is refused whole when it is no object, and when a newer version made it', () => {
    expect(linesOf(null)).toEqual(['answers: is null; a JSON object is allowed']);
    expect(linesOf('hello')).toEqual(['answers: is "hello"; a JSON object is allowed']);
    expect(linesOf({ ...whole, schema: 99 })[0]).toContain('newer version');
    expect(linesOf({})).toHaveLength(2);
  });
});
