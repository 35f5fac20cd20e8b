/** What stands at the radio end of the line, and what it is tied to. */
import type { JSX } from 'preact';
import { Box, Ground, Here, Ring, Sketch } from './sketch';

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

export const StationSketch = ({ station }: { station: string }) => (
  <Sketch>
    <Ground />
    {station === 'home' ? (
      <path class="s" d="M60 64V36L84 18L108 36V64M76 64V48H92V64" />
    ) : (
      <path class="s" d="M62 64V46H104V64M62 46L83 22L104 46" />
    )}
    <path class="c" d={station === 'home' ? 'M8 56H66' : 'M8 62H70'} />
    <Box x={station === 'home' ? 68 : 74} y={station === 'home' ? 56 : 58} />
  </Sketch>
);

const earths: Readonly<Record<string, JSX.Element>> = {
  open: <path class="s" d="M58 44h20v12H58zM62 44v-4h4v4M70 44v-4h4v4" />,
  mains: <path class="s" d="M68 40V50M60 50h16v10H60zM64 60v4M72 60v4" />,
  earth: <path class="s" d="M68 40V62M56 62h24M60 66h16M64 70h8" />,
  both: <path class="s" d="M54 40V48M48 48h12v9H48zM51 57v4M57 57v4M84 40V60M74 60h20M78 64h12M81 68h6" />,
};

export const HouseEarthSketch = ({ houseEarth }: { houseEarth: string }) => (
  <Sketch>
    <path class="c" d="M4 26H48" />
    <rect class="s" x="48" y="12" width="40" height="28" />
    <circle class="s" cx="78" cy="26" r="6" />
    {earths[houseEarth]}
  </Sketch>
);

export const RouteSketch = ({ along }: { along: boolean }) => (
  <Sketch>
    <path class="w" d="M8 14H112" />
    <Ring x={8} y={14} />
    <Ring x={112} y={14} />
    <path class="c" d={along ? 'M60 14V28H112' : 'M60 14V68'} />
    <Box x={60} y={14} w={9} h={9} />
    {along && <Here x={92} y={26} />}
  </Sketch>
);
