/** Noise by reciprocity: what the plan says chokes do to reception, against antennas solved as receivers with the noise as their source. */
import { describe, expect, test, vi } from 'vitest';
import { conjugate } from '../../src/base/complex';
import type { Layout } from '../../src/geometry/layout';
import { type FieldSite, fieldSite, geometryOf, type PlacedChoke } from '../../src/plan/field/field-site';
import { operate } from '../../src/plan/field/shield-currents';
import { receptionOf } from '../../src/plan/state-shield';
import type { Place } from '../../src/solver/geometry';
import { solve } from '../../src/solver/solve';
import { decibels, openCoax, resistive, siteLayout } from './field-support';

// Whole antennas are solved here, in plain code.
vi.setConfig({ testTimeout: 120_000 });

const layouts: readonly { name: string; layout: Layout; chokes: (entryM: number) => PlacedChoke[] }[] = [
  {
    name: 'dipole, 1 kΩ at the feed point and 5 kΩ at the entry',
    layout: siteLayout(15),
    chokes: (entryM) => [resistive(0, 1000), resistive(entryM, 5000)],
  },
  {
    name: 'end-fed, wound chokes at 4.2 m and at the entry',
    layout: siteLayout(10, { radiatorM: 20.4, fedAt: 'end' }),
    chokes: (entryM) => [
      { distanceM: 4.2, z: { re: 2400, im: 3900 } },
      { distanceM: entryM, z: { re: 3500, im: -2600 } },
    ],
  },
];

/** Power into a receiver matched to the antenna with a volt of noise in series at a place. */
function receivedW(
  site: FieldSite,
  chokes: readonly PlacedChoke[],
  feed: { re: number; im: number },
  noise: Place,
): number {
  const { sources: _gaps, ...geometry } = geometryOf(site, 7.1, chokes);
  const [gap] = site.wires.sources;
  if (gap === undefined) throw new Error('no gap');
  const { volts: _volts, ...atGap } = gap;
  const match = conjugate(feed);
  const { probes, impedance } = solve({
    ...geometry,
    source: noise,
    loads: [...(geometry.loads ?? []), { ...atGap, impedance: { r: match.re, x: match.im } }],
    probes: [{ ...atGap, id: 'receiver' }],
  });
  const current = (probes[0]?.magnitude ?? 0) / Math.hypot(impedance.r, impedance.x);
  return current ** 2 * match.re;
}

describe.each(layouts)('$name', ({ layout, chokes }) => {
  const entryM = layout.coax?.entryDistanceM ?? 0;
  const set = chokes(entryM);
  const site = fieldSite(
    layout,
    'average',
    set.map(({ distanceM }) => distanceM),
  );
  if (site === null) throw new Error('no shape');
  const foot = site.wires.probes.find(({ id }) => id === 'foot');
  if (foot === undefined) throw new Error('no foot');
  const { id: _, ...atFoot } = foot;

  test.each([
    ['house', 'fromHouseDb', { wire: 'mains', at: 'from' }],
    ['outdoors', 'outdoorsDb', atFoot],
  ] as const)('noise from %s is weaker by what the chokes take off the current there', async (_name, key, place) => {
    const coax = await openCoax(site, 7.1);
    const [none, chosen] = [operate(coax, []), operate(coax, set)];
    const said = receptionOf(none.shield ?? undefined, chosen.shield)?.[key] ?? Number.NaN;
    const heard = [receivedW(site, [], none.z, place), receivedW(site, set, chosen.z, place)] as const;
    // The mesh of a receiving solution has its ports elsewhere: within 0.6 % of a current.
    expect(Math.abs(decibels(Math.sqrt(heard[0] / heard[1])) - said)).toBeLessThan(0.1);
    expect(Math.abs(said)).toBeGreaterThan(1);
  });
});

test('without a choke there is nothing to tell, and one that lets more in says so', () => {
  const state = { entryMa: 10, entryDb: -40, radioMa: 0, radioDb: null, chokes: [] };
  expect(receptionOf(undefined, state)).toBeNull();
  expect(receptionOf(state, null)).toBeNull();
  expect(receptionOf(state, { ...state, entryMa: 20 })).toEqual({
    fromHouseDb: 20 * Math.log10(0.5),
    outdoorsDb: null,
  });
  const down = { ...state, footMa: 30 };
  expect(receptionOf(down, { ...down, footMa: 3 })?.outdoorsDb).toBeCloseTo(20, 9);
});
