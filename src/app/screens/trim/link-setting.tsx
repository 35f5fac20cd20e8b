/** How the links stand for a band, and which band is trimmed before it. Nothing on a wire without links. */
import type { SavedPlan } from '../../../design/saved-plan';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { to } from '../../routes';
import { useSay } from '../../say';
import { untrimmedInside } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface LinkSettingProps {
  readonly saved: SavedPlan;
  readonly target: TrimTarget;
  readonly targets: readonly TrimTarget[];
}

export function LinkSetting({ saved, target, targets }: LinkSettingProps) {
  const say = useSay();
  const { band, inner, atLink } = target;
  if (!atLink && inner.length === 0) return null;
  const nextInside = targets.find(({ wire }) => wire === inner.at(-1));
  const before = untrimmedInside(saved, target, targets);
  const closedTo = nextInside === undefined ? '' : bandName(nextInside.band);
  return (
    <>
      <p>{say(trimScreen.linkSetting, { band: bandName(band), closedTo, atLink })}</p>
      {before !== null && (
        <a class="btn" href={to.job(saved.id, 'trim', before.band)}>
          {say(trimScreen.trimBefore, { before: bandName(before.band), band: bandName(band) })}
        </a>
      )}
    </>
  );
}
