import { expect, test, vi } from 'vitest';
import { run } from '../../src/cli/solve-command';
import type { Geometry } from '../../src/solver/geometry';
import { geometryProblemCodes } from '../../src/words/en/geometry-problems';

vi.setConfig({ testTimeout: 60_000 }); // for a machine that is busy with other things

async function call(input: unknown, ...args: string[]) {
  let out = '';
  let err = '';
  const code = await run(['-', ...args], {
    readStdin: async () => JSON.stringify(input),
    readFile: async () => '',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err, json: out === '' ? undefined : JSON.parse(out) };
}

/** An invented half-wave of two arms and a coax hanging from it. */
const antenna: Geometry = {
  frequencyMHz: 14.2,
  ground: { kind: 'soil', epsilonR: 13, sigmaSPerM: 0.005 },
  wires: [
    { id: 'arm1', from: [-5, 0, 6], to: [0, 0, 6], radiusM: 0.001, conductivitySPerM: 5.8e7 },
    { id: 'arm2', from: [0, 0, 6], to: [5, 0, 6], radiusM: 0.001, conductivitySPerM: null },
    { id: 'shield', from: [0, 0, 6], to: [0, 0, 0.1], radiusM: 0.0025 },
  ],
  source: { wire: 'arm2', at: 'from' },
};
const wires = (...more: Geometry['wires']): Geometry => ({ ...antenna, wires: [...antenna.wires, ...more] });

test('one geometry gives one solution with every key', async () => {
  const { code, err, json } = await call({
    ...antenna,
    loads: [{ wire: 'shield', distanceM: 1, impedance: { r: 2000, x: 500 } }],
    probes: [{ id: 'foot', wire: 'shield', fraction: 0.9 }],
    fieldPoints: [[0, 3, 1.5]],
    powerW: 50,
  });
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(json).toEqual({
    impedance: { r: expect.any(Number), x: expect.any(Number) },
    probes: [{ id: 'foot', re: expect.any(Number), im: expect.any(Number), magnitude: expect.any(Number) }],
    powerShare: {
      radiated: expect.any(Number),
      wire: expect.any(Number),
      loads: expect.any(Number),
      ground: expect.any(Number),
    },
    gainDbi: expect.any(Number),
    gainThetaDeg: expect.any(Number),
    gainPhiDeg: expect.any(Number),
    fields: [{ point: [0, 3, 1.5], electricVPerM: expect.any(Number), magneticAPerM: expect.any(Number) }],
    segments: expect.any(Number),
    errorEstimate: expect.any(Number),
    warnings: [],
    millis: expect.any(Number),
  });
});

test('an array gives an array in the same order', async () => {
  const higher = { ...antenna, frequencyMHz: 28.4 };
  const { json } = await call([antenna, higher]);
  const [first, second] = [(await call(antenna)).json, (await call(higher)).json];
  expect(json.map((s: { impedance: unknown }) => s.impedance)).toEqual([first.impedance, second.impedance]);
});

test('two gaps of half a volt in one wire are one gap: impedance and probes agree', async () => {
  const { source: _, ...rest } = antenna;
  const half = { wire: 'arm2', distanceM: 2, volts: { re: 0.5, im: 0 } };
  const probes = [{ id: 'middle', wire: 'arm2', distanceM: 3 }];
  const two = (await call({ ...rest, sources: [half, half], probes })).json;
  const one = (await call({ ...rest, source: { wire: 'arm2', distanceM: 2 }, probes })).json;
  expect(two.impedance.r).toBeCloseTo(one.impedance.r, 9);
  expect(two.probes[0].re).toBeCloseTo(one.probes[0].re, 9);
});

test('insulation makes a wire electrically longer', async () => {
  const coat = { epsilonR: 3, thicknessM: 0.0008 };
  const coated = { ...antenna, wires: antenna.wires.map((wire) => ({ ...wire, insulation: coat })) };
  expect((await call(coated)).json.impedance.x).toBeGreaterThan((await call(antenna)).json.impedance.x + 10);
});

test('a sweep gives frequencies, impedances and probes, equal to single solutions', async () => {
  const probed = { ...antenna, probes: [{ id: 'p', wire: 'shield', distanceM: 2 }] };
  const { code, json } = await call(probed, '--sweep', '14,14.3,4');
  expect(code).toBe(0);
  expect(json.frequencyMHz).toEqual([14, 14.1, 14.2, 14.3].map((f) => expect.closeTo(f, 9)));
  const single = (await call({ ...probed, frequencyMHz: 14.3 })).json;
  expect(json.impedance[3].r).toBeCloseTo(single.impedance.r, 6);
  expect(json.probes).toEqual([{ id: 'p', re: expect.any(Array), im: expect.any(Array) }]);
  expect(json.probes[0].re[3]).toBeCloseTo(single.probes[0].re, 6);
});

test.each([
  ['wires[3]', /zero|no length/, wires({ id: 'x', from: [9, 9, 9], to: [9, 9, 9.0005], radiusM: 0.0001 })],
  ['wires[3]', /crosses wire arm1/, wires({ id: 'x', from: [-2, -1, 6], to: [-2, 1, 6], radiusM: 0.001 })],
  ['wires[3]', /lies on the middle/, wires({ id: 'x', from: [-2, 0, 6], to: [-2, 4, 6], radiusM: 0.001 })],
  ['wires[3]', /lies on wire arm2/, wires({ id: 'x', from: [0, 0, 6], to: [3, 0, 6], radiusM: 0.001 })],
  ['wires[3]', /shorter than its radius/, wires({ id: 'x', from: [0, 5, 6], to: [0, 5.01, 6], radiusM: 0.02 })],
  ['wires[3]', /reaches down to z = -1 m/, wires({ id: 'x', from: [0, 5, 6], to: [0, 5, -1], radiusM: 0.001 })],
  ['wires[3]', /twice/, wires({ id: 'arm1', from: [0, 5, 6], to: [0, 5, 7], radiusM: 0.001 })],
  ['source', /no wire mast/, { ...antenna, source: { wire: 'mast', at: 'from' } }],
  ['source', /open end of wire arm1/, { ...antenna, source: { wire: 'arm1', at: 'from' } }],
  [
    'loads[0]',
    /6 m is not on wire arm1/,
    { ...antenna, loads: [{ wire: 'arm1', distanceM: 6, impedance: { r: 1, x: 0 } }] },
  ],
  ['probes[0]', /needs one of/, { ...antenna, probes: [{ id: 'p', wire: 'arm1', at: 'from', fraction: 0.5 }] }],
  // Refused before a mesh of millions is made.
  ['geometry', /segments; at most/, wires({ id: 'x', from: [0, 5, 6], to: [5e6, 5, 6], radiusM: 0.001 })],
  ['fieldPoints[0]', /in the ground/, { ...antenna, fieldPoints: [[0, 0, -1]] }],
  [
    'fieldPoints[1]',
    /inside wire shield/,
    {
      ...antenna,
      fieldPoints: [
        [0, 1, 1],
        [0, 0.001, 2],
      ],
    },
  ],
])('%s: %s is refused with exit 2, nothing on standard output', async (key, reason, input) => {
  const { code, out, err } = await call(input);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err.startsWith(`${key}: `)).toBe(true);
  expect(err).toMatch(reason);
  expect(err).toMatch(/;|allowed/);
});

