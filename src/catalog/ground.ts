import type { GroundId } from './ground-ids';
import { found, type Sourced } from './sourced';

export interface Ground {
  readonly id: GroundId;
  readonly epsilonR: Sourced;
  readonly sigmaSPerM: Sourced;
}

const ground = (id: GroundId, epsilonR: number, sigmaSPerM: number): Ground => ({
  id,
  epsilonR: found(epsilonR, 'handbook-ground-table'),
  sigmaSPerM: found(sigmaSPerM, 'handbook-ground-table'),
});

/**
 * Ground classes at 1.8 to 54 MHz. Source: the handbook table (found). Its disagreements: fresh water 1 mS/m here, 3 mS/m in the
 * international table; measured soils spread by a factor of three about any class.
 */
export const grounds: Readonly<Record<GroundId, Ground>> = {
  sea: ground('sea', 81, 5),
  'fresh-water': ground('fresh-water', 80, 0.001),
  'very-good': ground('very-good', 20, 0.0303), // pastoral, low hills, rich soil
  good: ground('good', 14, 0.01),
  average: ground('average', 13, 0.005), // heavy clay, medium hills
  poor: ground('poor', 13, 0.002), // rocky, steep hills
  'very-poor': ground('very-poor', 5, 0.001), // towns, industry
  'dry-sand': ground('dry-sand', 10, 0.002), // sandy, dry, flat, coastal
};
