/** Pictures and tables of trimming: the tape from the last dip to the aim, what a step does to every band, when to stop. */
import type { Measurement, SavedPlan } from '../../../design/saved-plan';
import { Tape, type TapeMark } from '../../../drawing/tape';
import { dipForLength, trimStep } from '../../../physics/trim';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { clock, useSay } from '../../say';
import { dipNow, mhzText, wireInUseM } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface TapeViewProps {
  readonly target: TrimTarget;
  readonly list: readonly Measurement[];
}

/** Below this, MHz, nothing has moved. */
const SAME_MHZ = 0.0005;

export function TapeView({ target, list }: TapeViewProps) {
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
        ? say(trimScreen.tapeSame, { time: clock(before.at) })
        : say(trimScreen.tapeHead, {
            way: last.dipMHz > before.dipMHz ? 'up' : 'down',
            mhz: mhzText(Math.abs(last.dipMHz - before.dipMHz)),
            time: clock(before.at),
          });
  const name = bandName(target.band);
  return (
    <section aria-labelledby="tape">
      <h2 id="tape">{head}</h2>
      <Tape
        band={{ lowMHz, highMHz, name }}
        marks={[
          ...was,
          { atMHz: last.dipMHz, kind: 'now', words: [say(trimScreen.now), mhzText(last.dipMHz)] },
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

interface TradeProps {
  readonly saved: SavedPlan;
  readonly targets: readonly TrimTarget[];
  readonly target: TrimTarget;
}

/** Bands on one wire move together: each gains or loses by the same step. */
export function Trade({ saved, targets, target }: TradeProps) {
  const say = useSay();
  const together = targets.filter(({ wire }) => wire === target.wire);
  const here = dipNow(saved, target, targets);
  if (together.length < 2 || here === null) return null;
  const wireM = wireInUseM(saved, target, targets);
  const step = trimStep(wireM, here.megahertz, target.aimMHz);
  return (
    <section aria-labelledby="trade">
      <h2 id="trade">{say(trimScreen.trade)}</h2>
      <table class="trade">
        <thead>
          <tr>
            <th scope="col">{say(trimScreen.band)}</th>
            <th scope="col">{say(trimScreen.dipNow)}</th>
            <th scope="col">{say(trimScreen.after)}</th>
            <th scope="col">{say(trimScreen.aimHead)}</th>
          </tr>
        </thead>
        <tbody>
          {together.map((each) => {
            const now = dipNow(saved, each, targets);
            if (now === null) return null;
            const text = mhzText(now.megahertz);
            return (
              <tr key={each.band}>
                <th scope="row">{bandName(each.band)}</th>
                <td>{now.measured ? text : say(trimScreen.about, { mhz: text })}</td>
                <td>{mhzText(dipForLength(now.megahertz, wireM, step.newWireM))}</td>
                <td>{mhzText(each.aimMHz)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p>{say(trimScreen.tradeNote)}</p>
    </section>
  );
}

/** A planned dip nearer to its aim is told by the aim alone. */
const TOLD_BEYOND = 0.01;

export function StopRule({ target }: { readonly target: TrimTarget }) {
  const say = useSay();
  const { aimMHz, plannedMHz } = target;
  const isOff = Math.abs(plannedMHz / aimMHz - 1) > TOLD_BEYOND;
  return (
    <section class="rule-out" aria-labelledby="when">
      <h2 id="when">{say(trimScreen.when)}</h2>
      <p>
        {say(trimScreen.whenDip, {
          band: bandName(target.band),
          low: mhzText(target.aimMHz * 0.99),
          high: mhzText(target.aimMHz * 1.01),
        })}
      </p>
      {isOff && (
        <p>
          {say(trimScreen.plannedDip, {
            band: bandName(target.band),
            planned: mhzText(plannedMHz),
            aim: mhzText(aimMHz),
          })}
        </p>
      )}
    </section>
  );
}
