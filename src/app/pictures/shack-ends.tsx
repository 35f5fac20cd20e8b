/** What stands at the radio end of the line. */
import type { JSX } from 'preact';
import { Ring, Sketch } from './sketch';

const Radio = ({ x, children }: { x: number; children?: JSX.Element }) => (
  <>
    <rect class="s" x={x} y="26" width="40" height="28" />
    <circle class="s" cx={x + 30} cy="40" r="6" />
    {children ?? <path class="s" d={`M${x + 6} 34h12v8h-12z`} />}
  </>
);
const Tuner = ({ x }: { x: number }) => (
  <>
    <rect class="s" x={x} y="26" width="26" height="28" />
    <path class="s" d={`M${x + 5} 40c0 -8 5 -8 5 0c0 -8 5 -8 5 0c0 -8 5 -8 5 0`} />
  </>
);

export function ShackEndSketch({ shackEnd }: { shackEnd: string }) {
  switch (shackEnd) {
    case 'radio-tuner':
      return (
        <Sketch>
          <path class="c" d="M4 40H66" />
          <Radio x={66}>
            <path class="s" d="M71 40c0 -7 4 -7 4 0c0 -7 4 -7 4 0c0 -7 4 -7 4 0" />
          </Radio>
        </Sketch>
      );
    case 'wide-tuner':
      return (
        <Sketch>
          <path class="c" d="M4 40H30M56 40H72" />
          <Tuner x={30} />
          <Radio x={72} />
        </Sketch>
      );
    case 'wide-tuner-4to1':
      return (
        <Sketch>
          <path class="p" d="M4 34H30M4 46H30M10 34v12M18 34v12M26 34v12" />
          <Ring x={30} y={34} />
          <Ring x={30} y={46} />
          <path class="c" d="M56 40H72" />
          <Tuner x={30} />
          <Radio x={72} />
        </Sketch>
      );
    case 'balanced-tuner':
      return (
        <Sketch>
          <path class="p" d="M4 30H30M4 50H30M10 30v20M18 30v20M26 30v20" />
          <path class="c" d="M56 40H72" />
          <rect class="s" x="30" y="22" width="26" height="36" />
          <path
            class="s"
            d="M35 33c0 -7 4 -7 4 0c0 -7 4 -7 4 0c0 -7 4 -7 4 0M35 51c0 -7 4 -7 4 0c0 -7 4 -7 4 0c0 -7 4 -7 4 0"
          />
          <Radio x={72} />
        </Sketch>
      );
    case 'feed-point-tuner':
      return (
        <Sketch>
          <path class="w" d="M17 24L40 4" />
          <path class="c" d="M30 40H72" />
          <Tuner x={4} />
          <path class="s" d="M54 12V64" />
          <Radio x={72} />
        </Sketch>
      );
    default:
      return (
        <Sketch>
          <path class="c" d="M4 40H66" />
          <Radio x={66} />
        </Sketch>
      );
  }
}
