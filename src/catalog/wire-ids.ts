/** Antenna wire by id. Kept in saved plans: never renamed, never reused. */
export const wireIds = [
  'copper-1.0mm-bare',
  'copper-1.6mm-bare',
  'copper-2.0mm-bare',
  'copper-2.5mm-bare',
  'pvc-0.75mm2',
  'pvc-1.5mm2',
  'pvc-awg14',
  'pvc-awg18',
  'pe-awg14-copper-clad',
  'pe-awg26-copper-clad',
  'ptfe-awg22',
] as const;
export type WireId = (typeof wireIds)[number];