test('every problem of every entry is listed with its place in the array', async () => {
  const bad = { ...antenna, source: { wire: 'mast', at: 'from' }, probes: [{ id: 'p', wire: 'arm1', distanceM: 99 }] };
  const { source: _, ...none } = antenna;
  const { code, out, err } = await call([antenna, bad, none, { ...antenna, colour: 'red' }]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  const keys = err
    .trimEnd()
    .split('\n')
    .map((line) => line.split(':')[0]);
  expect(keys).toEqual(['[1].source', '[1].probes[0]', '[2].source', '[3].colour']);
});

test('faults of the record itself are told by key', async () => {
  const { err } = await call({ ...antenna, frequencyMHz: -1, ground: { kind: 'lava' } });
  expect(err).toMatch(/^frequencyMHz: /m);
  expect(err).toMatch(/^ground/m);
});

test('a record with faults and no source is told both', async () => {
  const { source: _, ...none } = antenna;
  const { err } = await call([{ ...none, frequencyMHz: 'high' }]);
  const keys = err
    .trimEnd()
    .split('\n')
    .map((line) => line.split(':')[0]);
  expect(keys).toEqual(['[0].frequencyMHz', '[0].source']);
});

test.each(['3,30', '0,30,5', '30,3,5', '3,30,1', 'a,b,c'])('--sweep %s is refused', async (given) => {
  const { code, err } = await call(antenna, '--sweep', given);
  expect(code).toBe(2);
  expect(err).toMatch(/^--sweep: /);
});

test('every reason the solver can refuse has words', async () => {
  const { readFileSync } = await import('node:fs');
  const source = readFileSync('src/solver/resolve.ts', 'utf8');
  const union = /export type GeometryProblemCode =([^;]+);/.exec(source)?.[1] ?? '';
  const codes = [...union.matchAll(/'([a-z-]+)'/g)].map((match) => match[1]);
  expect(codes.length).toBeGreaterThan(10);
  expect(geometryProblemCodes).toEqual(expect.arrayContaining(codes));
});
