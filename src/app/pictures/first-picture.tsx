/** The small drawing of each choice of the first four questions. */
import type { JSX } from 'preact';
import type { DraftAnswers } from '../../design/answers';
import { later } from '../later';
import { AntennaSketch } from './radiators';
import { Sketch } from './sketch';

const ShackEndSketch = later(async () => (await import('./shack-ends')).ShackEndSketch);

export interface PictureProps {
  readonly question: string;
  readonly option: string;
  readonly draft: DraftAnswers;
}

export function FirstPicture({ question, option, draft }: PictureProps): JSX.Element | null {
  switch (question) {
    case 'bands':
      return <BandSketch metres={Number.parseFloat(option)} />;
    case 'radiator':
      return <AntennaSketch radiator={option} />;
    case 'fedAt':
      return <AntennaSketch {...draft} fedAt={option} isMarked />;
    case 'shackEnd':
      return <ShackEndSketch shackEnd={option} />;
    default:
      return null;
  }
}

/** The wave of a band along the same 40 m: long waves bend once, short ones often. */
function BandSketch({ metres }: { metres: number }) {
  const halfWavePx = (104 * (metres / 2)) / 40;
  const points = Array.from(
    { length: 105 },
    (_, x) => `${8 + x} ${(36 - 22 * Math.sin((Math.PI * x) / halfWavePx)).toFixed(1)}`,
  );
  return (
    <Sketch>
      <path class="m" d="M8 36H112" />
      <path class="s" d={`M${points.join('L')}`} />
    </Sketch>
  );
}
