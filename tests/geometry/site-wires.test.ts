import { describe, expect, test } from 'vitest';
import { feedPositionsOf } from '../../src/advice/system';
import { houseEarthIds, radiatorIds, returnPathIds } from '../../src/design/choices';
import type { Layout } from '../../src/geometry/layout';
import { distance } from '../../src/geometry/layout';
import { siteWires } from '../../src/geometry/site-wires';
import { examineGeometry } from '../../src/solver/resolve';
import { squareCoax, wireBetween } from './half-wave';

const dipole: Layout = {
  ...wireBetween(9, 20.2),
  riseM: 8,
  coax: { ...squareCoax(24.8), houseEarth: 'open' },
};

/** The inner link of each leg closed, two beyond it open. */
const links: Layout['links'] = [
  { atM: 2, lengthM: 0.02, open: false },
  { atM: 5, lengthM: 0.02, open: true },
  { atM: 7, lengthM: 0.02, open: true },
];

const geometryOf = (layout: Layout) => {
  const site = siteWires(layout);
  if (site === null) throw new Error('no shape');
  return {
    site,
    geometry: {
      frequencyMHz: 7.1,
      ground: { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 } as const,
      wires: site.wires,
      sources: site.sources,
      loads: site.loads,
      probes: site.probes,
    },
  };
};

/** Every shape, feed point, return path, coax route and house earth that can be asked for. */
function* everyLayout(): Generator<Layout> {
  for (const radiator of radiatorIds.filter((id) => id !== 'other'))
    for (const fedAt of feedPositionsOf[radiator])
      for (const returnPath of returnPathIds)
        for (const route of ['square', 'along'] as const)
          for (const [heightM, endHeightM] of [
            [9, 9],
            [9, 3],
            [1.2, 8],
            [0.2, 0.2],
          ] as const)
            for (const loopPlane of ['upright', 'flat'] as const) {
              if (loopPlane === 'flat' && radiator !== 'loop') continue;
              // only one-wire feed points have a return path: a rule leaves it out elsewhere
              if (returnPath !== 'none' && !['base', 'end'].includes(fedAt)) continue;
              const base = { ...dipole, radiator, fedAt, returnPath, heightM, endHeightM, loopPlane };
              const house = houseEarthIds[(heightM > 1 ? 1 : 0) + (route === 'along' ? 2 : 0)] ?? 'open';
              yield {
                ...base,
                supportHeightM: Math.max(heightM, endHeightM, radiator === 'inverted-v' ? 9 : 0),
                feedFraction: fedAt === 'off-centre' ? 1 / 3 : 0.5,
                furtherPairsM: radiator === 'parallel-wires' ? [10.1, 5.05] : [],
                links: radiator === 'linked-wire' ? links : [],
                radials: returnPath.endsWith('radials') ? { count: 4, lengthM: 5 } : null,
                counterpoisesM: returnPath === 'counterpoise-wire' ? [4.2, 9] : [],
                shieldAtMidGap: fedAt === 'off-centre',
                coax: dipole.coax === null ? null : { ...dipole.coax, route, houseEarth: house },
              };
            }
}

describe('the wires of a site', () => {
  test('of a dipole with coax at right angles are those of our own choke computations (half-wave 9 m high)', () => {
    const { site } = geometryOf(dipole);
    const shield = site.wires.filter(({ id }) => id.startsWith('shield')).map(({ from, to }) => [from, to]);
    expect(shield.map(([from]) => from)).toEqual([
      [0, 0, 9],
      [0, 0, 0.1],
      [0, expect.closeTo(15, 6), 0.1],
      [0, expect.closeTo(15, 6), 1],
    ]);
    expect(shield.at(-1)?.[1]).toEqual([0, expect.closeTo(19, 6), 1]);
    expect(site.shieldM).toBeCloseTo(28.8, 6);
  });

  test('are accepted by the solver for every shape, feed point, return path and coax route', () => {
    let tried = 0;
    for (const layout of everyLayout()) {
      const { geometry } = geometryOf(layout);
      const { problems } = examineGeometry(geometry);
      expect({ layout, problems }).toEqual({ layout, problems: [] });
      tried++;
    }
    expect(tried).toBe(400);
  });

  test('keep the length of wire and of coax that was asked for', () => {
    for (const layout of everyLayout()) {
      const { site } = geometryOf(layout);
      const lengthOf = (ids: RegExp) =>
        site.wires.filter(({ id }) => ids.test(id)).reduce((sum, { from, to }) => sum + distance(from, to), 0);
      const radiatorM = lengthOf(/^(arm[12](-open\d)?|wire|loop)(\.\d+)?$/);
      const gapsM = 2 * layout.links.reduce((sum, { open, lengthM }) => sum + (open ? lengthM : 0), 0);
      if (layout.radiator !== 'folded-wire' && layout.heightM > 1)
        expect(radiatorM).toBeCloseTo(layout.radiatorM - gapsM, 6);
      expect(lengthOf(/^shield/)).toBeCloseTo(28.8, 1);
      for (const alongM of [0, 1, 4.16, 12, 24.8, 28.8]) expect(site.placeOnShield(alongM)).not.toBeNull();
      expect(site.placeOnShield(31)).toBeNull();
    }
  });

  test('of parallel pairs meet their own side only, with the gap between the sides', () => {
    const { site } = geometryOf({ ...dipole, radiator: 'parallel-wires', furtherPairsM: [10.1, 5.05] });
    const startOf = (id: string) => site.wires.find((wire) => wire.id === id)?.from;
    expect(site.sources).toEqual([{ wire: 'bridge', at: 'from', volts: { re: 1, im: 0 } }]);
    for (const id of ['arm1', 'arm1-2', 'arm1-3', 'shield1']) expect(startOf(id)).toEqual(startOf('bridge'));
    const across = site.wires.find(({ id }) => id === 'bridge')?.to;
    for (const id of ['arm2', 'arm2-2', 'arm2-3']) expect(startOf(id)).toEqual(across);
    expect(across).not.toEqual(startOf('bridge'));
  });

  test('of a leg with links end at the first open one, and go on beyond it joined to nothing', () => {
    const { site } = geometryOf({ ...dipole, links });
    const stretch = (id: string) => site.wires.find((wire) => wire.id === id);
    for (const sign of [1, -1]) {
      const arm = sign === 1 ? 'arm2' : 'arm1';
      expect(stretch(arm)?.to[0]).toBeCloseTo(sign * 5, 9);
      expect(stretch(`${arm}-open1`)?.from[0]).toBeCloseTo(sign * 5.02, 9);
      expect(stretch(`${arm}-open1`)?.to[0]).toBeCloseTo(sign * 7, 9);
      expect(stretch(`${arm}-open2`)?.from[0]).toBeCloseTo(sign * 7.02, 9);
      expect(stretch(`${arm}-open2`)?.to[0]).toBeCloseTo(sign * 10.1, 9);
    }
    const closed = geometryOf({ ...dipole, links: links.map((link) => ({ ...link, open: false })) });
    expect(closed.site.wires.map(({ id }) => id)).toEqual(geometryOf(dipole).site.wires.map(({ id }) => id));
  });

  test('of an unknown shape are none', () => {
    expect(siteWires({ ...dipole, radiator: 'other' })).toBeNull();
  });
});
