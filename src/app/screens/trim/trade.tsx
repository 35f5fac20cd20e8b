/**
 * Bands on one wire move together, and every lower band with a piece that links make part of its wire: what a step does to each, and on one wire
 * what each would ask for alone.
 */
import type { SavedPlan } from '../../../design/saved-plan';
import { dipForLength, lengthForDip, trimStep } from '../../../physics/trim';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { Underway } from '../../jobs/underway';
import { ColumnTable } from '../../parts/column-table';
import { useSay } from '../../say';
import { type DipNow, dipNow, mhzText, movedWith, wireInUseM } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface TradeProps {
  readonly saved: SavedPlan;
  readonly targets: readonly TrimTarget[];
  readonly target: TrimTarget;
  /** A step is asked for on this screen. */
  readonly isStepAsked: boolean;
  readonly isUnderway: boolean;
}

interface BandNow {
  readonly each: TrimTarget;
  readonly now: DipNow;
  readonly wireM: number;
}

export function Trade({ saved, targets, target, isStepAsked, isUnderway }: TradeProps) {
  const say = useSay();
  const isLinked = targets.some(({ inner }) => inner.length > 0);
  const bands = movedWith(target, targets).flatMap((each): BandNow[] => {
    const now = dipNow(saved, each, targets);
    return now === null ? [] : [{ each, now, wireM: wireInUseM(saved, each, targets) }];
  });
  const here = bands.find(({ each }) => each === target);
  if (bands.length < 2 || here === undefined) return null;
  const { wireM } = here;
  const stepM = isStepAsked ? trimStep(wireM, here.now.megahertz, target.aimMHz).nowM : null;
  return (
    <section aria-labelledby="trade">
      <div class="head">
        <h2 id="trade">{say(trimScreen.trade)}</h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <ColumnTable
        class="trade"
        heads={[
          say(trimScreen.band),
          say(trimScreen.dipNow),
          ...(stepM === null ? [] : [say(trimScreen.after)]),
          say(trimScreen.aimHead),
        ]}
        rows={bands.map(({ each, wireM: ownM, now: { megahertz, measured } }) => ({
          key: each.band,
          name: bandName(each.band),
          cells: [
            measured ? mhzText(megahertz) : say(trimScreen.about, { mhz: mhzText(megahertz) }),
            ...(stepM === null ? [] : [mhzText(dipForLength(megahertz, ownM, ownM + stepM))]),
            mhzText(each.aimMHz),
          ],
        }))}
      />
      <p>{say(isLinked ? trimScreen.tradeLinked : trimScreen.tradeNote)}</p>
      {!isLinked && <Favoured bands={bands} wireM={wireM} />}
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
