/** Parts of an antenna that people can come near to, each with its own distance. */
export const antennaParts = ['radiator', 'feed-point', 'wire-end', 'counterpoise', 'radials', 'coax', 'house'] as const;
export type AntennaPart = (typeof antennaParts)[number];
