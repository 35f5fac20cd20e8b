import { describe, expect, test } from 'vitest';
import { bandIds, regionIds } from '../../src/catalog/band-ids';
import { allocationAt, bandCentreMHz, bandEdgesMHz, bandOf, bandTable, isAmateur } from '../../src/catalog/bands';
import { coreIds } from '../../src/catalog/core-ids';
import { coreOf, parseCoreId, ringSizes } from '../../src/catalog/cores';
import { permeabilityTables } from '../../src/catalog/ferrite-tables';
import { ferrites, muAt } from '../../src/catalog/ferrites';
import { grounds } from '../../src/catalog/ground';
import { groundIds } from '../../src/catalog/ground-ids';
import { lineIds } from '../../src/catalog/line-ids';
import { coaxes, lines, openLines } from '../../src/catalog/lines';
import { modeAverageFactor, modeIds } from '../../src/catalog/modes';
import { provenances } from '../../src/catalog/sourced';
import { sources } from '../../src/catalog/sources';
import { wireIds } from '../../src/catalog/wire-ids';
import { insulators, wireMetals, wires } from '../../src/catalog/wires';

interface Found {
  path: string;
  value: unknown;
  source: string;
  provenance: string;
}

/** Every number of a table that carries a source, wherever it stands in it. */
function sourced(node: unknown, path: string): Found[] {
  if (typeof node !== 'object' || node === null) return [];
  if ('source' in node && 'provenance' in node && 'value' in node)
    return [{ path, value: node.value, source: String(node.source), provenance: String(node.provenance) }];
  return Object.entries(node).flatMap(([key, child]) => sourced(child, `${path}.${key}`));
}

/** Numbers without a source anywhere above them. */
function bare(node: unknown, path: string): string[] {
  if (typeof node === 'number') return [path];
  if (typeof node !== 'object' || node === null || 'source' in node) return [];
  return Object.entries(node).flatMap(([key, child]) => bare(child, `${path}.${key}`));
}

const tables = {
  bandTable,
  grounds,
  lines,
  wires,
  wireMetals,
  insulators,
  ringSizes,
  ferrites,
  permeabilityTables,
  modeAverageFactor,
};
const entries = sourced(tables, 'catalog');

test('the walk over the catalogue meets its tables', () => {
  expect(entries.length).toBeGreaterThan(250);
});

test.each(entries)('$path has a known source and provenance', ({ source, provenance }) => {
  expect(Object.keys(sources)).toContain(source);
  expect(provenances).toContain(provenance);
});

test('no number of the catalogue stands without a source', () => {
  // The American gauge is a name of the size, not a measured value.
  expect(bare(tables, 'catalog').filter((path) => !path.endsWith('.awg'))).toEqual([]);
});

test('every source is used, and says more in its citation than in its title', () => {
  const files = import.meta.glob('../../src/**/*.ts', { query: '?raw', import: 'default', eager: true });
  const code = Object.entries(files).filter(([path]) => !path.endsWith('/sources.ts'));
  for (const [id, { title, citation }] of Object.entries(sources)) {
    expect(title.length).toBeLessThan(40);
    expect(citation.length).toBeGreaterThan(title.length);
    expect([id, code.some(([, text]) => String(text).includes(`'${id}'`))]).toEqual([id, true]);
  }
});

test.each([
  ['bands', bandIds, Object.keys(bandTable)],
  ['grounds', groundIds, Object.keys(grounds)],
  ['lines', lineIds, Object.keys(lines)],
  ['wires', wireIds, Object.keys(wires)],
  ['modes', modeIds, Object.keys(modeAverageFactor)],
])('ids of %s are unique and each has its entry', (_name, ids, keys) => {
  expect(new Set(ids).size).toBe(ids.length);
  expect([...keys].sort()).toEqual([...ids].sort());
});

test('entries carry the id they stand under', () => {
  for (const table of [grounds, lines, wires])
    for (const [id, entry] of Object.entries(table)) expect(entry.id).toBe(id);
});

describe('physical values', () => {
  test.each(Object.values(lines))('$id', (line) => {
    expect(line.z0Ohm.value).toBeGreaterThanOrEqual(50);
    expect(line.z0Ohm.value).toBeLessThanOrEqual(600);
    expect(line.velocityFactor.value).toBeGreaterThan(0.6);
    expect(line.velocityFactor.value).toBeLessThan(1);
    expect(line.k1.value).toBeGreaterThan(0.05);
    expect(line.k2.value).toBeGreaterThanOrEqual(0);
  });

  test.each(Object.values(coaxes))('$id: the shield lies inside the jacket, the bend outside it', (coax) => {
    expect(2 * coax.shieldRadiusM.value).toBeLessThan(coax.outerDiameterM.value);
    expect(coax.minBendRadiusM.value).toBeGreaterThan(coax.outerDiameterM.value);
    expect(coax.power30MHzW.value).toBeGreaterThan(100);
    if (coax.voltagePeakV !== null) expect(coax.voltagePeakV.value).toBeGreaterThan(500);
  });

  test.each(Object.values(openLines))('$id: the rated current and voltage carry more than 1 kW matched', (line) => {
    expect(line.currentA.value ** 2 * line.z0Ohm.value).toBeGreaterThan(1000);
    expect(line.voltagePeakV.value ** 2 / (2 * line.z0Ohm.value)).toBeGreaterThan(1000);
  });

  test.each(Object.values(wires))('$id: section, mass, strength and wire factor belong together', (wire) => {
    const circleM2 = (Math.PI / 4) * wire.diameterM.value ** 2;
    expect(wire.sectionM2.value).toBeLessThanOrEqual(circleM2 * 1.0001);
    expect(wire.sectionM2.value).toBeGreaterThan(circleM2 * 0.65);
    const stressPa = wire.breakN.value / wire.sectionM2.value;
    expect(stressPa).toBeGreaterThan(200e6);
    expect(stressPa).toBeLessThan(800e6);
    expect(wire.massKgPerM.value).toBeGreaterThan(wire.sectionM2.value * 8000);
    expect(wire.velocityFactor.value < 1).toBe(wire.insulation !== null);
    if (wire.insulation !== null) expect(wire.insulation.thicknessM.value).toBeGreaterThan(1e-4);
  });

  test.each(Object.values(grounds))('$id', ({ epsilonR, sigmaSPerM }) => {
    expect(epsilonR.value).toBeGreaterThanOrEqual(3);
    expect(epsilonR.value).toBeLessThanOrEqual(81);
    expect(sigmaSPerM.value).toBeGreaterThan(0);
    expect(sigmaSPerM.value).toBeLessThanOrEqual(5);
  });

  test('average factors lie in (0, 1]', () => {
    for (const { value } of Object.values(modeAverageFactor)) expect(value > 0 && value <= 1).toBe(true);
  });
});

