/** What to do with the wire after a measurement: fold back, let out, or stop. */
import type { Measurement, SavedPlan } from '../../../design/saved-plan';
import { trimStep } from '../../../physics/trim';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { KeyLength } from '../../jobs/key-length';
import { Underway } from '../../jobs/underway';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { isSameWire, mhzText, ownWireText, verdictOn, wireField } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface ResultProps {
  readonly saved: SavedPlan;
  readonly targets: readonly TrimTarget[];
  readonly target: TrimTarget;
  readonly measurement: Measurement;
  readonly wireM: number;
  /** The aim may still move. */
  readonly isUnderway: boolean;
}

export function Result({ saved, targets, target, measurement, wireM, isUnderway }: ResultProps) {
  const say = useSay();
  const { library } = useStores();
  const verdict = verdictOn(target, measurement);
  const step = trimStep(wireM, measurement.dipMHz, target.aimMHz);
  const mhz = mhzText(target.aimMHz);
  const band = bandName(target.band);
  if (verdict === 'stop') {
    return (
      <section class="verdict-box" aria-live="polite">
        <h2 class="verb">{say(trimScreen.stopHead)}</h2>
        <p>
          {measurement.swr !== undefined && measurement.swr <= 2
            ? say(trimScreen.stopSwr, { swr: measurement.swr })
            : say(trimScreen.stopDip, { mhz, band })}
        </p>
      </section>
    );
  }
  const text = ownWireText(saved, target, targets, step.newWireM);
  if (text === null) {
    return (
      <section class="verdict-box" aria-live="polite">
        <h2 class="verb">{say(trimScreen.tooLong, { band })}</h2>
        <p>{say(trimScreen.beyondPiece, { wholeM: Math.abs(step.wholeM) })}</p>
      </section>
    );
  }
  const done = (): void => library.edit(saved.id, { kind: 'typed', field: wireField(target), text });
  return (
    <section class="verdict-box" aria-live="polite">
      <div class="head">
        <h2 class="verb">{say(step.nowM < 0 ? trimScreen.tooLong : trimScreen.tooShort, { band })}</h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <Amount target={target} nowM={step.nowM} />
      <p>
        {say(isSameWire(step.wholeM, step.nowM) ? trimScreen.whole : trimScreen.half, {
          inAll: target.ends === 2,
          nowM: Math.abs(step.nowM),
          wholeM: Math.abs(step.wholeM),
        })}
      </p>
      <p>{say(step.nowM < 0 ? trimScreen.dontCut : trimScreen.noSpare)}</p>
      {verdict === 'may-stop' && <p class="may">{say(trimScreen.mayStop, { mhz })}</p>}
      <button type="button" class="btn go" onClick={done}>
        {say(trimScreen.done)}
      </button>
    </section>
  );
}

/** The number to act on: at each end, at the one end, or leg by leg where the legs differ. */
function Amount({ target, nowM }: { readonly target: TrimTarget; readonly nowM: number }) {
  const say = useSay();
  const amountM = Math.abs(nowM);
  const shorten = nowM < 0;
  if (target.shortShare !== null) {
    const shortM = amountM * target.shortShare;
    const words = say(shorten ? trimScreen.foldLegs : trimScreen.letOutLegs);
    return (
      <>
        <p class="verb">{words}</p>
        <KeyLength metres={amountM - shortM} what={words} />
        <p class="verb">{say(trimScreen.shortLeg, { metres: shortM })}</p>
      </>
    );
  }
  const place = { ends: target.ends, link: target.atLink ? bandName(target.band) : '' };
  const words = say(shorten ? trimScreen.fold : trimScreen.letOut, place);
  return (
    <>
      <p class="verb">{words}</p>
      <KeyLength metres={amountM / target.ends} what={words} />
    </>
  );
}
