/** Where the station is, what its coax is tied to, and how the coax leaves the wire. */
import type { JSX } from 'preact';
import { Box, Ground, Here, Ring, Sketch } from './sketch';

export const StationSketch = ({ station }: { station: string }) => (
  <Sketch>
    <Ground />
    {station === 'home' ? (
      <path class="s" d="M60 64V36L84 18L108 36V64M76 64V48H92V64" />
    ) : (
      <path class="s" d="M30 64V46M30 46Q64 18 112 40M112 40V64M62 64V54H98V64M58 54H102" />
    )}
    <path class="c" d={station === 'home' ? 'M8 56H66' : 'M8 62H70V50'} />
    <Box x={station === 'home' ? 68 : 74} y={station === 'home' ? 56 : 48} />
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
