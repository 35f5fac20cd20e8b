/** Units of the outside world to SI and back. Exact by definition (international foot, pound and standard gravity). */
export const METRES_PER_FOOT = 0.3048;
export const METRES_PER_INCH = 0.0254;
export const NEWTONS_PER_POUND_FORCE = 4.4482216152605;
export const KILOGRAMS_PER_POUND = 0.45359237;
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

export const metresFromFeet = (feet: number): number => feet * METRES_PER_FOOT;
export const feetFromMetres = (metres: number): number => metres / METRES_PER_FOOT;
export const hertz = (megahertz: number): number => megahertz * 1e6;
