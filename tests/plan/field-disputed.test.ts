/** Disputes settled on one antenna: both sides against whole solutions of their own, and what they must come to at 0 Ω and 1 MΩ. Invented antennas. */
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { dimensionsOf } from '../../src/advice/dimensions';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import type { FieldFacts } from '../../src/advice/field-facts';
import type { Data } from '../../src/advice/finding';
import { scale } from '../../src/base/complex';
import type { Answers } from '../../src/design/answers';
import type { Layout } from '../../src/geometry/layout';
import { lineDataOf } from '../../src/physics/catalogue-line';
import { inputImpedance, lineConstants } from '../../src/physics/line';
import { tNetworkLossDb } from '../../src/physics/t-network';
import { fieldSite, geometryOf, type PlacedChoke } from '../../src/plan/field/field-site';
import { studyField } from '../../src/plan/field-study';
import { layoutOf } from '../../src/plan/layout-of';
import { solve } from '../../src/solver/solve';
import { decibels, entryMa, instrument, resistive, siteLayout } from './field-support';

// Whole antennas are solved here, in plain code.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const base: Answers = {
  bands: ['80m', '40m'],
  radiator: 'straight-wire',
  fedAt: 'off-centre',
  heightM: 9,
  wire: 'copper-2.0mm-bare',
  shackEnd: 'radio-tuner',
  feedLineLengthM: 25,
};

interface Site {
  readonly layout: Layout;
  readonly mhz: number;
  readonly disputes: Readonly<Record<string, Data>>;
  readonly chokes: NonNullable<FieldFacts['chokes']>['chosen']['chokes'];
}

async function studied(answers: Answers): Promise<Site> {
  const facts = factsOf(answers);
  const field = await studyField(answers, instrument);
  if (isNoSystem(facts) || field?.disputes === undefined || field.chokes === undefined) throw new Error('not solved');
  const layout = layoutOf(facts, dimensionsOf(facts, field));
  if (layout === null) throw new Error('no shape');
  const [{ focusMHz }] = facts.bands;
  return { layout, mhz: focusMHz, disputes: field.disputes, chokes: field.chokes.chosen.chokes };
}

/** Entry current, and heat in all chokes together, W per 100 W, by one whole solution. */
function whole(layout: Layout, mhz: number, chokes: readonly PlacedChoke[]) {
  const site = fieldSite(
    layout,
    'average',
    chokes.map(({ distanceM }) => distanceM),
  );
  if (site === null) throw new Error('no shape');
  const { impedance, probes, powerShare } = solve(geometryOf(site, mhz, chokes));
  const entry = probes.find(({ id }) => id === 'entry')?.magnitude ?? Number.NaN;
  return { entryMa: 1000 * entry * Math.sqrt(100 / impedance.r), heatW: 100 * powerShare.loads };
}

/** Places kept open, and two ways to the limit of the mesh, leave 4 % of a current and a watt of heat. */
const expectNear = (value: unknown, expected: number): void =>
  expect(Math.abs(Number(value) / expected - 1), `${String(value)} for ${expected}`).toBeLessThan(0.06);

