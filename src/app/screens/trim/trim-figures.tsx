/** The tape from the last dip to the aim, and when to stop. */
import type { Measurement } from '../../../design/saved-plan';
import { Tape, type TapeMark } from '../../../drawing/tape';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { Underway } from '../../jobs/underway';
import { clock, moment, useSay } from '../../say';
import { mhzText } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface TapeViewProps {
  readonly target: TrimTarget;
  readonly list: readonly Measurement[];
  /** The last was measured with the wire as it is now. */
  readonly isFresh: boolean;
  readonly isUnderway: boolean;
}

/** Below this, MHz, nothing has moved. */
const SAME_MHZ = 0.0005;

export function TapeView({ target, list, isFresh, isUnderway }: TapeViewProps) {
  const say = useSay();
  const last = list.at(-1);
  const before = list.at(-2);
  if (last === undefined) return null;
  const { lowMHz, highMHz } = target.edgesMHz;
  const was: TapeMark[] =
    before === undefined || Math.abs(before.dipMHz - last.dipMHz) < SAME_MHZ
      ? []
      : [{ atMHz: before.dipMHz, kind: 'was', words: [clock(before.at), mhzText(before.dipMHz)] }];
  const head =
    before === undefined
      ? say(trimScreen.tapeFirst)
      : was.length === 0
        ? say(trimScreen.tapeSame, { time: moment(before.at) })
        : say(trimScreen.tapeHead, {
            way: last.dipMHz > before.dipMHz ? 'up' : 'down',
            mhz: mhzText(Math.abs(last.dipMHz - before.dipMHz)),
            time: moment(before.at),
          });
  const name = bandName(target.band);
  return (
    <section aria-labelledby="tape">
      <div class="head">
        <h2 id="tape">{head}</h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <Tape
        band={{ lowMHz, highMHz, name }}
        marks={[
          ...was,
          {
            atMHz: last.dipMHz,
            kind: 'now',
            words: [say(isFresh ? trimScreen.now : trimScreen.lastRead), mhzText(last.dipMHz)],
          },
          { atMHz: target.aimMHz, kind: 'aim', words: [say(trimScreen.aim), mhzText(target.aimMHz)] },
        ]}
        label={say(trimScreen.tape, {
          was: before === undefined ? '' : mhzText(before.dipMHz),
          now: mhzText(last.dipMHz),
          aim: mhzText(target.aimMHz),
          band: name,
          low: mhzText(lowMHz),
          high: mhzText(highMHz),
        })}
      />
    </section>
  );
}

/** An aim nearer to where one works is told by itself. */
const TOLD_BEYOND = 0.01;

interface StopRuleProps {
  readonly target: TrimTarget;
  readonly targets: readonly TrimTarget[];
  /** The aim may still move. */
  readonly isUnderway: boolean;
}

export function StopRule({ target, targets, isUnderway }: StopRuleProps) {
  const say = useSay();
  const { aimMHz, workMHz, wire } = target;
  const band = bandName(target.band);
  const isAlone = targets.filter((each) => each.wire === wire).length === 1;
  return (
    <section class="rule-out" aria-labelledby="when">
      <div class="head">
        <h2 id="when">{say(trimScreen.when)}</h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <p>{say(trimScreen.whenDip, { band, isAlone, low: mhzText(aimMHz * 0.99), high: mhzText(aimMHz * 1.01) })}</p>
      {Math.abs(workMHz / aimMHz - 1) > TOLD_BEYOND && (
        <p>{say(trimScreen.aimWhy, { band, aim: mhzText(aimMHz), work: mhzText(workMHz) })}</p>
      )}
    </section>
  );
}
