/** Physical constants in SI. Source: CODATA 2018 (c is exact by definition of the metre; µ0 and ε0 rounded far below any use here). */
export const C0 = 299_792_458; // speed of light, m/s
export const MU0 = 1.25663706212e-6; // magnetic constant, H/m
export const EPSILON0 = 1 / (MU0 * C0 * C0); // electric constant, F/m
export const ETA0 = MU0 * C0; // impedance of free space, Ω
