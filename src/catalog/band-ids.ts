/** Bands and ITU regions by id. Kept in saved plans: never renamed, never reused. Apart from bands.ts: a first screen need not carry its table. */
export const bandIds = ['160m', '80m', '60m', '40m', '30m', '20m', '17m', '15m', '12m', '10m', '6m'] as const;
export type Band = (typeof bandIds)[number];

export const regionIds = [1, 2, 3] as const;
export type Region = (typeof regionIds)[number];
