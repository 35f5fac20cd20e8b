/** How to make a device, with its winding drawn: as many strands as turns to wind. */
import type { ComponentChildren } from 'preact';
import { Winding } from '../../../drawing/winding';
import type { ChainItem } from '../../../plan/plan-schema';
import { drawings } from '../../../words/en/drawings';
import { planScreen } from '../../../words/en/plan-screen';
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
        {item.device === 'choke' ? <ChokeWindings build={build} /> : <TransformerWinding item={item} build={build} />}
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

/** A choke of two windings in a row has a ring, and a drawing, for each. */
function ChokeWindings({ build }: { readonly build: Build }) {
  const say = useSay();
  const turns = [build.turns, build.secondaryTurns].flatMap((each) => (each === null ? [] : [each]));
  return (
    <>
      {turns.map((each, index) => (
        <Winding
          key={index === 0 ? 'first' : 'second'}
          turns={each}
          conductor="coax"
          label={say(drawings.choke, { turns: each, cores: turns.length > 1 ? 1 : (build.count ?? 1) })}
        />
      ))}
    </>
  );
}

function TransformerWinding({ item, build }: { readonly item: ChainItem; readonly build: Build }) {
  const say = useSay();
  const { turns, secondaryTurns } = build;
  if (turns === null || secondaryTurns === null) return null;
  const most = Math.max(turns, secondaryTurns);
  const least = Math.min(turns, secondaryTurns);
  if (item.ports?.in !== 'balanced') {
    return (
      <Winding turns={most} conductor="wire" tapAt={least} label={say(drawings.tapped, { turns: most, tap: least })} />
    );
  }
  if (item.ratio === 4) {
    return (
      <Winding turns={least} conductor="wire" pairedTurns={least} label={say(drawings.paired, { turns: least })} />
    );
  }
  const label = say(drawings.twoWindings, { turns: most, second: least });
  return <Winding turns={most} conductor="wire" pairedTurns={least} label={label} />;
}
