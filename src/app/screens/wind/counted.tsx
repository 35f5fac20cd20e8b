/** How far a winding is: the number, what to do at this turn, and the ring as it looks now. */
import { Winding as WindingDrawing } from '../../../drawing/winding';
import { wireNames } from '../../../words/en/devices';
import { windScreen } from '../../../words/en/wind-screen';
import { isOnRingOfItsOwn, momentOf, type WindingCount, type WoundDevice } from '../../jobs/windings';
import { useSay } from '../../say';

export interface CountProps {
  readonly wound: WoundDevice;
  readonly count: WindingCount;
}

export function Count({
  wound: { item, windings },
  count,
  isWaiting = false,
}: CountProps & { readonly isWaiting?: boolean }) {
  const say = useSay();
  const { done } = count;
  const turns = windings[count.winding]?.turns ?? 0;
  const moment = momentOf(windings, count);
  return (
    <>
      <p class="call">
        <span class="num">{done}</span>
        <span class="unit">{say(windScreen.ofTurns, { turns })}</span>
      </p>
      <p class={moment === 'winding' ? 'now' : 'now marked'}>
        {isWaiting
          ? say(windScreen.unsettledWhy)
          : say(shown[moment], {
              done,
              left: turns - done,
              onRing: isOnRingOfItsOwn(item.device, windings),
              isOne: windings.length === 1,
            })}
      </p>
    </>
  );
}

const shown = {
  start: windScreen.start,
  tap: windScreen.tap,
  cross: windScreen.cross,
  'winding-done': windScreen.windingDone,
  'all-done': windScreen.allDone,
  winding: windScreen.going,
} as const;

export function TurnsDrawing({ wound: { item, windings }, count }: CountProps) {
  const say = useSay();
  const winding = windings[count.winding];
  if (winding === undefined) return null;
  const { turns, tapAt, strands } = winding;
  return (
    <WindingDrawing
      wires={Array.from({ length: strands }, () => ({ turns, done: count.done }))}
      isChoke={item.device === 'choke'}
      label={say(windScreen.picture, { done: count.done, turns })}
      {...(tapAt === null ? {} : { tapAt })}
      {...(strands > 1 && item.device !== 'choke' ? { names: wireNames.slice(0, strands) } : {})}
    />
  );
}
