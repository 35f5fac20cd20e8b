/** What the rules found, part by part, in words. */

import type {
  BandFinding,
  Caution,
  Cut,
  Dispute,
  Exposure,
  NotNeeded,
  OfferedBox,
  Part,
  Step,
  Verdict,
  Warning,
} from '../advice/finding';
import type { Assumed } from '../advice/settle';
import { wayAnswer } from '../advice/warnings/way-answers';
import type { Answers } from '../design/answers';
import { assumedFocus, assumed as assumedWords } from '../words/en/assumed';
import { bandNotes } from '../words/en/bands';
import { cautionLines } from '../words/en/cautions';
import { cutNotes, pieceName, stopRules } from '../words/en/cuts';
import { disputes as disputeWords } from '../words/en/disputes';
import { exposureWords } from '../words/en/exposure';
import { notNeededDevices, notNeeded as notNeededWords } from '../words/en/not-needed';
import { partFor, partItem, partItems, partSubstitutes, partUses } from '../words/en/parts';
import { steps as stepWords } from '../words/en/steps';
import { verdicts as verdictWords } from '../words/en/verdicts';
import { warningWords } from '../words/en/warnings';
import { render } from '../words/message';
import type { Plan } from './plan-schema';
import type { Speaker } from './speaker';
import { stateSource, stateWorking, stateWorkingOrNull } from './word-sources';

export const stateNotNeeded = (list: readonly NotNeeded[], speaker: Speaker): Plan['notNeeded'] =>
  list.map((entry) => ({
    device: notNeededDevices[entry.device] ?? entry.device,
    why: speaker.say(notNeededWords, entry),
    code: entry.code,
    source: stateSource(entry.source),
  }));

export const stateVerdicts = (list: readonly Verdict[], speaker: Speaker): Plan['verdicts'] =>
  list.map((entry) => ({ part: entry.part, verdict: entry.verdict, why: speaker.say(verdictWords, entry) }));

export const stateOfferedBox = (offered: OfferedBox | null, speaker: Speaker): Plan['offeredBox'] =>
  offered === null ? null : { ratio: offered.ratio, verdict: offered.verdict, why: speaker.say(verdictWords, offered) };

export const stateCuts = (list: readonly Cut[], speaker: Speaker): Plan['cuts'] =>
  list.map((cut) => ({
    piece: cut.piece,
    name: pieceName(cut.piece),
    count: cut.count,
    finishedM: cut.finishedM,
    legM: cut.legM ?? null,
    cutM: cut.cutM,
    toleranceM: cut.toleranceM,
    marksM: [...cut.marksM],
    stopRule: speaker.say(stopRules, cut.stopRule),
    note: speaker.say(cutNotes, cut.note),
    working: stateWorking(cut.working),
  }));

export const stateParts = (list: readonly Part[], speaker: Speaker): Plan['parts'] =>
  list.map((part) => ({
    kind: part.item.code,
    id: part.id,
    item: partItem(speaker.say(partItems, part.item), part, speaker.format),
    name: speaker.say(partItems, part.item),
    quantity: part.quantity,
    unit: part.unit,
    have: part.have,
    owned: part.owned,
    for: speaker.say(partFor, part.for),
    use: speaker.say(partUses, part.for),
    substitute: speaker.say(partSubstitutes, part.substitute),
    again: part.again,
    where: part.where,
  }));

export const stateBands = (list: readonly BandFinding[], speaker: Speaker): Plan['bands'] =>
  list.map((band) => ({
    ...band,
    swrSweep: band.swrSweep === null ? null : [...band.swrSweep],
    notes: band.notes.map((note) => speaker.say(bandNotes, note)),
  }));

export const stateWarnings = (list: readonly Warning[], answers: Answers, { format }: Speaker): Plan['warnings'] =>
  list.map(({ id, severity, code, data, bands, waysOut }) => {
    const words = warningWords[code];
    if (words === undefined) throw new Error(`no words for warning ${code}`);
    return {
      id,
      severity,
      text: render(words.text, data, format),
      why: render(words.why, data, format),
      waysOut: waysOut.map((way) => {
        const message = words.waysOut[way.code];
        if (message === undefined) throw new Error(`no words for ${code}, way out ${way.code}`);
        return render(message, way.data, format);
      }),
      wayAnswers: waysOut.map((way) => wayAnswer({ code }, way, answers)),
      bands: [...bands],
    };
  });

/** All lines of a caution in one text, the acts first; each line's own reason stands behind it. */
export const stateCautions = (list: readonly Caution[], { format }: Speaker): Plan['cautions'] =>
  list.map(({ id, lines, before, data, source, distanceM, distanceMWorking }) => {
    const words = lines.flatMap((number) => cautionLines[number] ?? []);
    return {
      id,
      lines: [...lines],
      before,
      text: words.map(({ act }) => render(act, data, format)).join(' '),
      why: words.map(({ reason }) => render(reason, data, format)).join(' '),
      lineTexts: words.map(({ act, reason, source: lineSource }) => ({
        act: render(act, data, format),
        reason: render(reason, data, format),
        source: stateSource(lineSource),
      })),
      source: stateSource(source),
      distanceM,
      distanceMWorking: stateWorkingOrNull(distanceMWorking),
    };
  });

export const stateExposure = (list: readonly Exposure[], speaker: Speaker): Plan['exposure'] =>
  list.map((entry) => ({
    ...entry,
    knowingMWorking: stateWorkingOrNull(entry.knowingMWorking),
    publicMWorking: stateWorkingOrNull(entry.publicMWorking),
    groundKnowingMWorking: stateWorkingOrNull(entry.groundKnowingMWorking),
    groundPublicMWorking: stateWorkingOrNull(entry.groundPublicMWorking),
    decidedBy: speaker.say(exposureWords, entry.decidedBy),
    decidedByCode: entry.decidedBy.code,
    parts: entry.parts.map((each) => ({
      ...each,
      knowingMWorking: stateWorking(each.knowingMWorking),
      publicMWorking: stateWorking(each.publicMWorking),
    })),
    places: entry.places.map((each) => ({
      ...each,
      knowingMostWWorking: stateWorking(each.knowingMostWWorking),
      publicMostWWorking: stateWorking(each.publicMostWWorking),
    })),
    limits: entry.limits.map((each) => ({ ...each, source: stateSource(each.source) })),
    powerAtNearestPersonWWorking: stateWorkingOrNull(entry.powerAtNearestPersonWWorking),
  }));

export const stateSteps = (list: readonly Step[], speaker: Speaker): Plan['steps'] =>
  list.map((step) => ({
    id: step.id,
    text: speaker.say(stepWords, step),
    outdoor: step.outdoor,
    cautions: [...step.cautions],
  }));

export const stateAssumed = (list: readonly Assumed[], speaker: Speaker): Plan['assumed'] =>
  list.map(({ key, value, code, data = {}, effect }) => ({
    key: key === 'focusMHz' ? code : key,
    value,
    why: key === 'focusMHz' ? render(assumedFocus, {}, speaker.format) : speaker.say(assumedWords, { code, data }),
    effect,
  }));

export const stateDisputes = (list: readonly Dispute[], { format }: Speaker): Plan['disputes'] =>
  list.map(({ id, data, source }) => {
    const words = disputeWords[id];
    if (words === undefined) throw new Error(`no words for dispute ${id}`);
    return {
      id,
      question: render(words.question, data, format),
      one: render(words.one, data, format),
      other: render(words.other, data, format),
      decides: render(words.decides, data, format),
      house: render(words.house, data, format),
      source: stateSource(source),
    };
  });