describe('off-centre: voltage type with a choke against current type', () => {
  let site: Site;
  beforeAll(async () => {
    site = await studied(base);
  });

  test('each side is its own antenna with its own choke', () => {
    const { layout, mhz, disputes, chokes } = site;
    const { D1 = {} } = disputes;
    const [first, entry] = chokes.map(({ distanceM }) => distanceM);
    const below = resistive(first ?? 0, 5000);
    const house = resistive(entry ?? 0, 5000);
    const currentType: Layout = { ...layout, shieldAtMidGap: false };
    expectNear(D1.voltageChokeMa, whole(layout, mhz, [below]).entryMa);
    expectNear(D1.voltageEntryMa, whole(layout, mhz, [below, house]).entryMa);
    expectNear(D1.currentAloneMa, whole(currentType, mhz, [resistive(0, 2500)]).entryMa);
    expectNear(D1.currentEntryMa, whole(currentType, mhz, [resistive(0, 2500), house]).entryMa);
    expect(Number(D1.currentAloneMa)).toBeGreaterThan(1.3 * Number(D1.voltageChokeMa));
    // Next to nothing of the heat is in the choke at the entry.
    expect(Math.abs(Number(D1.chokeHeatW) - whole(layout, mhz, [below, house]).heatW)).toBeLessThan(1);
    expect(
      Math.abs(Number(D1.transformerHeatW) - whole(currentType, mhz, [resistive(0, 2500), house]).heatW),
    ).toBeLessThan(1);
  });

  test('at 1 MΩ in the feed point both are the same antenna beside an insulated coax, at 0 Ω they are not', async () => {
    const { layout, mhz } = site;
    const sets = [[resistive(0, 1e6)], [resistive(0, 0)]];
    const voltage = await entryMa(layout, mhz, sets);
    const current = await entryMa({ ...layout, shieldAtMidGap: false }, mhz, sets);
    expect(Math.abs(decibels((current[0] ?? 0) / (voltage[0] ?? 1)))).toBeLessThan(0.2);
    expect(Math.abs(decibels((current[1] ?? 0) / (voltage[1] ?? 1)))).toBeGreaterThan(0.2);
  });
});

describe('end-fed: the choke at the box, a twentieth of a wave down, or at the house', () => {
  let site: Site;
  beforeAll(async () => {
    site = await studied({ ...base, fedAt: 'end', bands: ['80m'] });
  });

  test('each place is a solution of its own', () => {
    const { layout, mhz, disputes, chokes } = site;
    const { D2 = {}, D3 = {} } = disputes;
    const metres = Number(D2.distanceM);
    const houseM = chokes.find(({ role }) => role === 'entry')?.distanceM ?? 0;
    const wired: Layout = { ...layout, returnPath: 'counterpoise-wire', counterpoisesM: [metres] };
    const [box, down, house] = [0, metres, houseM].map((distanceM) => resistive(distanceM, 5000)) as [
      PlacedChoke,
      PlacedChoke,
      PlacedChoke,
    ];
    expect(layout.returnPath).toBe('coax-shield');
    expectNear(D2.boxMa, whole(wired, mhz, [box]).entryMa);
    expectNear(D2.twentiethMa, whole(layout, mhz, [down]).entryMa);
    expectNear(D2.houseMa, whole(layout, mhz, [house]).entryMa);
    expectNear(D2.bothMa, whole(layout, mhz, [down, house]).entryMa);
    expectNear(100 * Number(D2.boxShare), whole(layout, mhz, [box]).heatW);
    expectNear(D3.houseMa, whole(layout, mhz, []).entryMa);
    expect(Number(D2.boxShare)).toBeGreaterThan(0.45);
    expect(Number(D2.boxShare)).toBeLessThan(0.9);
  });

  test('a choke at a box with nothing on its ground terminal takes up to 62, 66 and 83 W of 100 (own table, not published)', () => {
    for (const [mhz, watts] of [
      [3.6, 62],
      [7.1, 66],
      [14.15, 83],
    ] as const) {
      const found = whole(siteLayout(15, { radiatorM: 41, fedAt: 'end' }), mhz, [resistive(0, 5000)]).heatW;
      // The table's is the worst of several coax runs, this is one of them.
      expect(found).toBeLessThan(watts + 3);
      expect(found).toBeGreaterThan(watts - 10);
    }
  });

  test('a box choke of 0 Ω takes nothing, and one of 1 MΩ leaves the wire nothing but the coax above it to push against', () => {
    const { layout, mhz } = site;
    expect(whole(layout, mhz, [resistive(0, 0)]).heatW).toBeCloseTo(0, 6);
    expect(whole(layout, mhz, [resistive(0, 0)]).entryMa).toBeCloseTo(whole(layout, mhz, []).entryMa, 6);
    const usual = whole(layout, mhz, [resistive(0, 5000)]);
    const perfect = whole(layout, mhz, [resistive(0, 1e6)]);
    expect(perfect.entryMa).toBeLessThan(0.2 * usual.entryMa);
  });
});

