/** How to make a device, with its winding drawn: as many strands as turns to wind. */
import type { ComponentChildren } from 'preact';
import { Winding } from '../../../drawing/winding';
import type { ChainItem } from '../../../plan/plan-schema';
import { planScreen } from '../../../words/en/plan-screen';
import { windingPictures } from '../../jobs/winding-picture';
import { useSay } from '../../say';
import { WorkingView } from './working-view';

type Build = NonNullable<ChainItem['build']>;

interface BuildViewProps {
  readonly item: ChainItem;
  readonly build: Build;
  /** What stands below, in the same foldout. */
  readonly children?: ComponentChildren;
}

export function BuildView({ item, build, children }: BuildViewProps) {
  const say = useSay();
  return (
    <details>
      <summary aria-label={`${say(planScreen.howToMake)}: ${item.name}`}>{say(planScreen.howToMake)}</summary>
      <div class="coil">
        {windingPictures(item, say).map(({ turns, tapAt, names, nodes, label }, index) => (
          <Winding
            key={index === 0 ? 'first' : 'second'}
            wires={turns.map((each) => ({ turns: each, done: each }))}
            isChoke={item.device === 'choke'}
            names={names}
            nodes={nodes}
            label={label}
            {...(tapAt === null ? {} : { tapAt })}
          />
        ))}
        <p>{build.text}</p>
        <WorkingView working={build.conductorLengthMWorking} what={item.name} />
        <p class="small">{say(planScreen.inBox, { box: build.box })}</p>
        <p class="small">
          <b>{say(planScreen.orBuy)}.</b> {item.buy}
        </p>
        {children}
      </div>
    </details>
  );
}
