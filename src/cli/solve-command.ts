/**
 * `solve`: an explicit wire geometry in, the field solution out; one object or an array of them. `--sweep from,to,points` (MHz) gives
 * impedance and probe currents over frequency instead.
 */
import { InputError } from '../base/input-error';
import { problemsOf } from '../base/problem';
import type { Geometry as GeometryRecord } from '../solver/geometry';
import { Geometry } from '../solver/geometry-schema';
import type { Sweep } from '../solver/prepared';
import { examineGeometry } from '../solver/resolve';
import { solve } from '../solver/solve';
import { sweep } from '../solver/sweep';
import { missingFile, unexpectedWords } from '../words/en/commands';
import { geometryProblemLine } from '../words/en/geometry-problems';
import { problemLine } from '../words/en/problems';
import type { CommandIo } from './command';
import { readJson } from './read-json';
import { startKernels } from './start-kernels';

const record = 'geometry';

interface Request {
  readonly path: string;
  readonly frequenciesHz: Float64Array | undefined;
}

export async function run(args: readonly string[], io: CommandIo): Promise<number> {
  const request = readArguments(args, io);
  if (!request) return 2;
  const json = await readJson(request.path, io);
  if ('problems' in json) {
    for (const problem of json.problems) io.err(`${problemLine(problem, record)}\n`);
    return 2;
  }
  const isList = Array.isArray(json.raw);
  const raw: unknown[] = isList ? (json.raw as unknown[]) : [json.raw];
  const read = raw.map((entry, index) => readGeometry(entry, isList ? `[${index}]` : ''));
  const lines = read.flatMap((entry) => ('lines' in entry ? entry.lines : []));
  const solutions: unknown[] = [];
  const kernels = await startKernels();
  for (const [index, entry] of read.entries()) {
    if (lines.length > 0 || 'lines' in entry) break;
    try {
      solutions.push(
        request.frequenciesHz
          ? sweepJson(sweep(entry.geometry, request.frequenciesHz, { kernels }))
          : solve(entry.geometry, { kernels, clock: () => performance.now() }),
      );
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      lines.push(geometryProblemLine(isList ? `[${index}]` : '', error.code, error.data, record));
    }
  }
  for (const line of lines) io.err(`${line}\n`);
  if (lines.length > 0) return 2;
  io.out(`${JSON.stringify(isList ? solutions : solutions[0], null, 2)}\n`);
  return 0;
}

function readArguments(args: readonly string[], io: CommandIo): Request | undefined {
  const rest = [...args];
  const at = rest.indexOf('--sweep');
  const given = at < 0 ? undefined : (rest.splice(at, 2)[1] ?? '');
  const frequenciesHz = given === undefined ? undefined : readSweep(given);
  let isGood = true;
  if (given !== undefined && !frequenciesHz) {
    io.err(`${geometryProblemLine('--sweep', 'bad-sweep', { given: JSON.stringify(given) }, record)}\n`);
    isGood = false;
  }
  const unexpected = rest.filter((arg, index) => (arg.startsWith('-') && arg !== '-') || index > 0);
  const [path] = rest;
  if (path === undefined || unexpected.length > 0) {
    io.err(`${path === undefined ? missingFile('solve') : unexpectedWords('solve', unexpected)}\n`);
    isGood = false;
  }
  return isGood && path !== undefined ? { path, frequenciesHz } : undefined;
}

function readSweep(text: string): Float64Array | undefined {
  const parts = text.split(',');
  const [from = 0, to = 0, points = 0] = parts.map((part) => (part.trim() === '' ? Number.NaN : Number(part)));
  const isGood = parts.length === 3 && from > 0 && to >= from && to <= 3000;
  if (!isGood || !Number.isInteger(points) || points < 2 || points > 10_000) return undefined;
  return Float64Array.from({ length: points }, (_, i) => 1e6 * (from + ((to - from) * i) / (points - 1)));
}

function readGeometry(raw: unknown, prefix: string): { geometry: GeometryRecord } | { lines: string[] } {
  const parsed = Geometry.safeParse(raw);
  if (!parsed.success) {
    const lines = problemsOf(raw, (each) => Geometry.safeParse(each), prefix).map((problem) =>
      problemLine(problem, record),
    );
    // The record's own faults hide those of the wires; that nothing feeds them can be told all the same.
    const isFed = typeof raw !== 'object' || raw === null || 'source' in raw || 'sources' in raw;
    const source = prefix === '' ? 'source' : `${prefix}.source`;
    return { lines: isFed ? lines : [...lines, geometryProblemLine(source, 'source-missing', {}, record)] };
  }
  const { problems } = examineGeometry(parsed.data);
  if (problems.length === 0) return { geometry: parsed.data };
  const placed = (key: string): string => (prefix === '' ? key : `${prefix}.${key}`);
  return { lines: problems.map(({ key, code, data }) => geometryProblemLine(placed(key), code, data, record)) };
}

function sweepJson({ frequenciesHz, impedance, probes }: Sweep) {
  const every = (values: Float64Array, part: 0 | 1): number[] =>
    Array.from({ length: values.length / 2 }, (_, i) => values[2 * i + part] ?? Number.NaN);
  const x = every(impedance, 1);
  return {
    frequencyMHz: Array.from(frequenciesHz, (f) => f / 1e6),
    impedance: every(impedance, 0).map((r, i) => ({ r, x: x[i] ?? Number.NaN })),
    probes: probes.map(({ id, current }) => ({ id, re: every(current, 0), im: every(current, 1) })),
  };
}
