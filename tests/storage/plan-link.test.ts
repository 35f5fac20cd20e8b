import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandIds } from '../../src/catalog/band-ids';
import { lineIds } from '../../src/catalog/line-ids';
import { wireIds } from '../../src/catalog/wire-ids';
import { Answers } from '../../src/design/answers';
import { feedPositionIds, radiatorIds, shackEndIds } from '../../src/design/choices';
import { linkText, readLink } from '../../src/storage/plan-link';

const metres = fc.double({ min: 0.01, max: 9000, noNaN: true });
const ohms = fc.double({ min: 0, max: 9000, noNaN: true });
const record = fc.record(
  {
    bands: fc.uniqueArray(fc.constantFrom(...bandIds), { minLength: 1 }),
    radiator: fc.constantFrom(...radiatorIds),
    fedAt: fc.constantFrom(...feedPositionIds),
    shackEnd: fc.constantFrom(...shackEndIds),
    name: fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }).filter((text) => text.length <= 80),
    region: fc.constantFrom(1 as const, 2 as const, 3 as const),
    country: fc.constantFrom('DE', 'US', 'AU'),
    indoors: fc.boolean(),
    focusMHz: fc.constant({ '40m': 7.1, '10m': 28.5 } as const),
    feedImpedance: fc.record({ r: ohms, x: ohms }),
    spanM: metres,
    wire: fc.constantFrom(...wireIds),
    onHand: fc.array(
      fc.record({ part: fc.constant('line' as const), line: fc.constantFrom(...lineIds), lengthM: metres }),
    ),
  },
  { requiredKeys: ['bands', 'radiator', 'fedAt', 'shackEnd'] },
);

test('any answers come back from their link as they were', () => {
  fc.assert(
    fc.property(record, (answers) => {
      const link = linkText(answers);
      expect(link).toMatch(/^[A-Za-z0-9.%_~-]+$/); // nothing a messenger would break or a browser would re-write
      const { schema, ...read } = Answers.parse(readLink(link));
      expect(schema).toBe(1);
      expect(read).toEqual(answers);
    }),
  );
});

test('a link cut short at any place is refused, never read as another antenna', () => {
  const link = linkText({ bands: ['40m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio', heightM: 12.5 });
  for (let end = 0; end < link.length; end++) expect(readLink(link.slice(0, end))).toEqual({ cut: true });
  expect(readLink(link.replace('12.5', '1.25'))).toEqual({ cut: true });
});

test('the main answers fit a link of 70 characters', () => {
  const link = linkText({ bands: ['40m', '20m'], radiator: 'straight-wire', fedAt: 'end', shackEnd: 'radio' });
  expect(link.length).toBeLessThanOrEqual(70);
});
