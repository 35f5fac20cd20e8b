/** Bands on one wire move together: what a step does to each, and what each would ask for alone. */
import type { SavedPlan } from '../../../design/saved-plan';
import { dipForLength, lengthForDip, trimStep } from '../../../physics/trim';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { useSay } from '../../say';
import { type DipNow, dipNow, mhzText, wireInUseM } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface TradeProps {
  readonly saved: SavedPlan;
  readonly targets: readonly TrimTarget[];
  readonly target: TrimTarget;
  /** A step is asked for on this screen. */
  readonly isStepAsked: boolean;
}

interface BandNow {
  readonly each: TrimTarget;
  readonly now: DipNow;
}

export function Trade({ saved, targets, target, isStepAsked }: TradeProps) {
  const say = useSay();
  const bands = targets.flatMap((each): BandNow[] => {
    const now = each.wire === target.wire ? dipNow(saved, each, targets) : null;
    return now === null ? [] : [{ each, now }];
  });
  const here = bands.find(({ each }) => each === target);
  if (bands.length < 2 || here === undefined) return null;
  const wireM = wireInUseM(saved, target, targets);
  const afterM = isStepAsked ? trimStep(wireM, here.now.megahertz, target.aimMHz).newWireM : null;
  return (
    <section aria-labelledby="trade">
      <h2 id="trade">{say(trimScreen.trade)}</h2>
      <table class="trade">
        <thead>
          <tr>
            <th scope="col">{say(trimScreen.band)}</th>
            <th scope="col">{say(trimScreen.dipNow)}</th>
            {afterM !== null && <th scope="col">{say(trimScreen.after)}</th>}
            <th scope="col">{say(trimScreen.aimHead)}</th>
          </tr>
        </thead>
        <tbody>
          {bands.map(({ each, now: { megahertz, measured } }) => (
            <tr key={each.band}>
              <th scope="row">{bandName(each.band)}</th>
              <td>{measured ? mhzText(megahertz) : say(trimScreen.about, { mhz: mhzText(megahertz) })}</td>
              {afterM !== null && <td>{mhzText(dipForLength(megahertz, wireM, afterM))}</td>}
              <td>{mhzText(each.aimMHz)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{say(trimScreen.tradeNote)}</p>
      <Favoured bands={bands} wireM={wireM} />
    </section>
  );
}

/** Less than this, m, is no step. */
const NO_STEP_M = 0.02;

/** The whole step that would bring each band's dip to where one works in it, whatever the others do. */
function Favoured({ bands, wireM }: { readonly bands: readonly BandNow[]; readonly wireM: number }) {
  const say = useSay();
  return (
    <>
      <p>{say(trimScreen.favour)}</p>
      <ul class="favoured">
        {bands.map(({ each, now }) => {
          const stepM = lengthForDip(wireM, now.megahertz, each.workMHz) - wireM;
          const words =
            Math.abs(stepM) < NO_STEP_M
              ? trimScreen.favourAsIs
              : stepM < 0
                ? trimScreen.favourFold
                : trimScreen.favourLetOut;
          return (
            <li key={each.band}>
              {say(words, { band: bandName(each.band), mhz: mhzText(each.workMHz), metres: Math.abs(stepM) })}
            </li>
          );
        })}
      </ul>
    </>
  );
}
