import type { Mix } from './core-ids';
import type { RingSize } from './cores';
import { recalled, type Sourced } from './sourced';

/** Cable beads: long ferrite tubes that a cable passes through once. Named by the hole, because the hole decides which cable they take. */
export const beadIds = ['bead-6mm', 'bead-13mm'] as const;
export type BeadId = (typeof beadIds)[number];

export interface Bead {
  readonly id: BeadId;
  readonly size: Sourced<RingSize>;
  /** Mixes this tube is sold in that belong to the catalogue. */
  readonly mixes: readonly Mix[];
}

const tube = (outsideMm: number, insideMm: number, lengthMm: number): RingSize => ({
  outsideDiameterM: outsideMm / 1000,
  insideDiameterM: insideMm / 1000,
  heightM: lengthMm / 1000,
});

export const beads: Readonly<Record<BeadId, Bead>> = {
  // Part numbers end in 540002: cables of 5 mm, tight on 6.1 mm. Medium confidence.
  'bead-6mm': {
    id: 'bead-6mm',
    size: recalled(tube(14.3, 6.35, 28.6), 'maker-ferrite-catalogue'),
    mixes: ['31', '43'],
  },
  // Part numbers end in 102002. Two of mix 31 were measured at 100 Ω at 1.8 MHz and 300 Ω at 20 MHz; these sizes give 116 and 307 Ω.
  'bead-13mm': {
    id: 'bead-13mm',
    size: recalled(tube(25.9, 12.8, 28.6), 'maker-ferrite-catalogue'),
    mixes: ['31', '43'],
  },
};

/** The smallest tube that a cable of this diameter passes; undefined when none does. */
export const beadForCable = (cableM: number): Bead | undefined =>
  beadIds.map((id) => beads[id]).find((bead) => bead.size.value.insideDiameterM >= cableM);
