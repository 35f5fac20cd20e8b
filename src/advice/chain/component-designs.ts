/** Builds that component physics has designed for this antenna. A part it has not designed takes the trade's rule of thumb (builds.ts). */
import type { BuildFinding } from '../finding';
import type { ChokeRole } from './choke-places';

export interface ComponentDesigns {
  readonly transformer?: BuildFinding;
  readonly chokes?: Readonly<Partial<Record<ChokeRole, BuildFinding>>>;
}
