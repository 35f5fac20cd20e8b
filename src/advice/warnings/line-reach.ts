/** Whether the feed line told, or the usual one, gets from the feed point to where it should. */
import { type Rule, warn } from './warning';

/** Where a hand or a radio on a table takes the line, above ground. Common practice. */
const TAKEN_AT_M = 1;
/** Rounding of what people type: 1 cm. */
const SLACK_M = 0.01;

export const lineTooShort: Rule = ({ facts: { settled, answers, lineKind } }) => {
  const { feedLine, feedLineLengthM: lineM, heightM, indoors } = settled;
  if (feedLine === 'none' || indoors) return [];
  const entryM = lineKind === 'coax' ? (answers.entryDistanceM ?? 0) : 0; // asked of coax only
  if (entryM > lineM + SLACK_M) {
    const ways = [
      ['longer-line', { lengthM: entryM }],
      ['nearer-entry', { lengthM: lineM }],
    ] as const;
    return [warn('line-too-short', { lineM, entryM }, ways, 'line-ends-before-entry')];
  }
  const neededM = heightM - TAKEN_AT_M;
  if (lineM >= neededM - SLACK_M) return [];
  const ways = [
    ['longer-line', { lengthM: neededM }],
    ['lower-feed-point', { lengthM: lineM + TAKEN_AT_M }],
  ] as const;
  return [warn('line-too-short', { lineM, heightM }, ways)];
};
