/** Wire and line on hand: by kind, by length, and by what a line loses and stands. */
import { lines } from '../catalog/lines';
import { wires } from '../catalog/wires';
import type { PartOnHand } from '../design/answers';
import { lineDataOf } from '../physics/catalogue-line';
import { attenuationDbPer100M } from '../physics/line';
import type { Dimensions, Piece } from './dimensions';
import type { Facts } from './facts';
import type { Link } from './finding';
import { keyedAverageW } from './heating-power';
import { type Judged, judged } from './verdict-codes';

type WirePart = Extract<PartOnHand, { part: 'wire' }>;
type LinePart = Extract<PartOnHand, { part: 'line' }>;

/** Cut long by this part, fold back, trim. Common practice. */
const CUTTING_ALLOWANCE = 0.03;
/** Feed-line loss above which it is worth saying, dB. */
const LOSS_DB = 1;

const isReturn = ({ piece }: Piece): boolean => piece === 'radial' || piece === 'counterpoise';
const isRadiator = (piece: Piece): boolean => !isReturn(piece) && piece.piece !== 'matching-section';
const totalM = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { count, length }) => sum + count * length.metres, 0) * (1 + CUTTING_ALLOWANCE);
const longestM = (pieces: readonly Piece[]): number =>
  Math.max(0, ...pieces.map(({ length }) => length.metres)) * (1 + CUTTING_ALLOWANCE);

export function judgeWire(part: WirePart, facts: Facts, { pieces }: Dimensions): Judged {
  const radiator = pieces.filter(isRadiator);
  const returns = pieces.filter(isReturn);
  const neededM = totalM(radiator);
  const data = { wire: part.wire, lengthM: part.lengthM, neededM };
  if (part.lengthM >= neededM) {
    const kw = wires[part.wire].velocityFactor.value;
    if (kw === facts.wire.velocityFactor.value) return judged('fits', 'wire-fits', data);
    return judged('fits', 'wire-other-kind', { ...data, planned: facts.settled.wire });
  }
  if (part.lengthM >= longestM(radiator)) return judged('fits', 'wire-part', { ...data, longestM: longestM(radiator) });
  if (returns.length > 0 && part.lengthM >= longestM(returns))
    return judged('fits-elsewhere', 'wire-return', { ...data, pieceM: longestM(returns) });
  return judged('too-small', 'wire-too-short', data);
}

export function judgeLine(part: LinePart, facts: Facts, chain: readonly Link[]): Judged {
  const wanted = chain.filter(({ device }) => device === 'line');
  if (wanted.length === 0) return judged('wrong', 'line-not-here');
  const open = lines[part.line].kind === 'open';
  if (facts.lineKind === 'coax') return open ? judged('wrong', 'line-open-for-coax') : judgeFeedLine(part, facts);
  if (open) return judgeFeedLine(part, facts);
  const jumperM = wanted.find(({ line }) => line !== facts.settled.feedLine)?.lengthM ?? null;
  return jumperM !== null && part.lengthM >= jumperM && isThickCoax(part.line)
    ? judged('fits-elsewhere', 'line-for-jumper', { line: part.line, lengthM: jumperM })
    : judged('wrong', 'line-coax-for-open', { line: part.line });
}

/** A jumper runs at high SWR, where thin coax gets hot. */
const THICK_COAX_M = 0.0045;
const isThickCoax = (id: LinePart['line']): boolean => {
  const line = lines[id];
  return line.kind === 'coax' && line.outerDiameterM.value >= THICK_COAX_M;
};

/** Of the right kind: long enough, strong enough, and not too lossy. */
function judgeFeedLine(part: LinePart, facts: Facts): Judged {
  const line = lines[part.line];
  const neededM = facts.settled.feedLineLengthM;
  const highestHz = (facts.bands.at(-1) ?? facts.bands[0]).focusMHz * 1e6;
  const dbPer100M = attenuationDbPer100M(lineDataOf(line), highestHz);
  const data = { line: part.line, lengthM: part.lengthM, neededM, lossDb: (dbPer100M * neededM) / 100 };
  if (line.kind === 'coax') {
    const mostW = line.power30MHzW.value * Math.sqrt(30e6 / highestHz);
    const averageW = keyedAverageW(facts);
    if (averageW > mostW) return judged('too-small', 'line-power', { ...data, averageW, mostW });
  }
  if (part.lengthM < neededM) return judged('too-small', 'line-too-short', data);
  if (data.lossDb > LOSS_DB) return judged('fits', 'line-lossy', data);
  if (line.z0Ohm.value === 75 && facts.line?.z0Ohm.value !== 75) return judged('fits', 'line-75-ohm', data);
  return part.line === facts.settled.feedLine
    ? judged('fits', 'line-fits', data)
    : judged('fits', 'line-other-coax', data);
}
