/** The line to the radio on a site drawing: coax as one heavy line, open-wire line as two fine ones with spacers. */
import { at, path } from './figures';

type Point = readonly [number, number];

/** Half the distance between the two wires, and the distance between two spacers, px. */
const HALF = 2.5;
const SPACER = 11;

export const FeedLine = ({
  kind,
  points,
}: {
  readonly kind: 'coax' | 'open-wire';
  readonly points: readonly Point[];
}) => (kind === 'coax' ? <path class="c" d={path(points)} /> : <path class="p" d={pairPath(points)} />);

/** Both wires of each stretch, and the spacers across them. */
function pairPath(points: readonly Point[]): string {
  return points
    .slice(1)
    .map((to, index) => stretch(points[index] ?? to, to))
    .join('');
}

function stretch([x0, y0]: Point, [x1, y1]: Point): string {
  const length = Math.hypot(x1 - x0, y1 - y0);
  if (length < 0.5) return '';
  const [ux, uy] = [(x1 - x0) / length, (y1 - y0) / length];
  const [nx, ny] = [-uy * HALF, ux * HALF];
  const wires = [1, -1].map((side) => `M${at(x0 + side * nx, y0 + side * ny)}L${at(x1 + side * nx, y1 + side * ny)}`);
  const spacers: string[] = [];
  for (let along = SPACER / 2; along < length; along += SPACER) {
    const [x, y] = [x0 + along * ux, y0 + along * uy];
    spacers.push(`M${at(x + nx, y + ny)}L${at(x - nx, y - ny)}`);
  }
  return [...wires, ...spacers].join('');
}
