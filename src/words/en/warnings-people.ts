/** Warnings about people near the antenna, and about more power than a licence gives. */
import { ruleSetName } from './catalog-names';
import { bandName } from './names';
import { say, type WarningWords } from './warning-message';

export const peopleWarnings = {
  'people-too-near': {
    text: (d, f) =>
      `People are too near on ${String(d.bands).split(',').map(bandName).join(', ')}: somebody may stay ${say.length(d, f, 'nearestM')} away, and the result keeps them ${say.length(d, f, 'keepM')} away.`,
    why: (d) =>
      `That is the distance for people who were not told, under the ${ruleSetName(String(d.ruleSet))}, counted from the nearest part, counterpoise and the outside of the coax included.`,
    waysOut: {
      'less-power': (d, f) =>
        `Use at most ${say.watts(d, f, 'mostW')} at the crest on these bands while somebody is there.`,
      'move-it': (d, f) => `Move or raise the antenna, so that every part is ${say.length(d, f, 'keepM')} from them.`,
      'keep-away': 'Close the place off, and stop sending the moment anybody comes near.',
    },
  },
  'power-above-licence': {
    text: (d, f) =>
      d.band === undefined
        ? `${say.watts(d, f, 'powerW')} is more than any amateur licence known here gives, ${say.watts(d, f, 'mostW')}.`
        : `${say.watts(d, f, 'powerW')} is more than a licence of the United States gives on ${bandName(String(d.band))}, ${say.watts(d, f, 'mostW')}.`,
    why: 'Most countries give less. Parts, distances and volts below are worked out for the power you gave.',
    waysOut: {
      'less-power': (d, f) => `Set the power to ${say.watts(d, f, 'mostW')} or to what your licence says.`,
      permit: 'If you hold a permit for more, follow its conditions and have the exposure assessed under it.',
    },
  },
} as const satisfies Readonly<Record<string, WarningWords>>;