describe('a resistive or a reactive choke', () => {
  const under = siteLayout(15, { radiatorM: 41, fedAt: 'end' });
  const at = (r: number, x: number): PlacedChoke => ({ distanceM: 4.16, z: { re: r, im: x } });

  test('of 1 MΩ are alike, of 0 Ω nothing, and between them a coil may let more in than no choke', async () => {
    const [none = 0, zero = 0, r1M = 0, l1M = 0, c1M = 0, r1k = 0, l1k = 0] = await entryMa(under, 3.6, [
      [],
      [at(0, 0)],
      [at(1e6, 0)],
      [at(0, 1e6)],
      [at(0, -1e6)],
      [at(1000, 0)],
      [at(0, 1000)],
    ]);
    expect(zero).toBeCloseTo(none, 9);
    for (const ma of [l1M, c1M]) expect(ma / r1M).toBeCloseTo(1, 1);
    expect(r1k).toBeLessThan(none);
    // Own computation, not published: 1 kΩ of reactance at 0.05 λ raised the entry current up to 5 times on 80 m.
    expect(l1k).toBeGreaterThan(none);
  });

  test('are compared in the plan on the band where reactance does worst', async () => {
    const { layout, mhz, disputes, chokes } = await studied({ ...base, fedAt: 'end', bands: ['80m'] });
    const { D5 = {} } = disputes;
    const distanceM = chokes[0]?.distanceM ?? 0;
    const entryWith = (re: number, im: number) => whole(layout, mhz, [{ distanceM, z: { re, im } }]).entryMa;
    expectNear(D5.noneMa, whole(layout, mhz, []).entryMa);
    expectNear(D5.resistiveMa, entryWith(1000, 0));
    expectNear(D5.inductiveMa, entryWith(0, 1000));
    expectNear(D5.capacitiveMa, entryWith(0, -1000));
  });
});

test('4:1 against 1:1 before the tuner: the loads are the line’s end and a quarter of it', async () => {
  const answers: Answers = {
    ...base,
    bands: ['80m', '10m'],
    fedAt: 'centre',
    feedLine: 'open-wire',
    shackEnd: 'wide-tuner',
    feedLineLengthM: 15,
    lengthChoice: 'fixed',
    wireLengthM: 20.4,
  };
  const facts = factsOf(answers);
  const field = await studyField(answers, instrument);
  if (isNoSystem(facts) || facts.line === null || field === null) throw new Error('not solved');
  const { line } = facts;
  const losses = facts.bands.map(({ band, focusMHz }) => {
    const { r = 0, x = 0 } = field.bands[band]?.feedPoint ?? {};
    const end = inputImpedance(lineConstants(lineDataOf(line), focusMHz * 1e6), 15, { re: r, im: x });
    return [end, scale(end, 0.25)].map((load) => tNetworkLossDb(load, focusMHz * 1e6) ?? Number.NaN);
  });
  const [[one80 = 0, four80 = 0] = [], [one10 = 0, four10 = 0] = []] = losses;
  const { D4 = {} } = field.disputes ?? {};
  // Own computation of 45 doublets, not published: better by 0.1 dB at most, worse by up to 2.2 dB, both of which this wire comes near to.
  expect([D4.costBand, D4.gainBand]).toEqual(['80m', '10m']);
  expect([D4.costOneDb, D4.costFourDb, D4.gainOneDb, D4.gainFourDb].map(Number)).toEqual(
    [one80, four80, one10, four10].map((db) => expect.closeTo(db, 2)),
  );
  expect(one10 - four10).toBeLessThan(0.15);
  expect(four80 - one80).toBeGreaterThan(1);
});
