/** Parts of an antenna that people can come near to, each with its own distance. */
export const antennaParts = ['radiator', 'feed-point', 'wire-end', 'counterpoise', 'radials', 'coax', 'house'] as const;
export type AntennaPart = (typeof antennaParts)[number];

/** Places of the site where a body may stand or sit, an arm's length from the nearest conductor. */
export const peoplePlaces = [
  'radio',
  'indoors',
  'entry',
  'coax-run',
  'under-wire',
  'wire-end',
  'feed-point',
  'counterpoise',
  'radials',
  'house',
] as const;
export type PeoplePlace = (typeof peoplePlaces)[number];
