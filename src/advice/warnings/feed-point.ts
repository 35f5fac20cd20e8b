/** Feed points, lines and return paths that do not go together. */
import type { System } from '../../design/choices';
import { isEndFed } from '../chain/choke-minimum';
import { COUNTERPOISE_WAVES } from '../choke-distance';
import type { NoSystem } from '../facts';
import type { Warning } from '../finding';
import { needsReturnPath } from '../return-path';
import { feedPositionsOf } from '../system';
import { type Rule, type Way, warn } from './warning';

/** The refusal for a radiator that has no such feed point. Its ways out are the feed points it has. */
export const noSuchFeedPoint = ({ radiator, fedAt }: NoSystem): Warning => {
  const has = feedPositionsOf[radiator];
  const other: readonly Way[] = has.length > 1 ? [] : [['other-radiator', { radiator, fedAt }]];
  return warn('no-such-feed-point', { radiator, fedAt }, [
    ...has.map((at): Way => ['feed-at', { fedAt: at, radiator }]),
    ...other,
  ]);
};

const oneWire: readonly System[] = [
  'off-centre-fed',
  'end-fed-half-wave',
  'non-resonant-end-fed',
  'quarter-wave-vertical',
  'non-resonant-vertical',
  'inverted-l',
];

export const lineDoesNotBelong: Rule = ({ facts }) => {
  const { system, lineKind } = facts;
  const { feedLine, shackEnd } = facts.settled;
  // Behind a tuner at the feed point the line is matched, whatever it is.
  if (shackEnd === 'feed-point-tuner') return [];
  if (lineKind === 'open-wire' && oneWire.includes(system)) {
    return [
      warn('line-does-not-belong', { line: feedLine, system }, ['use-coax', 'feed-centre'], 'open-wire-on-one-wire'),
    ];
  }
  if (lineKind === 'coax' && system === 'open-wire-doublet') {
    return [
      warn(
        'line-does-not-belong',
        { line: feedLine, system },
        ['use-open-wire', 'cut-resonant', 'tuner-at-feed-point'],
        'coax-on-doublet',
      ),
    ];
  }
  return [];
};

export const returnPathNeeded: Rule = ({ facts }) => {
  const { returnPath, radialCount } = facts.settled;
  if (!needsReturnPath(facts.system)) return [];
  const radials = returnPath === 'ground-radials' || returnPath === 'elevated-radials';
  const missing =
    returnPath === 'none' ||
    (radials && radialCount === 0) ||
    (returnPath === 'coax-shield' && facts.lineKind !== 'coax');
  if (!missing) return [];
  const ways = isEndFed(facts.system)
    ? ['counterpoise-wire', facts.lineKind === 'coax' ? 'coax-as-counterpoise' : 'feed-with-coax']
    : ['ground-radials', 'elevated-radials'];
  return [warn('return-path-needed', { system: facts.system, returnPath }, ways)];
};

/** A choke nearer than this part of the wave leaves no coax to work against. */
const AT_BOX_WAVES = 0.02;

/**
 * An end-fed whose choke stands at the box while nothing else is there to work against: by the plan's own place, because the operator has said
 * that there is no return path, or because the box on hand holds transformer and choke in one.
 */
export const chokeWithoutReturn: Rule = ({ facts, dimensions }) => {
  const { returnPath, powerW, onHand } = facts.settled;
  if (!isEndFed(facts.system) || returnPath === 'counterpoise-wire') return [];
  const hasRadials = returnPath === 'ground-radials' || returnPath === 'elevated-radials';
  if (hasRadials && facts.settled.radialCount > 0) return [];
  const [lowest] = facts.bands;
  const chokeM = dimensions.chokeAt?.metres ?? null;
  const atBox = chokeM !== null && chokeM < AT_BOX_WAVES * lowest.wavelengthM;
  const inBox = onHand.some(({ part }) => part === 'two-in-one');
  if (!atBox && !inBox && returnPath !== 'none') return [];
  const data = { lowW: 0.6 * powerW, highW: 0.9 * powerW, powerW };
  const wayM = COUNTERPOISE_WAVES * lowest.wavelengthM;
  return [
    warn('choke-without-return', data, [
      ['choke-further', { distanceM: wayM }],
      ['counterpoise-wire', { lengthM: wayM }],
    ]),
  ];
};
