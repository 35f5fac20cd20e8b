/** Devices that component physics has designed for this antenna; the chain puts each in its place. */
import type { DeviceFinding } from '../device-finding';
import type { ChokeRole } from './choke-places';

export interface ComponentDesigns {
  readonly transformer?: DeviceFinding;
  readonly chokes?: Readonly<Partial<Record<ChokeRole, DeviceFinding>>>;
}
