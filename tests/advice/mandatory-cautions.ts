/** Cautions that stand in every plan with an outdoor step, by the project's own list. */
export const mandatoryCautions = [
  'power-lines',
  'fall-path',
  'climbing',
  'launching',
  'lightning',
  'wire-ends-voltage',
  'rf-exposure',
  'trip-and-tread',
  'not-alone',
  'local-codes',
] as const;
