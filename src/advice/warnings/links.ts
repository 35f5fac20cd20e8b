/** What links in the wire ask for: a walk for each band, and open pieces that are no half-wave. */
import { type Band, bandIds } from '../../catalog/band-ids';
import type { BandFacts, Facts } from '../facts';
import { halfWaves } from '../feed-impedance';
import { hangsAs } from '../hanging';
import { linkCount, linkedLegs } from '../wire-links';
import { type Rule, type Way, warn } from './warning';

export const linksByHand: Rule = ({ facts, dimensions }) => {
  const links = linkCount(dimensions);
  if (links === 0) return [];
  const lower: readonly Way[] = hangsAs(facts.settled) === 'inverted-v' ? [] : ['in-reach'];
  return [warn('links-by-hand', { links, eachTime: 2 }, [...lower, 'one-link-each', 'parallel-wires'])];
};

/**
 * How near to a half-wave the piece next to an open link may come before it takes part. Our own field solutions of fifteen pairs of bands, level
 * and as an inverted V at 10 m: within 12 % of it the wire in use wants 1.5 to 6 % more than by rule and shows up to 110 Ω; from 18 % off it is as
 * if the piece were not there. Pieces further out do little.
 */
const NEAR_HALF_WAVE = 0.12;

export const openPieceHalfWave: Rule = ({ facts, dimensions }) => {
  const legs = linkedLegs(dimensions);
  return legs.flatMap(({ band }, index) => {
    const at = facts.bands.find((each) => each.band === band);
    const beyond = legs[index + 1];
    const piece = dimensions.pieces.find(({ piece: id, band: own }) => id === 'leg-piece' && own === beyond?.band);
    if (at === undefined || beyond === undefined || piece === undefined) return [];
    const pieceM = piece.length.metres;
    const share = halfWaves(facts, at, pieceM, 2);
    if (Math.abs(share - 1) > NEAR_HALF_WAVE) return [];
    const data = { band, lower: beyond.band, pieceM, percent: 100 * share, halfM: pieceM / 2 };
    return [warn('open-piece-half-wave', data, [...bandBetween(facts, at, beyond.band), 'split-piece', 'as-found'])];
  });
};

/** A band whose link would part the piece, the one nearest to its middle. */
function bandBetween({ bands }: Facts, upper: BandFacts, lower: Band): readonly Way[] {
  const wanted = bands.map(({ band }) => band);
  const between = bandIds.slice(bandIds.indexOf(lower) + 1, bandIds.indexOf(upper.band));
  const middle = between[Math.floor(between.length / 2)];
  return middle === undefined || wanted.includes(middle) ? [] : [['add-band', { middle }]];
}
