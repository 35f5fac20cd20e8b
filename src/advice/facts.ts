/**
 * Everything the rules judge from: the settled answers, the system they name, and what the catalogue says of the parts. Rules are pure
 * functions of Facts (and of Dimensions, dimensions.ts); wording lives in words/.
 */

import { C0 } from '../base/constants';
import { type Band, bandIds } from '../catalog/band-ids';
import { type BandEdges, bandEdgesMHz } from '../catalog/bands';
import type { FeedLine } from '../catalog/lines';
import { lines } from '../catalog/lines';
import { modeAverageFactor } from '../catalog/modes';
import type { Wire } from '../catalog/wires';
import { wires } from '../catalog/wires';
import type { Answers } from '../design/answers';
import type { FeedPosition, Radiator, System } from '../design/choices';
import { mattersFor } from './matters';
import { isHalfWaveOnAll } from './near-half-wave';
import { defaultReturnPath } from './return-path';
import { type Assumed, lineKindOf, type Settled, settle } from './settle';
import { isBalanced, systemOf } from './system';

export interface BandFacts {
  readonly band: Band;
  readonly focusMHz: number;
  readonly edgesMHz: BandEdges;
  readonly wavelengthM: number;
}

export interface Facts {
  readonly answers: Answers;
  readonly settled: Settled;
  readonly assumed: readonly Assumed[];
  readonly system: System;
  readonly balanced: boolean;
  readonly lineKind: 'coax' | 'open-wire' | 'none';
  /** The feed line's catalogue entry; null with no line. */
  readonly line: FeedLine | null;
  readonly wire: Wire;
  /** Wanted bands, longest wave first; never empty. */
  readonly bands: readonly [BandFacts, ...BandFacts[]];
  /** Average power while keyed, as part of PEP; 1 when the mode is not told. */
  readonly averageFactor: number;
  /** Average power at the antenna over 10 minutes, W. */
  readonly averageW: number;
}

/** Why no system can be named: the radiator has no such feed point. */
export interface NoSystem {
  readonly radiator: Radiator;
  readonly fedAt: FeedPosition;
}

/** Facts of an antenna the operator has chosen; `answers` must hold a radiator and a feed position. */
export function factsOf(answers: Answers): Facts | NoSystem {
  const { radiator, fedAt } = answers;
  if (radiator === undefined || fedAt === undefined)
    throw new TypeError('factsOf needs a radiator and a feed position');
  const wire = wires[answers.wire ?? 'pvc-1.5mm2'];
  const feedLine = answers.feedLine ?? 'rg-58';
  const system = systemOf({
    radiator,
    fedAt,
    lengthChoice: answers.lengthChoice ?? 'resonant',
    feedLine,
    fixedIsHalfWave: answers.wireLengthM !== undefined && isHalfWaveOnAll(answers.wireLengthM, answers, wire),
  });
  if (system === null) return { radiator, fedAt };
  const { settled, assumed } = settle(
    { ...answers, radiator, fedAt },
    {
      system,
      returnPath: (heightM) => defaultReturnPath(system, heightM),
      matters: (key) => mattersFor(system, answers, key),
    },
  );
  const averageFactor = settled.mode === null ? 1 : modeAverageFactor[settled.mode].value;
  return {
    answers,
    settled,
    assumed,
    system,
    balanced: isBalanced(system, settled.balanced),
    lineKind: lineKindOf(settled.feedLine),
    line: settled.feedLine === 'none' ? null : lines[settled.feedLine],
    wire,
    bands: bandFactsOf(answers, settled),
    averageFactor,
    averageW: settled.powerW * averageFactor * settled.transmitShare,
  };
}

export const isNoSystem = (facts: Facts | NoSystem): facts is NoSystem => !('system' in facts);

function bandFactsOf(answers: Answers, settled: Settled): readonly [BandFacts, ...BandFacts[]] {
  const list = bandIds
    .filter((band) => answers.bands.includes(band))
    .map((band): BandFacts => {
      const focusMHz = settled.focusMHz[band] ?? 0;
      const edgesMHz = bandEdgesMHz(band, settled.region, settled.country ?? undefined);
      return { band, focusMHz, edgesMHz, wavelengthM: C0 / (focusMHz * 1e6) };
    });
  const [first, ...rest] = list;
  if (first === undefined) throw new TypeError('answers without a band were not read by the schema');
  return [first, ...rest];
}
