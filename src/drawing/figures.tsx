/** The drawing language in small: what a pole, a tree, a person, the ground and a marker look like. Pixels of the drawing, y down. */
import type { ComponentChildren } from 'preact';

/** To a tenth of a pixel, so that kept drawings compare. */
export const px = (value: number): number => Math.round(value * 10) / 10;
export const at = (x: number, y: number): string => `${px(x)} ${px(y)}`;
export const path = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x, y)}`).join('');
/** A measure that stands upright, closed at both ends. */
export const bracket = (x: number, low: number, high: number): string =>
  `M${at(x - 5, high)}h10M${at(x, high)}V${px(low)}M${at(x - 5, low)}h10`;

interface DrawingProps {
  readonly width: number;
  readonly height: number;
  /** Says the same as the drawing in one or two sentences. */
  readonly label: string;
  /** `reading`: runs along the line of reading, and is mirrored where that runs from right to left. */
  readonly kind?: 'site' | 'reading';
  readonly children: ComponentChildren;
}

export const Drawing = ({ width, height, label, kind, children }: DrawingProps) => (
  <svg
    class={kind === undefined ? 'd' : `d ${kind}`}
    viewBox={`0 0 ${px(width)} ${px(height)}`}
    role="img"
    aria-label={label}
  >
    {children}
  </svg>
);

/** Squared paper: lines through (x0, y0) every `step` pixels. */
export function Grid({ x0, y0, step, width, height }: Record<'x0' | 'y0' | 'step' | 'width' | 'height', number>) {
  const across: string[] = [];
  for (let x = x0 % step; x <= width; x += step) across.push(`M${at(x, 0)}V${px(height)}`);
  for (let y = y0 % step; y <= height; y += step) across.push(`M${at(0, y)}H${px(width)}`);
  return <path class="q" d={across.join('')} />;
}

/** The ground line with its short slanted ticks. */
export function Ground({ y, width }: { readonly y: number; readonly width: number }) {
  const ticks: string[] = [];
  for (let x = 5; x < width; x += 12) ticks.push(`M${at(x, y + 1)}l-5 6`);
  return (
    <>
      <path class="g" d={`M0 ${px(y)}H${px(width)}`} />
      <path class="m" d={ticks.join('')} />
    </>
  );
}

/** A person of `height` pixels standing at (x, y). */
export function Person({ x, y, height }: { readonly x: number; readonly y: number; readonly height: number }) {
  const head = height / 8;
  const [shoulder, hip] = [y - height * 0.78, y - height * 0.45];
  return (
    <g>
      <circle class="f" cx={px(x)} cy={px(y - height + head)} r={px(Math.max(head, 1.5))} />
      <path
        class="s"
        d={`M${at(x, shoulder)}V${px(hip)}M${at(x - height * 0.15, y)}L${at(x, hip)}L${at(x + height * 0.15, y)}M${at(
          x - height * 0.16,
          hip,
        )}L${at(x, shoulder)}L${at(x + height * 0.16, hip)}`}
      />
    </g>
  );
}

/** A pole from its foot to its top. */
export const Pole = ({ x, foot, top }: { readonly x: number; readonly foot: number; readonly top: number }) => (
  <path class="s" d={`M${at(x - 2, foot)}L${at(x - 1.2, top)}H${px(x + 1.2)}L${at(x + 2, foot)}`} />
);

/** A number in a ring: the drawing's legend says what it is. */
export const Marker = ({ x, y, number }: { readonly x: number; readonly y: number; readonly number: number }) => (
  <>
    <circle class="o" cx={px(x)} cy={px(y)} r={11} />
    <text class="k" x={px(x)} y={px(y + 5.5)} text-anchor="middle">
      {number}
    </text>
  </>
);

/** Slanted stripes: this can injure you. */
export const Hatch = ({ id }: { readonly id: string }) => (
  <defs>
    <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="3.5" height="8" fill="currentColor" />
    </pattern>
  </defs>
);

/** Places along a line pushed apart until none is nearer than `least` to the next; order kept, inside 0 to `most`. */
export function spread(places: readonly number[], least: number, from: number, to: number): number[] {
  const order = places.map((place, index) => ({ place, index })).sort((a, b) => a.place - b.place);
  let last = from - least;
  for (const each of order) {
    each.place = Math.max(each.place, last + least);
    last = each.place;
  }
  let next = to + least;
  for (const each of [...order].reverse()) {
    each.place = Math.min(each.place, next - least);
    next = each.place;
  }
  const result = [...places];
  for (const { place, index } of order) result[index] = place;
  return result;
}
