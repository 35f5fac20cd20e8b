/** How a device's warmth, power and volts were found, each with its working. */
import type { ChainItem } from '../../../plan/plan-schema';
import { deviceScreen } from '../../../words/en/device-screen';
import { useSay } from '../../say';
import { WorkingView } from './working-view';

type Figures = NonNullable<ChainItem['figures']>;

interface DeviceWorkingsProps {
  readonly name: string;
  readonly figures: Figures;
}

export function DeviceWorkings({ name, figures }: DeviceWorkingsProps) {
  const say = useSay();
  const found = [
    [deviceScreen.riseFound, figures.riseKWorking],
    [deviceScreen.riseWorstFound, figures.riseWorstKWorking],
    [deviceScreen.mostFound, figures.mostWWorking],
    [deviceScreen.peakFound, figures.peakVWorking],
  ] as const;
  const shown = found.flatMap(([what, working]) => (working === null ? [] : [{ what: say(what), working }]));
  if (shown.length === 0) return null;
  return (
    <details>
      <summary aria-label={`${say(deviceScreen.found)}: ${name}`}>{say(deviceScreen.found)}</summary>
      <div class="group">
        {shown.map(({ what, working }) => (
          <div key={what}>
            <b>{what}</b>
            <WorkingView working={working} what={`${what}, ${name}`} />
          </div>
        ))}
      </div>
    </details>
  );
}
