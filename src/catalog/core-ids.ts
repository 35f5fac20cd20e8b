/** Ferrite rings by the trade's code: size, mix, and both joined. Kept in saved plans: never renamed, never reused. */
export const coreSizes = ['ft50', 'ft82', 'ft114', 'ft140', 'ft240', 'ft290', 'ft400'] as const;
export type CoreSize = (typeof coreSizes)[number];

export const mixIds = ['31', '43', '52', '61', '77'] as const;
export type Mix = (typeof mixIds)[number];

export type CoreId = `${CoreSize}-${Mix}`;
export const coreIds: readonly CoreId[] = coreSizes.flatMap((size) => mixIds.map((mix): CoreId => `${size}-${mix}`));
