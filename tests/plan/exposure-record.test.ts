import { describe, expect, test } from 'vitest';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Answers } from '../../src/design/answers';
import { ruleSetIds } from '../../src/design/choices';
import { cautionCard } from '../../src/plan/caution-card';
import { exposureRecord } from '../../src/plan/exposure-record';
import { makePlan } from '../../src/plan/make-plan';
import { type Paper, paperText } from '../../src/plan/paper';
import { createFormat } from '../../src/words/format';

const format = createFormat('metric');
const dipole: Answers = {
  bands: ['40m', '20m'],
  radiator: 'straight-wire',
  fedAt: 'centre',
  shackEnd: 'radio',
  heightM: 8,
  powerW: 400,
  mode: 'voice',
  nearestPersonM: 2,
};
const aroundM = [0.5, 1, 2, 4, 8];
const field = (distancesM: readonly number[], at1m: number) => ({
  electric: distancesM.map((d) => at1m / Math.max(d, 0.5)),
  magnetic: distancesM.map((d) => at1m / 1000 / Math.max(d, 0.5)),
});
const near = {
  aroundM,
  groundM: [0, ...aroundM],
  parts: [{ part: 'radiator' as const, around: field(aroundM, 60), ground: field([0, ...aroundM], 1) }],
  places: [{ place: 'radio' as const, electric: 40, magnetic: 0.02 }],
};
const solved: FieldFacts = { bands: { '40m': { nearField: near }, '20m': { nearField: near } } };

const paperOf = (answers: Answers, known?: FieldFacts): Paper =>
  exposureRecord(answers, makePlan(answers, known === undefined ? {} : { field: known }), {
    date: '2026-11-25',
    name: 'invented plan',
    assumed: ['Height: 8 m', 'Wire'],
    format,
  }) as Paper;
const recordOf = (answers: Answers, known?: FieldFacts): string => paperText(paperOf(answers, known));

describe('the record of an evaluation', () => {
  test('holds date, powers, every limit with where it was read, method and result', () => {
    const text = recordOf({ ...dipole, ruleSet: 'icnirp-2020' }, solved);
    for (const part of [
      '2026-11-25',
      'invented plan',
      '400 W',
      'Average 80 W',
      'from memory, not yet compared',
      'read in the source',
      'moment method',
      'nearest person',
      'assumed: Height: 8 m; Wire.',
    ])
      expect(text).toContain(part);
  });

  test('has a table of limits for each group of people, and a mark on each that was written from memory', () => {
    const { parts } = paperOf({ ...dipole, ruleSet: 'icnirp-2020' }, solved);
    const [knowing, everyone] = parts.flatMap(({ heading, tables }) => (heading?.startsWith('Limits') ? tables : []));
    // ICNIRP 2020: whole body over 30 min, 300/7.1^0.7 = 76.1 and 300/14.175^0.7 = 46.9 V/m, 2.2/f A/m, from memory; local over 6 min, 671 and 4.9, table 6
    // read; 83 V/m and 21 A/m on the crest, read. Above 10 MHz none for the crest.
    expect(everyone.head).toEqual(['Band', 'Averaged', 'Electric V/m', 'Magnetic A/m']);
    expect(everyone.rows).toEqual([
      ['40\u00a0m', '30 min', '76.1\u00a0†', '0.31\u00a0†'],
      ['40\u00a0m', '6 min', '170', '0.69'],
      ['40\u00a0m', 'never: crest', '83', '21'],
      ['20\u00a0m', '30 min', '46.9\u00a0†', '0.155\u00a0†'],
      ['20\u00a0m', '6 min', '105', '0.346'],
    ]);
    expect(knowing.rows.length).toBe(5);
    expect(knowing.rows[2]).toEqual(['40\u00a0m', 'never: crest', '170', '80']);
  });

  test('has no mark where every limit was read', () => {
    const text = recordOf({ ...dipole, ruleSet: 'us-fcc' }, solved);
    expect(text).not.toContain('†');
    expect(text).toContain('Values without a mark were read in the source.');
  });

  test('says of each place where people may be what part of the limit its field is', () => {
    // 40 V/m at 100 W are 1.1 · 2 · 40 = 88 V/m on the crest of 400 W: 106 % of 83 V/m, at the limit with 100 · (83/44)² = 355 W.
    expect(recordOf({ ...dipole, ruleSet: 'icnirp-2020' }, solved)).toMatch(
      /At the radio .*110\u00a0% of the limit on 40\u00a0m; at the limit with 350\u00a0W/,
    );
  });

  test.each(ruleSetIds)('says nothing false or careless under %s', (ruleSet) => {
    for (const text of [recordOf({ ...dipole, ruleSet }), recordOf({ ...dipole, ruleSet }, solved)])
      expect(text).not.toMatch(/\b(safe|undefined|NaN|null)\b/i);
  });

  test('names the method that was really used', () => {
    expect(recordOf(dipole)).toMatch(/common practice, 3 m at 100 W|far-field formula/);
    expect(recordOf(dipole)).not.toContain('moment method');
    const loop = recordOf({
      bands: ['40m'],
      radiator: 'loop',
      fedAt: 'corner',
      lengthChoice: 'fixed',
      wireLengthM: 6,
      shackEnd: 'radio',
    });
    expect(loop).toContain('no distance');
  });

  test('is not made where there is no antenna', () => {
    const which: Answers = { bands: ['40m'], shackEnd: 'radio' };
    expect(exposureRecord(which, makePlan(which), { date: '2026-11-25', name: 'x', assumed: [], format })).toBeNull();
  });
});

test('the caution card stands on one page, every line once, the numbers first', () => {
  for (const answers of [
    dipole,
    { ...dipole, station: 'portable' as const, heightM: 12 },
    { ...dipole, indoors: true },
  ]) {
    const card = paperText(cautionCard(makePlan(answers, { field: solved }), { name: 'invented plan', format }));
    const lines = card.split('\n');
    // 80 lines of 10 point fit an A4 page; a line of print holds about 110 characters.
    expect(lines.reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 110)), 0)).toBeLessThanOrEqual(80);
    const acts = lines.filter((line) => line.startsWith('- '));
    expect(new Set(acts).size).toBe(acts.length);
    expect(lines[1]).toMatch(/People stay .* from every part/);
    expect(card).not.toMatch(/\b(safe|undefined|NaN|null)\b/i);
  }
});