describe('bands', () => {
  test('edges rise from band to band and never overlap', () => {
    for (const region of regionIds)
      for (const country of [undefined, 'US']) {
        const inOrder = bandIds.map((band) => bandEdgesMHz(band, region, country));
        inOrder.forEach(({ lowMHz, highMHz }, index) => {
          expect(lowMHz).toBeLessThan(highMHz);
          expect(lowMHz).toBeGreaterThan(inOrder[index - 1]?.highMHz ?? 1.7);
        });
      }
  });

  test('every band is amateur at its centre and edges, and known by name there', () => {
    for (const region of regionIds)
      for (const band of bandIds) {
        const { lowMHz, highMHz } = bandEdgesMHz(band, region);
        for (const f of [lowMHz, bandCentreMHz(band, region), highMHz]) {
          expect(isAmateur(f, region)).toBe(true);
          expect(bandOf(f)).toBe(band);
        }
      }
  });

  test('what one region has and another has not is told apart', () => {
    expect(isAmateur(7.25, 1)).toBe(false);
    expect(isAmateur(7.25, 2)).toBe(true);
    expect(isAmateur(3.85, 1)).toBe(false);
    expect(isAmateur(3.85, 3)).toBe(true);
    expect(allocationAt(1.9, 1)).toBe('national-permission');
    expect(allocationAt(1.9, 2)).toBe('amateur');
    expect(allocationAt(5.332, 2)).toBe('none');
    expect(allocationAt(5.332, 2, 'US')).toBe('amateur');
    expect(allocationAt(27.2, 1)).toBe('none');
    expect(bandOf(27.2)).toBeUndefined();
    expect(bandOf(5.405)).toBe('60m');
  });
});

describe('cores', () => {
  test('every trade code is taken apart and put together again', () => {
    expect(coreIds).toHaveLength(35);
    for (const id of coreIds) expect(coreOf(id).id).toBe(id);
  });

  test.each(['ft240', 'ft240-99', 'ft37-43', '43-ft240', 'ft240-43-2', 'FT240-43', ''])('%j is no core', (id) => {
    expect(parseCoreId(id)).toBeUndefined();
    expect(() => coreOf(id)).toThrow('unknown-core');
  });

  test('volume is area times length, and the magnetic path lies inside the ring', () => {
    for (const id of coreIds) {
      const core = coreOf(id);
      expect(core.volumeM3).toBeCloseTo(core.areaM2 * core.lengthM, 12);
      expect(core.lengthM).toBeGreaterThan(Math.PI * core.insideDiameterM);
      expect(core.lengthM).toBeLessThan(Math.PI * core.outsideDiameterM);
    }
  });
});

describe('permeability', () => {
  test.each(Object.entries(permeabilityTables))(
    'table of mix %s: equal columns, rising frequency, from 1 to 60 MHz',
    (_mix, { value }) => {
      expect(value.muReal).toHaveLength(value.frequencyMHz.length);
      expect(value.muImag).toHaveLength(value.frequencyMHz.length);
      expect([...value.frequencyMHz].sort((a, b) => a - b)).toEqual(value.frequencyMHz);
      expect(new Set(value.frequencyMHz).size).toBe(value.frequencyMHz.length);
      expect(value.frequencyMHz[0]).toBeLessThanOrEqual(1);
      expect(value.frequencyMHz.at(-1)).toBeGreaterThanOrEqual(60);
      expect(Math.min(...value.muImag)).toBeGreaterThan(0);
    },
  );

  test('at 1 MHz µ′ lies within the lot tolerance of the initial permeability: each curve stands under its own mix', () => {
    for (const { mix, muInitial } of Object.values(ferrites))
      expect(Math.abs(muAt(mix, 1e6).muReal / muInitial.value - 1)).toBeLessThan(0.25);
  });

  test('stored points come back and values between lie between', () => {
    expect(muAt('43', 1.17e6).muReal).toBeCloseTo(713.5, 6);
    expect(muAt('31', 2e6).muImag).toBeCloseTo(734.8, 6);
    const { muReal } = muAt('43', 3.6e6);
    expect(muReal).toBeLessThan(480.6);
    expect(muReal).toBeGreaterThan(446.9);
  });

  test.each([0.99e6, 60.1e6, Number.NaN])('%d Hz is refused', (hz) => {
    expect(() => muAt('43', hz)).toThrow('permeability-range');
  });
});
