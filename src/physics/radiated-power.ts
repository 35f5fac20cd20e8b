/**
 * Power as if sent equally in all directions.
 *
 *   EIRP = P · 10^((G − losses) / 10)      G  gain over an isotropic radiator, dBi
 *   ERP is the same over a half-wave dipole in free space, whose gain is 2.15 dBi
 *
 * Source: ITU Radio Regulations, article 1.161 and 1.162 (definitions).
 */
export const DIPOLE_GAIN_DBI = 2.15;

export const eirpW = (powerW: number, gainDbi: number, lossDb: number): number =>
  powerW * 10 ** ((gainDbi - lossDb) / 10);

export const erpW = (powerW: number, gainDbi: number, lossDb: number): number =>
  eirpW(powerW, gainDbi - DIPOLE_GAIN_DBI, lossDb);
