/** Ground classes by id. Kept in saved plans: never renamed, never reused. Apart from ground.ts: a first screen need not carry its table. */
export const groundIds = [
  'sea',
  'fresh-water',
  'very-good',
  'good',
  'average',
  'poor',
  'very-poor',
  'dry-sand',
] as const;
export type GroundId = (typeof groundIds)[number];
