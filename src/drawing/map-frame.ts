/** A stretch of ground seen from above, in the middle of its drawing, to scale. */
import type { Vector } from '../geometry/layout';
import { type Scale, scaleFor } from './scale';

export interface MapFrame extends Scale {
  at(point: Vector): readonly [number, number];
  readonly height: number;
}

/** `reach` gives the least and the most of x and of y that must be seen, m; the rest are pixels, the margin on every side. */
export function mapFrame(
  reach: (axis: 0 | 1) => readonly [number, number],
  width: number,
  mostHeight: number,
  margin: number,
): MapFrame {
  const [left, right] = reach(0);
  const [low, high] = reach(1);
  const scale = scaleFor(right - left, high - low, width - 2 * margin, mostHeight);
  const spare = width - 2 * margin - (right - left) * scale.pixelsPerM;
  return {
    ...scale,
    at: ([x, y]) => [margin + spare / 2 + (x - left) * scale.pixelsPerM, margin + (high - y) * scale.pixelsPerM],
    height: 2 * margin + (high - low) * scale.pixelsPerM,
  };
}
