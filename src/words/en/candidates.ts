/** Why a candidate stands where it stands. */
import type { Message } from '../message';
import { bandName } from './names';

const bandList = (ids: unknown): string => String(ids).split(' ').map(bandName).join(', ');

export const candidates: Readonly<Record<string, Message>> = {
  'serves-all': 'Works on every band you want.',
  'serves-some': (d) => `Works on ${d.served} of your ${d.wanted} bands; not on ${bandList(d.missing)}.`,
  'no-tuner': 'Needs no tuner.',
  'tuner-on': (d) => `Needs a tuner on ${bandList(d.bands)}.`,
  fits: (d, f) => `Its ${f.length(Number(d.runM))} run fits your span.`,
  'too-long': (d, f) => `Its ${f.length(Number(d.runM))} run is longer than your span.`,
  'room-unknown': (d, f) => `Needs a straight run of ${f.length(Number(d.runM))}.`,
  high: (d, f) => `Needs a support ${f.length(Number(d.supportM))} high.`,
  'too-high': (d, f) => `Needs a support ${f.length(Number(d.supportM))} high, and yours is lower.`,
  loss: (d, f) => `Of 100 W about ${f.number(Number(d.radiatedW), 2)} W leave the feed line, on its worst band.`,
  stops: (d) => `Cannot be built as it stands: ${d.count === 1 ? 'one thing stops it' : `${d.count} things stop it`}.`,
  parts: (d) => `${d.count} different things to buy.`,
};
