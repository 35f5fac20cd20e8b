/**
 * Drawings held against SVG files kept beside this test, which a reviewer can open. A drawing that was changed on purpose is written anew
 * with `npx vitest run tests/drawing --update`.
 */
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { CoaxRoads, PartAtWork } from '../../src/drawing/coax-roads';
import { FallPath, fallPathScale } from '../../src/drawing/fall-path';
import { spread } from '../../src/drawing/figures';
import type { SiteKeepOut } from '../../src/drawing/keep-out-zones';
import { Piece, Progress } from '../../src/drawing/pieces';
import { scaleFor } from '../../src/drawing/scale';
import { SideView, sideViewScale } from '../../src/drawing/side-view';
import { siteOf } from '../../src/drawing/site';
import { SideSpokes, type Spoke, TopSpokes } from '../../src/drawing/spokes';
import { Tape } from '../../src/drawing/tape';
import { TopView, topViewScale } from '../../src/drawing/top-view';
import type { Layout } from '../../src/geometry/layout';
import { squareCoax, wireBetween } from '../geometry/half-wave';
import { file, sound } from './svg-file';

/** Invented antennas. */
const layout = (own: Partial<Layout>): Layout => ({ ...wireBetween(8, 20), coax: squareCoax(14), ...own });

const sites: Readonly<Record<string, Partial<Layout>>> = {
  dipole: {},
  'inverted-v': { radiator: 'inverted-v', heightM: 9, endHeightM: 3 },
  'end-fed': { radiator: 'inverted-v', fedAt: 'end', heightM: 1.2, endHeightM: 3, supportHeightM: 8 },
  'off-centre': {
    radiator: 'inverted-v',
    fedAt: 'off-centre',
    feedFraction: 1 / 3,
    radiatorM: 39,
    heightM: 10,
    endHeightM: 3,
  },
  sloper: { radiator: 'sloper', heightM: 7, endHeightM: 2.5, supportHeightM: 12 },
  vertical: { radiator: 'vertical', fedAt: 'base', radiatorM: 5, heightM: 0.2 },
  'upright-dipole': { radiator: 'vertical', fedAt: 'centre', radiatorM: 10, heightM: 6 },
  'inverted-l': { radiator: 'inverted-l', fedAt: 'base', radiatorM: 20, riseM: 9, heightM: 0.2 },
  'upright-loop': { radiator: 'loop', fedAt: 'side-middle', radiatorM: 42, heightM: 2 },
  'flat-loop': { radiator: 'loop', fedAt: 'corner', loopPlane: 'flat', radiatorM: 42, heightM: 8 },
  folded: { radiator: 'folded-wire', fedAt: 'centre' },
  parallel: { radiator: 'parallel-wires', furtherPairsM: [10] },
  linked: {
    radiator: 'inverted-v',
    heightM: 9,
    endHeightM: 3,
    links: [
      { atM: 3.3, lengthM: 0.02, open: false },
      { atM: 5, lengthM: 0.02, open: false },
    ],
  },
  'raised-radials': {
    radiator: 'vertical',
    fedAt: 'base',
    radiatorM: 5,
    heightM: 3,
    returnPath: 'elevated-radials',
    radials: { count: 4, lengthM: 5 },
  },
  counterpoise: {
    radiator: 'sloper',
    fedAt: 'end',
    heightM: 2,
    endHeightM: 2,
    supportHeightM: 9,
    returnPath: 'counterpoise-wire',
    counterpoisesM: [5],
  },
};

const words = { label: 'side view', height: (metres: number) => [`${metres.toFixed(1)} m`, 'feet'] as const };

/** Invented distances: the ends decide. */
const kept: SiteKeepOut = {
  parts: [
    { part: 'radiator', metres: 2 },
    { part: 'wire-end', metres: 3 },
    { part: 'coax', metres: 0.5 },
    { part: 'radials', metres: 1 },
    { part: 'counterpoise', metres: 1 },
  ],
  groundM: 1,
  decides: 'wire-end',
};

