/** Transformers and boxes on hand that do not belong to this feed point, and what they would do there. */
import { complex } from '../../base/complex';
import type { PartOnHand } from '../../design/answers';
import { swr } from '../../physics/line';
import { throughIdeal } from '../../physics/transformer';
import type { Warning } from '../finding';
import { keyedAverageW } from '../heating-power';
import { REACH, SYSTEM_OHM } from '../line-run';
import { needsOf, twinLeadMeetsCoax } from '../needs';
import { type Judged, listed, type Rule, warn } from './warning';

/** Ratios within this factor of the needed one still fit: 49, 56 and 64; 4 and 6. */
const FITS_WITHIN = 1.6;
const MOST_SWR = 999;

const ratioOf = (part: PartOnHand): number | null =>
  part.part === 'transformer' || part.part === 'two-in-one' ? part.ratio : null;

const fits = (ratio: number, needed: number): boolean => Math.max(ratio / needed, needed / ratio) <= FITS_WITHIN;

export const wrongTransformer: Rule = (judged) => {
  const { facts, chain } = judged;
  if (facts.lineKind === 'open-wire') return [];
  const planned = chain.find(({ device }) => device === 'transformer')?.ratio;
  const needed = planned ?? needsOf(facts).transformation?.ratio ?? 1;
  return facts.settled.onHand.flatMap((part, index) => {
    const ratio = ratioOf(part);
    return ratio === null || fits(ratio, needed) ? [] : [mismatch(judged, index, ratio, needed)];
  });
};

/** Where the needed ratio would do better: the SWR on the band that this one spoils most, and where else it goes beyond what a radio takes. */
function mismatch({ bands }: Judged, part: number, ratio: number, needed: number): Warning {
  const seen = bands.flatMap(({ band, feedPoint }) => {
    if (feedPoint === null) return [];
    const z = complex(feedPoint.r, feedPoint.x);
    const behind = (n: number): number => Math.min(swr(throughIdeal(z, n), SYSTEM_OHM), MOST_SWR);
    return behind(ratio) > behind(needed) ? [{ band, swr: behind(ratio) }] : [];
  });
  const worstFirst = seen.toSorted((a, b) => b.swr - a.swr);
  const [worst] = worstFirst;
  const numbers = { part, ratio, needed };
  const ways = ['use-needed', 'other-feed-point'];
  if (worst === undefined) return warn('wrong-transformer', numbers, ways, 'wrong-transformer-unknown');
  const spoilt = seen.filter((each) => each !== worst && each.swr > REACH.none).map(({ band }) => band);
  const least = worstFirst.findLast(({ swr: other }) => other > REACH.none)?.swr ?? worst.swr;
  const data = { ...numbers, band: worst.band, swr: worst.swr, others: listed(spoilt), leastSwr: least };
  return warn('wrong-transformer', data, ways);
}

/** Average while keyed that one box with transformer and choke stands, W. House position: about 100 W of voice. */
const TWO_IN_ONE_W = 25;

export const twoInOneBox: Rule = ({ facts }) => {
  const averageW = keyedAverageW(facts);
  if (averageW <= TWO_IN_ONE_W) return [];
  return facts.settled.onHand.flatMap((part, index) => {
    if (part.part !== 'two-in-one') return [];
    const mostW = TWO_IN_ONE_W / facts.averageFactor;
    return [
      warn('two-in-one-box', { part: index, averageW, limitW: TWO_IN_ONE_W, mostW }, [
        'two-parts',
        ['less-power', { mostW }],
      ]),
    ];
  });
};

const isFour = (ratio: number): boolean => ratio >= 3 && ratio <= 6;

export const currentTypeOffCentre: Rule = ({ facts }) =>
  facts.system !== 'off-centre-fed'
    ? []
    : facts.settled.onHand.flatMap((part, index) =>
        part.part === 'transformer' && part.kind === 'current' && isFour(part.ratio)
          ? [
              warn(
                'current-4to1-off-centre',
                { part: index, ratio: part.ratio, heatW: (OFF_CENTRE_PART_W * facts.averageW) / 100 },
                ['voltage-type', 'add-choke'],
              ),
            ]
          : [],
      );

/** Heat in a 2.5 kΩ current transformer alone on the lowest band, W per 100 W: own field solutions. */
const OFF_CENTRE_PART_W = 34;

export const noFourToOneOnOpenWire: Rule = ({ facts }) => {
  if (facts.lineKind !== 'open-wire') return [];
  const ways = ['one-to-one-choke', 'balanced-tuner'];
  const builtIn =
    facts.settled.shackEnd === 'wide-tuner-4to1'
      ? [warn('no-4to1-on-open-wire', { ratio: 4 }, ['unbalanced-socket', ...ways], 'built-in-4to1')]
      : [];
  const owned = facts.settled.onHand.flatMap((part, index) => {
    const ratio = ratioOf(part);
    return ratio === null || ratio < 2 ? [] : [warn('no-4to1-on-open-wire', { part: index, ratio }, ways)];
  });
  return [...builtIn, ...owned];
};

const holdsOneToOne = (part: PartOnHand): boolean =>
  part.part === 'choke' ||
  part.part === 'beads' ||
  (part.part === 'transformer' && part.ratio === 1 && part.kind === 'current');

/**
 * A radio's own socket, with or without its built-in tuner, is a coax socket; a wide tuner is planned with a choke before it, and 300 Ω line
 * that matches a folded dipole with transformer and choke.
 */
export const openWireNeedsChoke: Rule = ({ facts }) => {
  const { shackEnd, onHand } = facts.settled;
  if (facts.lineKind !== 'open-wire' || (shackEnd !== 'radio' && shackEnd !== 'radio-tuner')) return [];
  if (twinLeadMeetsCoax(facts) || onHand.some(holdsOneToOne)) return [];
  return [
    warn('open-wire-needs-choke', { line: facts.settled.feedLine, shackEnd }, [
      'choke-and-tuner',
      'balanced-tuner',
      'coax-and-resonant',
    ]),
  ];
};
