/** What was measured, as the text that is handed over tells it. */
import { expect, test, vi } from 'vitest';
import { clock, day, sayIn } from '../../src/app/say';
import { measuredLines } from '../../src/app/screens/trim/measured-text';
import type { Measurement } from '../../src/design/saved-plan';
import { makePlan } from '../../src/plan/make-plan';
import { planAsText } from '../../src/plan/plain-text';

vi.stubGlobal('navigator', { languages: ['en-IE'] });
const say = sayIn('metric');
/** Invented. */
const readings: readonly Measurement[] = [
  {
    id: 'a',
    at: 1_700_000_000_000,
    band: '40m',
    dipMHz: 6.88,
    swr: 1.9,
    wireM: 20.5,
    note: 'Over the oak fork, drizzle',
  },
  { id: 'b', at: 1_700_000_600_000, band: '20m', dipMHz: 14.08 },
];
const when = (at: number): string => `${day(at)}, ${clock(at)}`;
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

test('the newest first, with the day, the wire in use and the note under its reading', () => {
  expect(measuredLines(readings, say).map(plain)).toEqual([
    `20 m: dip 14.08 MHz, ${when(1_700_000_600_000)}`,
    `40 m: dip 6.880 MHz, SWR 1.9:1, ${when(1_700_000_000_000)} with 20.5 m (67 ft 3 in) of wire`,
    '  Over the oak fork, drizzle',
  ]);
});

test('it stands in the plan as text under its own heading, and no heading stands over nothing', () => {
  const plan = makePlan({ bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'end', shackEnd: 'radio' });
  const options = { name: 'Pear orchard', format: say.format };
  expect(planAsText(plan, { ...options, measured: measuredLines(readings, say) })).toContain('\n\nMEASURED\n20');
  expect(planAsText(plan, options)).not.toContain('MEASURED');
});