describe.each(Object.entries(sites))('%s', (name, own) => {
  const site = siteOf(layout(own), { home: name !== 'end-fed', chokesM: [0.5, 2.1, 13] });

  test('side view', async () => {
    if (site === null) throw new Error('no shape');
    const svg = file(<SideView site={site} words={words} id="stripes" />);
    sound(svg);
    await expect(svg).toMatchFileSnapshot(`svg/side-${name}.svg`);
  });

  test('heights of the side view stand apart from each other, inside it and above the ground', () => {
    if (site === null) throw new Error('no shape');
    const svg = render(<SideView site={site} words={words} id="stripes" />);
    const [, ground] = /class="g" d="M0 ([\d.]+)H/.exec(svg) ?? [];
    const told = [...svg.matchAll(/class="k halo" x="([\d.]+)" y="([\d.]+)"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(told.length).toBeGreaterThan(0);
    for (const [index, [x = 0, y = 0]] of told.entries()) {
      expect(x).toBeGreaterThan(40);
      expect(x).toBeLessThan(284);
      expect(y + 17).toBeLessThan(Number(ground));
      for (const [u = 0, v = 0] of told.slice(index + 1))
        expect(Math.abs(x - u) >= 84 || Math.abs(y - v) >= 38).toBe(true);
    }
  });

  test('top view', async () => {
    if (site === null) throw new Error('no shape');
    const svg = file(<TopView site={site} label="top view" keepOut={kept} id="stripes" />);
    sound(svg);
    await expect(svg).toMatchFileSnapshot(`svg/top-${name}.svg`);
  });

  test('fall path', async () => {
    if (site === null) throw new Error('no shape');
    const distance = ['44 m', '144 ft 4 in'] as const;
    const svg = file(
      <FallPath site={site} distanceM={44} lineM={null} words={{ label: 'fall path', distance }} id="stripes" />,
    );
    sound(svg);
    await expect(svg).toMatchFileSnapshot(`svg/fall-${name}.svg`);
  });
});

test('the fall path is as wide as the distance on both sides of wire and supports, in its own scale', () => {
  const site = siteOf(layout({}), { home: false, chokesM: [] });
  if (site === null) throw new Error('no shape');
  const svg = file(
    <FallPath
      site={site}
      distanceM={40}
      lineM={null}
      words={{ label: 'fall path', distance: ['40 m', '131 ft'] }}
      id="stripes"
    />,
  );
  const { pixelsPerM } = fallPathScale(site, 40, null);
  const stripes = [...svg.matchAll(/stroke="url\(#stripes\)" stroke-width="([\d.]+)"/g)].map(([, width]) =>
    Number(width),
  );
  expect(stripes).toHaveLength(site.arms.length + site.supports.length);
  for (const width of stripes) expect(width).toBeCloseTo(2 * 40 * pixelsPerM, 0);
  // The wire and two supports beyond its ends, and 40 m on all sides, fill the width.
  const across = site.supports.map(({ foot }) => foot[0]);
  expect((Math.max(...across) - Math.min(...across) + 80) * pixelsPerM).toBeCloseTo(316, 0);
});

test('a told overhead line is outlined at its distance, and widens the drawing only up to half as far again', () => {
  const site = siteOf(layout({}), { home: false, chokesM: [] });
  if (site === null) throw new Error('no shape');
  const words = { label: 'fall path', distance: ['40 m', '131 ft'] } as const;
  const drawn = (lineM: number) =>
    file(<FallPath site={site} distanceM={40} lineM={lineM} words={words} id="stripes" />);
  for (const lineM of [12, 55]) {
    const { pixelsPerM } = fallPathScale(site, 40, lineM);
    const [outer, inner] = ['white', 'black'].map((stroke) =>
      Number(new RegExp(`stroke="${stroke}" stroke-width="([\\d.]+)"`).exec(drawn(lineM))?.[1]),
    ) as [number, number];
    expect((outer + inner) / 4 / pixelsPerM).toBeCloseTo(lineM, 0);
  }
  const scale = (lineM: number | null) => fallPathScale(site, 40, lineM).pixelsPerM;
  expect(scale(12)).toBe(scale(null));
  expect(scale(55)).toBeLessThan(scale(null));
  expect(drawn(300)).not.toContain('mask');
  expect(scale(300)).toBe(scale(null));
});

test('an antenna of no known shape has no site', () => {
  expect(siteOf(layout({ radiator: 'other' }), { home: true, chokesM: [] })).toBeNull();
});

test('a choke of the side view stands as far along the coax as it was told', () => {
  const site = siteOf(layout({}), { home: true, chokesM: [3] });
  expect(site?.chokes[0].point[2]).toBeCloseTo(5, 6); // 3 m down from a feed point at 8 m
});

test('drawings are to scale: one square is as many metres as it says', () => {
  const site = siteOf(layout({}), { home: true, chokesM: [] });
  if (site === null) throw new Error('no shape');
  const { pixelsPerM, squareM } = sideViewScale(site);
  const svg = render(<SideView site={site} words={words} id="stripes" />);
  const [, first, second] = /class="q" d="M([\d.]+) 0V[\d.]+M([\d.]+) 0/.exec(svg) ?? [];
  expect(Number(second) - Number(first)).toBeCloseTo(squareM * pixelsPerM, 0);
});

test.each([
  [30, 10, 300, 200, 10],
  [10, 40, 300, 200, 5],
])('%f by %f metres fit into %i by %i pixels', (wide, high, widthPx, heightPx, pixelsPerM) => {
  expect(scaleFor(wide, high, widthPx, heightPx).pixelsPerM).toBeCloseTo(pixelsPerM, 9);
});

test.each([
  ['progress', <Progress count={5} now={1} label="piece 2 of 5" />],
  ['piece', <Piece lengthM={20.6} marksM={[0.15, 20]} rope={false} words={['mark', 'mark']} label="wire" />],
  ['roads-open', <CoaxRoads outsideShare={0.6} choke={null} wire="wire" radio="radio" label="open" />],
  ['roads-choked', <CoaxRoads outsideShare={0.05} choke="choke" wire="wire" radio="radio" label="choked" />],
  ['part-transformer', <PartAtWork kind="transformer" name="49:1" left="2,450" right="50" label="part" />],
  ['part-choke', <PartAtWork kind="choke" name="1:1" left="" right="" label="part" />],
  [
    'tape',
    <Tape
      band={{ lowMHz: 7, highMHz: 7.2, name: '40 m' }}
      marks={[
        { atMHz: 6.78, kind: 'was', words: ['10:45', '6.780'] },
        { atMHz: 6.88, kind: 'now', words: ['now', '6.880'] },
        { atMHz: 7.1, kind: 'aim', words: ['aim', '7.100'] },
      ]}
      label="tape"
    />,
  ],
])('%s', async (name, drawing) => {
  const svg = file(drawing);
  sound(svg);
  await expect(svg).toMatchFileSnapshot(`svg/${name}.svg`);
});

test('places too near each other are pushed apart, in their order and inside the drawing', () => {
  const spots = spread([10, 12, 300, 11], 26, 13, 311);
  const sorted = [...spots].sort((a, b) => a - b);
  for (let i = 1; i < sorted.length; i++) expect(sorted[i] - sorted[i - 1]).toBeGreaterThanOrEqual(26 - 1e-9);
  expect(Math.min(...spots)).toBeGreaterThanOrEqual(13);
  expect(Math.max(...spots)).toBeLessThanOrEqual(311);
  expect(spots[0]).toBeLessThan(spots[3]);
  expect(spots[3]).toBeLessThan(spots[1]);
});

describe('people stay outside stripes', () => {
  const site = siteOf(layout({}), { home: true, chokesM: [] });
  if (site === null) throw new Error('no shape');
  const striped = (svg: string): number[] =>
    [...svg.matchAll(/stroke="url\(#stripes\)" stroke-width="([\d.]+)"/g)].map(([, width]) => Number(width));
  const side = render(<SideView site={site} words={words} id="stripes" keepOut={kept} />);
  const top = render(<TopView site={site} label="top view" id="stripes" keepOut={kept} />);

  test('that are drawn to scale for each part, and end at the ground', () => {
    for (const [svg, { pixelsPerM }] of [
      [side, sideViewScale(site, kept)],
      [top, topViewScale(site, kept)],
    ] as const) {
      // Two arms at 2 m and two ends at 3 m; half a metre of coax is too narrow for an edge.
      const expected = [2, 2, 3, 3].map((metres) => 2 * metres * pixelsPerM);
      const widths = striped(svg);
      expect(widths).toHaveLength(expected.length);
      widths.forEach((width, i) => {
        expect(width).toBeCloseTo(expected[i], 0);
      });
    }
    expect(side).toContain('clip-path="url(#stripes-air)"');
    expect(render(<SideView site={site} words={words} id="stripes" keepOut={null} />)).not.toContain(
      'url(#stripes-air)',
    );
  });

  test('and off the ground that is striped from the side and dotted from above', () => {
    const { pixelsPerM } = sideViewScale(site, kept);
    const across = [...site.arms.flat().map(([x]) => x), ...site.coax.map(({ point: [, y] }) => -y)];
    const spanM = Math.max(...across) - Math.min(...across) + 2;
    const [, width] = /<rect x="[\d.]+" y="[\d.]+" width="([\d.]+)" height="7" fill="url\(#stripes\)"/.exec(side) ?? [];
    expect(Number(width)).toBeCloseTo(spanM * pixelsPerM, 0);
    expect(top).toContain('stroke="url(#stripes-dots)"');
    for (const svg of [
      render(<SideView site={site} words={words} id="stripes" keepOut={{ ...kept, groundM: 0 }} />),
      render(<TopView site={site} label="top view" id="stripes" keepOut={{ ...kept, groundM: 0 }} />),
    ])
      expect(svg).not.toMatch(/height="7" fill="url|stripes-dots\)/);
  });

  test('with a measure at the part that decides, as long as its distance', () => {
    for (const [svg, { pixelsPerM }] of [
      [side, sideViewScale(site, kept)],
      [top, topViewScale(site, kept)],
    ] as const) {
      const [, from, to] =
        /class="s" d="M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)M[\d.]+ [\d.]+H[\d.]+M[\d.]+ [\d.]+H[\d.]+"/.exec(svg) ?? [];
      expect(Math.abs(Number(from) - Number(to))).toBeCloseTo(3 * pixelsPerM, 0);
    }
  });
});

describe('what the wire works against, and the line to it', () => {
  test('four radials are four stretches out of the feed point, in both views', () => {
    const site = siteOf(layout(sites['raised-radials'] ?? {}), { home: true, chokesM: [] });
    expect(site?.returns).toHaveLength(4);
    for (const [from] of site?.returns ?? []) expect(from).toEqual(site?.feed);
  });

  test('open-wire line is two wires with spacers, coax one line', () => {
    const coax = layout({}).coax;
    const site = siteOf(layout({ coax: null }), { home: true, chokesM: [], openWire: coax });
    if (site === null) throw new Error('no site');
    expect(site.line).toBe('open-wire');
    const svg = file(<SideView site={site} words={words} id="stripes" />);
    sound(svg);
    expect(svg).not.toContain('class="c"');
    expect(svg).toContain('class="p"');
  });
});

test('where it sends: a spoke is as long as its share, its words stand where it points', async () => {
  const site = siteOf(layout({}), { home: true, chokesM: [] });
  if (site === null) throw new Error('no site');
  const spokes: Spoke[] = [
    { deg: 0, share: 0.5, words: ['along', 'the wire'] },
    { deg: 90, share: 1, words: ['across the wire'] },
    { deg: 225, share: 0, words: [] },
  ];
  const side = file(<SideSpokes site={site} spokes={spokes.slice(0, 2)} label="from the side" />);
  const top = file(<TopSpokes site={site} spokes={spokes} label="from above" />);
  sound(side);
  sound(top);
  await expect(side).toMatchFileSnapshot('svg/spokes-side.svg');
  await expect(top).toMatchFileSnapshot('svg/spokes-top.svg');
});
