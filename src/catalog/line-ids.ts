/** Feed lines by id. Kept in saved plans: never renamed, never reused. Apart from lines.ts, so that a first screen need not carry its tables. */
export const coaxIds = [
  'rg-58',
  'rg-8x',
  'rg-213',
  'rg-174',
  'rg-316',
  'rg-142',
  'rg-400',
  'rg-6',
  'foam-6.1mm',
  'foam-10.3mm',
  'foam-15mm',
  'foam-10.2mm-flexible',
] as const;
export const openLineIds = ['window-line', 'twin-lead', 'open-wire'] as const;
export const lineIds = [...coaxIds, ...openLineIds] as const;
export type CoaxId = (typeof coaxIds)[number];
export type OpenLineId = (typeof openLineIds)[number];
export type LineId = (typeof lineIds)[number];

/** What an operator can answer about the feed line: one of the catalogue, or no line at all. */
export const feedLineIds = [...lineIds, 'none'] as const;
export type FeedLineId = (typeof feedLineIds)[number];

export const isCoax = (id: string): id is CoaxId => coaxIds.some((each) => each === id);
/** Two parallel wires, whatever lies between them. */
export const isOpenWireLine = (id: string | null): id is OpenLineId => openLineIds.some((each) => each === id);
