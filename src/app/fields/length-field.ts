/** Reads the typed lengths of the questions. Zero is a height; a distance to a person may be zero; a wire may not. */
import { lengthDoubt } from '../../base/length-doubt';
import { isLengthProblem, type Length, type LengthProblem, type LengthUnit, readLength } from '../../base/read-length';
import type { AnswerKey } from '../../design/answers';
import type { Format } from '../../words/format';
import { bad, good, type Reading, type TakeValue } from './reading';

interface Usual {
  readonly leastM: number;
  readonly mostM: number;
  /** What the record can hold. */
  readonly limitM: number;
  readonly zero: boolean;
}

const height = (leastM: number, mostM: number): Usual => ({ leastM, mostM, limitM: 300, zero: true });
const wire = (leastM: number, mostM: number): Usual => ({ leastM, mostM, limitM: 10_000, zero: false });
const distance = (mostM: number): Usual => ({ leastM: 0, mostM, limitM: 10_000, zero: true });

/** Lengths of the questions, and of parts on hand. */
type LengthKey = AnswerKey | 'coilDiameterM' | 'ownedLengthM';

/** Common practice, no source: between these nobody is asked twice. */
const usual: Partial<Record<LengthKey, Usual>> = {
  wireLengthM: wire(1, 350),
  spanM: wire(2, 400),
  heightM: height(0, 50),
  endHeightM: height(0, 50),
  supportHeightM: height(0, 60),
  runHeightM: height(0, 20),
  nearestPowerLineM: distance(5000),
  nearestPersonM: distance(1000),
  entryDistanceM: distance(200),
  feedLineLengthM: wire(0.5, 200),
  radialLengthM: wire(0.3, 60),
  counterpoiseM: wire(0.3, 100),
  coilDiameterM: { leastM: 0.03, mostM: 1, limitM: 2, zero: false },
  ownedLengthM: wire(0.3, 500),
};

export interface LengthQuestion {
  readonly key: LengthKey;
  /** Unit of a number typed without one. */
  readonly unit: LengthUnit;
  /** What the plan lets one expect, m. */
  readonly expectedM?: number;
  readonly format: Format;
}

export function readLengthField(typed: string, question: LengthQuestion): Reading {
  const range = usual[question.key] ?? wire(0.01, 1000);
  const read = readLength(typed, question.unit);
  if (isLengthProblem(read)) {
    if (read.code === 'zero' && range.zero) return good('length', 0);
    return problemOf(read);
  }
  if (read.metres > range.limitM) {
    return bad('too-long', { length: question.format.length(read.metres), most: question.format.length(range.limitM) });
  }
  return judge(read, range, question);
}

function judge(read: Length, range: Usual, { expectedM, format }: LengthQuestion): Reading {
  const context = { leastM: range.leastM, mostM: range.mostM, ...(expectedM === undefined ? {} : { expectedM }) };
  const readings = lengthDoubt(read.metres, read.unit, context);
  const itIs: TakeValue = { way: 'itIs', quantity: { kind: 'length', value: read.metres } };
  const length = format.length(read.metres);
  if (readings.length > 0) return bad('length-doubt', { length }, [itIs, ...readings.slice(0, 2).map(mean)]);
  if (read.metres >= range.leastM && read.metres <= range.mostM) return good('length', read.metres);
  const data = { length, least: format.length(range.leastM), most: format.length(range.mostM) };
  return bad('unusual-length', data, [itIs]);
}

const mean = ({ metres }: Length): TakeValue => ({ way: 'mean', quantity: { kind: 'length', value: metres } });

const problemOf = ({ code, data, candidates }: LengthProblem): Reading =>
  bad(code === 'unknown-unit' ? 'unknown-length-unit' : code, data, candidates.map(mean));
