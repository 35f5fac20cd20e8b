/** Wires and lines as their cut ends, to one scale within a list; the ground; what the wire pushes against; loops; plain yes and no. */
import type { LineId } from '../../catalog/line-ids';
import { lines } from '../../catalog/lines';
import type { WireId } from '../../catalog/wire-ids';
import { wires } from '../../catalog/wires';
import { Box, Ground, Ring, Sketch } from './sketch';

/** Pixels to a millimetre of cable; the thickest, 15 mm, fills the sketch. */
const CABLE_SCALE = 4;

/** What holds two wires apart: a web with windows, a whole web, single spacers. */
const between: Readonly<Record<string, string>> = {
  'window-line': 'M8 31H26V41H8M38 31H62V41H38ZM74 31H98V41H74ZM112 31H110V41H112',
  'twin-lead': 'M8 32H112M8 36H112M8 40H112',
  'open-wire': 'M20 26v20M44 26v20M68 26v20M92 26v20',
};

export function LineSketch({ line }: { line: string }) {
  if (!(line in lines)) return <NoneSketch />;
  const entry = lines[line as LineId];
  if (entry.kind === 'open') {
    return (
      <Sketch>
        <path class="p" d={`M8 26H112M8 46H112${between[line] ?? ''}`} />
      </Sketch>
    );
  }
  const radius = (entry.outerDiameterM.value * 1000 * CABLE_SCALE) / 2;
  return (
    <Sketch>
      <circle class="s" cx="60" cy="36" r={radius} />
      <circle class="m" cx="60" cy="36" r={radius * 0.72} stroke-dasharray="3 3" />
      <circle class="f" cx="60" cy="36" r={Math.max(radius * 0.2, 2)} />
    </Sketch>
  );
}

const WIRE_SCALE = 14;

export function WireSketch({ wire }: { wire: string }) {
  const entry = wires[wire as WireId];
  const radius = (entry.diameterM.value * 1000 * WIRE_SCALE) / 2;
  const coatM = entry.insulation?.thicknessM.value ?? 0;
  return (
    <Sketch>
      {coatM > 0 && <circle class="s" cx="60" cy="36" r={radius + coatM * 1000 * WIRE_SCALE} />}
      <circle class="f" cx="60" cy="36" r={radius} />
    </Sketch>
  );
}

const grounds: Readonly<Record<string, string>> = {
  sea: 'M4 40q7 -8 14 0t14 0t14 0t14 0t14 0t14 0t14 0M4 56q7 -8 14 0t14 0t14 0t14 0t14 0t14 0t14 0',
  'fresh-water': 'M4 48q7 -6 14 0t14 0t14 0t14 0t14 0t14 0t14 0',
  'very-good':
    'M16 40v-18M16 30l-8 -8M16 30l8 -8M44 40v-22M44 28l-8 -8M44 28l8 -8M72 40v-18M72 30l-8 -8M72 30l8 -8M100 40v-22M100 28l-8 -8M100 28l8 -8',
  good: 'M16 40v-12M12 32l4 4l4 -4M44 40v-12M40 32l4 4l4 -4M72 40v-12M68 32l4 4l4 -4M100 40v-12M96 32l4 4l4 -4',
  average: 'M16 40v-8M22 40v-6M56 40v-8M62 40v-6M96 40v-8M102 40v-6',
  poor: 'M10 40l10 -14l10 14M50 40l14 -20l14 20M84 40l10 -12l10 12',
  'very-poor': 'M10 40V18H34V40M46 40V26H66V40M80 40V12H104V40',
  'dry-sand': 'M4 40q28 -18 56 0q28 -18 56 0',
};

export const GroundSketch = ({ ground }: { ground: string }) => (
  <Sketch>
    {ground !== 'sea' && ground !== 'fresh-water' && <path class="g" d="M4 40H116" />}
    <path class="s" d={grounds[ground] ?? ''} />
    {ground === 'dry-sand' && <path class="f" d="M20 52h3v3h-3zM48 58h3v3h-3zM76 52h3v3h-3zM98 60h3v3h-3z" />}
  </Sketch>
);

const returns: Readonly<Record<string, string>> = {
  'counterpoise-wire': 'M60 52H20',
  'coax-shield': '',
  'ground-radials': 'M60 62L24 70M60 62L96 70M60 62L48 71M60 62L74 71',
  'elevated-radials': 'M60 44L14 50M60 44L106 50M60 44L40 56M60 44L80 56',
  'ground-rod': '',
  none: '',
};

