/**
 * What a candidate is worth, from its plan and, once solved, its fields.
 *
 * Useful heights: near contacts on 160, 80 and 60 m (30° to overhead), far ones from 30 m up (5 to 20°), both on 40 m, in equal parts of the dB.
 * Common practice, no source.
 */
import { factsOf, isNoSystem } from '../advice/facts';
import { hangsAs } from '../advice/hanging';
import { REACH } from '../advice/line-run';
import type { Band } from '../catalog/band-ids';
import { isOpenWireLine } from '../catalog/line-ids';
import type { Answers } from '../design/answers';
import { USUAL_SUPPORT_M } from './candidate-kinds';
import { type Candidate, pointsOf, type Score } from './candidate-points';
import type { ShortStudy } from './field/candidate-study';
import type { Plan } from './plan-schema';
import { thingsToBuy } from './things-to-buy';

type BandScore = Candidate['bands'][number];

const nearBands: readonly Band[] = ['160m', '80m', '60m'];

/** dB on 100 W spread evenly over a sphere. */
export function usefulDb(band: Band, radiatedW: number, zone: { readonly far: number; readonly near: number }): number {
  const [farDb, nearDb] = [zone.far, zone.near].map((gain) => 10 * Math.log10(Math.max(gain, 1e-3)));
  const radiatedDb = 10 * Math.log10(Math.max(radiatedW, 1e-3) / 100);
  if (band === '40m') return radiatedDb + ((farDb ?? 0) + (nearDb ?? 0)) / 2;
  return radiatedDb + ((nearBands.includes(band) ? nearDb : farDb) ?? 0);
}

export interface Judged {
  readonly score: Score;
  readonly bands: Candidate['bands'];
  readonly missing: readonly Band[];
  readonly tuned: readonly Band[];
  readonly beyond: readonly Band[];
}

const bandsOfWarning = (plan: Plan, ids: readonly string[]): readonly Band[] =>
  plan.warnings.filter(({ id }) => ids.includes(id)).flatMap(({ bands }) => bands);

/** `plan` was made with the field of `study`, where there is one. */
export function judge(answers: Answers, plan: Plan, study: ShortStudy | null): Judged {
  const hopeless = plan.chain.some(({ line }) => isOpenWireLine(line)) ? [] : beyondAnyTuner(plan);
  const missing = [...new Set([...bandsOfWarning(plan, ['band-not-served', 'off-centre-null']), ...hopeless])];
  const served = plan.bands.filter(({ band }) => !missing.includes(band));
  const outOfReach = bandsOfWarning(plan, ['tuner-range']);
  const beyond = served.map(({ band }) => band).filter((band) => outOfReach.includes(band));
  const tuned = served
    .filter(({ band, tunerNeeded }) => tunerNeeded === true && !beyond.includes(band))
    .map(({ band }) => band);
  const bands = plan.bands.map((row) => bandScore(row, !missing.includes(row.band), plan, study));
  const told = bands.filter((band) => band.served);
  const supportM = supportOf(plan, answers);
  const parts = {
    usefulDb: mean(told.flatMap((band) => band.usefulDb ?? [])),
    radiatedShare:
      study === null
        ? leftByLine(served)
        : least(
            told.flatMap(({ radiatedW }) => radiatedW ?? []),
            0.01,
          ),
    entryCurrentMa: most(told.flatMap(({ entryCurrentMa }) => entryCurrentMa ?? [])),
    partsToBuy: thingsToBuy(plan).length,
    bandsServed: served.length,
    bandsWithoutTuner: served.length - tuned.length - beyond.length,
    bandsBeyondTuner: beyond.length,
    bandsByHand: plan.system === 'linked-dipole' ? Math.max(served.length - 1, 0) : 0,
  };
  return {
    score: {
      stops: plan.warnings.filter(({ severity }) => severity === 'stop').length,
      supportM,
      tooHigh: supportM > (answers.supportHeightM ?? USUAL_SUPPORT_M) + SLACK_M,
      ...parts,
      points: pointsOf(parts),
    },
    bands,
    missing,
    tuned,
    beyond,
  };
}

/** On coax; at the far end of an open-wire line a tuner reaches much further. */
const beyondAnyTuner = ({ bands }: Plan): readonly Band[] =>
  bands.flatMap(({ band, swrAtRadio }) => (swrAtRadio !== null && swrAtRadio > REACH.wide ? [band] : []));

function bandScore(
  row: Plan['bands'][number],
  served: boolean,
  { fieldStudy }: Plan,
  study: ShortStudy | null,
): BandScore {
  const radiatedW = fieldStudy?.bands.find(({ band }) => band === row.band)?.radiatedW ?? null;
  const zone = study?.zones[row.band];
  return {
    band: row.band,
    served,
    swrAtRadio: row.swrAtRadio,
    radiatedW,
    usefulDb: radiatedW === null || zone === undefined ? null : usefulDb(row.band, radiatedW, zone),
    entryCurrentMa: row.entryCurrentMa,
  };
}

function leftByLine(rows: Plan['bands']): number | null {
  const known = rows.filter(({ lineLossDb }) => lineLossDb !== null);
  const shares = known.map(({ lineLossDb, deviceLossDb }) => 10 ** (-((lineLossDb ?? 0) + (deviceLossDb ?? 0)) / 10));
  return least(shares, 1);
}

const least = (values: readonly number[], scale: number): number | null =>
  values.length === 0 ? null : scale * Math.min(...values);
const most = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.max(...values));
const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

const SLACK_M = 0.5;

/** Height of the highest point that its wires reach, m. */
function supportOf({ riseM }: Plan, answers: Answers): number {
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return 0;
  const { heightM, loopPlane } = facts.settled;
  const radiator = hangsAs(facts.settled);
  const rise = riseM ?? 0;
  if (radiator === 'sloper') return heightM + rise / 2; // fed in its middle
  const standsUp =
    radiator === 'vertical' || radiator === 'inverted-l' || (radiator === 'loop' && loopPlane === 'upright');
  return heightM + (standsUp ? rise : 0);
}
