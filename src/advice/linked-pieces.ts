/**
 * Pieces of a linked dipole from the feed point outward: the highest band's leg, then what each lower band adds to the leg inside it.
 *
 *   leg of a band   half of its own half-wave        piece   (whole − inner) / 2 − link
 *
 * Cut from the highest band outward: common practice, no source.
 */
import type { Dimension } from '../base/working';
import { dimension, metresOf } from './dimension';
import type { Piece } from './dimensions';
import type { Facts } from './facts';
import type { SolvedLengths } from './field-facts';
import { half, ownLength } from './own-length';
import { LINK_M } from './wire-links';

export function linkedPieces(facts: Facts, radiator: Dimension, solved: SolvedLengths | undefined): Piece[] {
  const [lowest] = facts.bands;
  let inner: Dimension | null = null;
  return [...facts.bands].reverse().map((at) => {
    const whole = at === lowest ? radiator : ownLength(facts, at, solved);
    const length = inner === null ? half(whole) : beyond(inner, whole);
    inner = whole;
    return { piece: 'leg-piece', band: at.band, count: 2, length };
  });
}

const beyond = (inner: Dimension, whole: Dimension): Dimension =>
  dimension(
    (whole.metres - inner.metres) / 2 - LINK_M,
    '(whole - inner) / 2 - link',
    {
      whole: metresOf(whole.metres, 'solved'),
      inner: metresOf(inner.metres, 'solved'),
      link: metresOf(LINK_M, 'assumed'),
    },
    'house-practice',
  );
