/** How to make a designed device: turns, rings, pieces of conductor to cut and how they go on. Codes and numbers; words/ says it. */
import type { Working } from '../../base/working';
import { type Core, coreOf } from '../../catalog/cores';
import { TAIL_M } from '../../physics/choke-evaluate';
import type { ChokeDesign } from '../../physics/choke-need';
import { conductorLengthM } from '../../physics/conductor-on-core';
import type { TransformerDesign } from '../../physics/transformer-need';
import { TRANSFORMER_TAIL_M, WIRE } from '../../physics/transformer-windings';
import type { BuildFinding } from '../finding';
import { windingOf } from './winding-kind';

interface Wound {
  readonly core: Core;
  /** Rings in one stack, and turns over all stacks. */
  readonly count: number;
  readonly turns: number;
  readonly outerM: number;
  /** Ends in all, and what is left at each, m. */
  readonly tails: number;
  readonly tailM: number;
  /** Wires that run side by side as one conductor. */
  readonly wires: number;
}

/** The same geometry as conductor-on-core.ts, as a formula that the operator can open. */
function lengthWorking({ core, count, turns, outerM, tails, tailM, wires }: Wound): Working {
  const metres = (value: number) => ({ value, unit: 'm', from: 'catalogue' }) as const;
  const number = (value: number) => ({ value, unit: '', from: 'solved' }) as const;
  const turnM = 2 * (count * core.heightM + (core.outsideDiameterM - core.insideDiameterM) / 2) + Math.PI * outerM;
  return {
    formula: 'wires * (turns * (2 * (stacked * height + (outside - inside) / 2) + pi * jacket) + tails * tail)',
    inputs: {
      wires: number(wires),
      turns: number(turns),
      stacked: number(count),
      height: metres(core.heightM),
      outside: metres(core.outsideDiameterM),
      inside: metres(core.insideDiameterM),
      jacket: metres(outerM),
      tails: number(tails),
      tail: metres(tailM),
    },
    result: { value: wires * (turns * turnM + tails * tailM), unit: 'm' },
    source: 'wound-parts',
  };
}

export function chokeBuild({ core: id, count, turns, conductor, coreCount }: ChokeDesign): BuildFinding {
  const core = coreOf(id);
  const [first = 0, second = null] = turns;
  const wires = conductor.kind === 'pair' ? 2 : 1;
  const pieceM = (n: number): number => conductorLengthM(core, count, n, conductor.outerM, TAIL_M);
  const working = lengthWorking({
    core,
    count,
    turns: first + (second ?? 0),
    outerM: conductor.outerM,
    tails: 2 * turns.length,
    tailM: TAIL_M,
    wires,
  });
  const data = {
    core: id,
    count,
    conductor: conductor.id,
    turns: first,
    conductorM: pieceM(first),
    isPair: wires === 2,
  };
  return {
    code: second === null ? 'choke-one-winding' : 'choke-two-windings',
    data: second === null ? data : { ...data, secondTurns: second, secondM: pieceM(second) },
    core: id,
    count: coreCount,
    turns: first,
    secondaryTurns: second,
    strands: wires,
    conductor: conductor.id,
    conductorLengthM: working.result.value,
    conductorLengthMWorking: working,
    capacitorPf: null,
    box: 'vented-box',
  };
}

/** `turns` belong to the coax side and `secondaryTurns` to the antenna side, whichever has more. */
export function transformerBuild(
  design: TransformerDesign,
  ratio: number,
  isBalanced: boolean,
  turned: boolean,
): BuildFinding {
  const { core: id, count, primaryTurns, secondaryTurns, strands, winding } = design;
  const core = coreOf(id);
  const pieces = strands > 1 ? strands : 2;
  const working = lengthWorking({
    core,
    count,
    turns: winding === 'auto' ? secondaryTurns : primaryTurns + secondaryTurns,
    outerM: WIRE.outerM,
    tails: 2 * pieces,
    tailM: TRANSFORMER_TAIL_M,
    wires: 1,
  });
  const [coaxTurns, antennaTurns] = turned ? [secondaryTurns, primaryTurns] : [primaryTurns, secondaryTurns];
  const pieceM = (n: number): number => conductorLengthM(core, count, n, WIRE.outerM, TRANSFORMER_TAIL_M);
  const code = windingOf(ratio, isBalanced);
  const sideBySide = strands > 1 && code === 'transformer-autotransformer';
  return {
    code: sideBySide ? 'transformer-side-by-side' : code,
    data: {
      core: id,
      count,
      turns: coaxTurns,
      secondaryTurns: antennaTurns,
      conductor: design.conductor,
      conductorM: working.result.value,
      strands,
      strandTurns: Math.min(coaxTurns, antennaTurns),
      pieceM: working.result.value / pieces,
      coaxPieceM: pieceM(coaxTurns),
      antennaPieceM: pieceM(antennaTurns),
      capacitorPf: design.capacitorPf,
      isTurned: turned,
    },
    core: id,
    count,
    turns: coaxTurns,
    secondaryTurns: antennaTurns,
    strands: sideBySide || code === 'transformer-centre-tapped' ? strands : 1,
    conductor: design.conductor,
    conductorLengthM: working.result.value,
    conductorLengthMWorking: working,
    capacitorPf: design.capacitorPf === 0 ? null : design.capacitorPf,
    box: 'vented-box',
  };
}
