/** Why the antenna-end choke is there and stands where it stands. */
import type { Facts } from '../facts';
import { figureBand, heatShare } from '../field-figures';
import type { Reason } from '../finding';
import { keyedAverageW } from '../heating-power';
import { antennaChokeOhm, hasRadials, isEndFed, isUpright, reactiveMinimumOhm } from './choke-minimum';
import { computed, practice } from './why-codes';

export function antennaChokeWhy(facts: Facts, distanceM: number): readonly Reason[] {
  const { settled } = facts;
  const ohm = antennaChokeOhm(facts);
  const why = [...systemWhy(facts, ohm, distanceM)];
  if (settled.shackEnd === 'feed-point-tuner') why.push(practice('choke-below-tuner', { ohm }));
  if (settled.feedLineRoute === 'along') why.push(computed('choke-cannot-stop-pick-up'));
  why.push(computed('choke-reactive-minimum', { ohm: Math.max(reactiveMinimumOhm(facts), ohm) }));
  if (settled.rfInShack) why.push(practice('choke-raised', { ohm }));
  return why;
}

function systemWhy(facts: Facts, ohm: number, distanceM: number): readonly Reason[] {
  const { system } = facts;
  if (isEndFed(system)) return endFedWhy(facts, ohm, distanceM);
  if (isUpright(system)) return uprightWhy(facts, ohm);
  switch (system) {
    case 'off-centre-fed':
      return offCentreWhy(facts, ohm, distanceM);
    case 'open-wire-doublet':
      return [practice('choke-doublet-on-coax', { ohm })];
    case 'full-wave-loop':
    case 'folded-dipole':
      return [practice('choke-loop', { ohm }), computed('choke-noise')];
    case 'other':
      return [practice(facts.balanced ? 'choke-other-balanced' : 'choke-other-unbalanced', { ohm })];
    default:
      return [computed('choke-centre-fed', { ohm }), computed('choke-noise')];
  }
}

function offCentreWhy(facts: Facts, ohm: number, distanceM: number): readonly Reason[] {
  const band = figureBand(facts.bands[0].band);
  const averageW = keyedAverageW(facts);
  const heatW = heatShare.offCentreChoke[band] * averageW;
  return [
    computed('choke-off-centre', { ohm, distanceM }),
    computed('choke-off-centre-heat', { ohm, band, averageW, heatW, share: heatShare.offCentreChoke[band] }),
  ];
}

function endFedWhy(facts: Facts, ohm: number, distanceM: number): readonly Reason[] {
  const [{ band, wavelengthM }] = facts.bands;
  const { returnPath, feedLineLengthM } = facts.settled;
  const share = Math.max(...facts.bands.map((wanted) => heatShare.endFedChoke[figureBand(wanted.band)]));
  const heatW = share * keyedAverageW(facts);
  const data = { ohm, distanceM, band, heatW };
  if (distanceM === 0) return [computed('choke-at-box', data)];
  if (distanceM >= feedLineLengthM) return [computed('choke-end-fed-short-line', data)];
  if (facts.system === 'non-resonant-end-fed') return [computed('choke-non-resonant-shield', data)];
  const roomM = 0.1 * wavelengthM;
  return [
    computed('choke-end-fed', data),
    ...(returnPath === 'counterpoise-wire' ? [computed('choke-beside-wire', data)] : []),
    ...(roomM < facts.settled.entryDistanceM ? [computed('choke-end-fed-more-room', { distanceM: roomM })] : []),
  ];
}

const uprightWhy = (facts: Facts, ohm: number): readonly Reason[] => [
  computed('choke-vertical', { ohm }),
  hasRadials(facts) ? practice('choke-vertical-radials') : practice('choke-vertical-no-radials'),
];
