/**
 * Lengths as people read them: metres to three significant figures and at finest 1 cm; feet and inches to the half inch under 3 m, else to
 * the inch. Numbers and units are joined by no-break spaces, so that no line break falls inside a unit.
 */
const narrow = '\u00a0';

export function metresText(metres: number): string {
  const decimals = metres >= 100 ? 0 : metres >= 10 ? 1 : 2;
  return `${metres.toFixed(decimals)}${narrow}m`;
}

export function feetInchesText(metres: number): string {
  const step = metres < 3 ? 0.5 : 1;
  const inches = Math.round(metres / 0.0254 / step) * step;
  const feet = Math.floor(inches / 12);
  const rest = inches - feet * 12;
  const restText = `${Math.floor(rest)}${rest % 1 === 0 ? '' : '½'}${narrow}in`.replace(/^0½/, '½');
  if (feet === 0) return restText;
  return rest === 0 ? `${feet}${narrow}ft` : `${feet}${narrow}ft${narrow}${restText}`;
}