export function ReturnPathSketch({ returnPath }: { returnPath: string }) {
  const y = returnPath === 'elevated-radials' ? 44 : 58;
  return (
    <Sketch>
      <Ground />
      <path class="w" d={`M60 ${y}V8`} />
      <path class="p" d={returns[returnPath] ?? ''} />
      {returnPath === 'coax-shield' && <path class="c" d="M60 58H112" />}
      {returnPath === 'ground-rod' && <path class="s" d="M60 58V71M56 66h8" />}
      {returnPath === 'counterpoise-wire' && <Ring x={20} y={52} />}
      <Box x={60} y={y} w={8} h={8} />
    </Sketch>
  );
}

export const LoopShapeSketch = ({ shape }: { shape: string }) => (
  <Sketch>
    <path class="w" d={shape === 'triangle' ? 'M60 8L100 62H20Z' : 'M34 10H86V62H34Z'} />
  </Sketch>
);

export const LoopPlaneSketch = ({ plane }: { plane: string }) => (
  <Sketch>
    <Ground />
    <path class="w" d={plane === 'flat' ? 'M36 28H84L104 44H16Z' : 'M38 8H82V52H38Z'} />
    <path class="s" d={plane === 'flat' ? 'M36 28V50M84 28V50M104 44V64M16 44V64' : 'M24 64V6M96 64V6'} />
  </Sketch>
);

const lengths: Readonly<Record<string, string>> = {
  resonant: 'M10 44q50 -44 100 0',
  'non-resonant': 'M10 44q36 -44 72 0q14 16 24 12',
  fixed: 'M10 44H110',
};

export const LengthChoiceSketch = ({ choice }: { choice: string }) => (
  <Sketch>
    <path class="w" d="M10 56H110" />
    <Ring x={10} y={56} />
    <Ring x={110} y={56} />
    {choice === 'fixed' ? (
      <path class="m" d="M10 30H110M10 24v12M35 27v6M60 24v12M85 27v6M110 24v12" />
    ) : (
      <path class="m" d={lengths[choice] ?? ''} />
    )}
  </Sketch>
);

/** How a signal looks that is sent this way. */
const modes: Readonly<Record<string, string>> = {
  voice:
    'M8 36v0M16 30v12M24 22v28M32 32v8M40 14v44M48 26v20M56 34v4M64 20v32M72 30v12M80 24v24M88 34v4M96 18v36M104 30v12M112 36v0',
  cw: 'M10 36H42M54 36H64M76 36H86M98 36H110',
  data: 'M8 24v24H24V24H32v24H56V24H72v24H80V24H96v24H112',
  fm: 'M8 36q4 -20 8 0t8 0t8 0q2 -20 4 0t4 0t4 0t4 0q5 -20 10 0t10 0t10 0q2 -20 4 0t4 0t4 0',
  am: 'M8 30q26 -30 52 0t52 0M8 42q26 30 52 0t52 0M20 26v20M40 20v32M60 32v8M80 42v-12M100 46v-20',
};

export const ModeSketch = ({ mode }: { mode: string }) => (
  <Sketch>
    <path class={mode === 'cw' ? 'c' : 's'} d={modes[mode] ?? ''} />
  </Sketch>
);

export const YesNoSketch = ({ yes }: { yes: boolean }) => (
  <Sketch>
    <path class="c" d={yes ? 'M36 38L54 56L88 14' : 'M38 14L82 58M82 14L38 58'} />
  </Sketch>
);

/** A globe in three slices, one of them filled. */
export const RegionSketch = ({ region }: { region: string }) => {
  const slices = ['2', '1', '3'];
  return (
    <Sketch>
      {slices.map((slice, index) => (
        <path
          key={slice}
          class={slice === region ? 'f' : 's'}
          d={
            [
              'M52 6A30 30 0 0 0 52 66Q40 36 52 6Z',
              'M52 6Q40 36 52 66H68Q80 36 68 6Z',
              'M68 6A30 30 0 0 1 68 66Q80 36 68 6Z',
            ][index]
          }
        />
      ))}
    </Sketch>
  );
};

const NoneSketch = () => (
  <Sketch>
    <path class="w" d="M10 36H46M74 36H110" />
    <Ring x={46} y={36} />
    <Ring x={74} y={36} />
  </Sketch>
);
