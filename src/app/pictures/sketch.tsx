/** The frame of the small drawings: 120 by 72, drawn in the drawing language of the app (wire thin, coax heavy, rope dashed). */
import type { ComponentChildren } from 'preact';

export const Sketch = ({ children }: { children: ComponentChildren }) => (
  <svg class="d th" viewBox="0 0 120 72" aria-hidden="true">
    {children}
  </svg>
);

export const Ground = () => <path class="g" d="M4 64L116 64" />;
export const Ring = ({ x, y }: { x: number; y: number }) => <circle class="o" cx={x} cy={y} r="3.5" />;
export const Box = ({ x, y, w = 10, h = 10 }: { x: number; y: number; w?: number; h?: number }) => (
  <rect class="f" x={x - w / 2} y={y - h / 2} width={w} height={h} />
);
/** Red pencil pointing down at a place. */
export const Here = ({ x, y }: { x: number; y: number }) => <path class="mk" d={`M${x} ${y - 3}l-6 -12h12z`} />;
