/** One measurement in words, as the log, the plan and the text to hand over tell it. */
import type { Measurement } from '../../../design/saved-plan';
import { measured as words } from '../../../words/en/measured';
import { bandName } from '../../../words/en/names';
import { clock, day, moment, type Say } from '../../say';
import { mhzText } from './trim-state';

/** Band, dip, SWR and when. */
export const measuredText = (measurement: Measurement, say: Say): string =>
  textAt(measurement, moment(measurement.at), say);

const textAt = ({ band, dipMHz, swr }: Measurement, time: string, say: Say): string =>
  say(words.line, { band: bandName(band), mhz: mhzText(dipMHz), swr: swr ?? '', time });

/** The wire that was in use; empty where it is not known. */
export const withWireText = ({ wireM }: Measurement, say: Say): string =>
  wireM === undefined ? '' : say(words.wire, { metres: wireM });

export const newestFirst = (list: readonly Measurement[]): readonly Measurement[] =>
  [...list].sort((a, b) => b.at - a.at);

/** For paper and messages, with the day: whole lines, the newest first, each note under what it was written to. */
export const measuredLines = (list: readonly Measurement[], say: Say): readonly string[] =>
  newestFirst(list).flatMap((each) => {
    const line = `${textAt(each, `${day(each.at)}, ${clock(each.at)}`, say)} ${withWireText(each, say)}`.trim();
    return each.note === undefined ? [line] : [line, `  ${each.note}`];
  });
