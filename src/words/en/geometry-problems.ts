/** `key: what is wrong; what is allowed`, for wires that cannot be solved, and what is said where an answer is less certain. */
type Data = Readonly<Record<string, number | string>>;

const metres = (value: number | string | undefined): string => `${Number(Number(value).toPrecision(4))} m`;

const said: Readonly<Record<string, (data: Data) => string>> = {
  'wire-zero-length': ({ wire }) => `wire ${wire} has no length; its ends must be more than 1 mm apart`,
  'wire-thicker-than-long': ({ wire, lengthM, radiusM }) =>
    `wire ${wire} is ${metres(lengthM)} long, shorter than its radius ${metres(radiusM)}; it must be longer`,
  'wire-in-ground': ({ wire, zM, radiusM }) =>
    `wire ${wire} reaches down to z = ${metres(zM)}; over soil every part must lie above its radius ${metres(radiusM)}, over a perfect conductor an end may also touch z = 0`,
  'wire-id-twice': ({ wire }) => `wire ${wire} is there twice; each id may stand once`,
  'wires-overlap': ({ wire, other }) =>
    `wire ${wire} lies on wire ${other}; wires may meet at their ends but not lie on each other`,
  'wires-cross': ({ wire, other }) =>
    `wire ${wire} crosses wire ${other}; wires may meet only at their ends, so cut both there or part them`,
  'wire-end-on-wire': ({ wire, other }) =>
    `an end of wire ${wire} or ${other} lies on the middle of the other; wires may meet only at their ends, so cut the other there`,
  'place-on-no-wire': ({ wire }) => `there is no wire ${wire}; the id of one of the wires is allowed`,
  'place-off-wire': ({ wire, distanceM, lengthM }) =>
    `${metres(distanceM)} is not on wire ${wire}; 0 to ${metres(lengthM)} is allowed`,
  'place-needs-one': ({ wire }) =>
    `the place on wire ${wire} needs one of distanceM, fraction and at; exactly one is allowed`,
  'source-missing': () => 'is missing; source with a place, or sources with places and volts, is required',
  'source-twice': () => 'stands beside source; one of the two is allowed',
  'source-at-open-end': ({ wire }) =>
    `sits at the open end of wire ${wire}, where no current flows; a place inside a wire or at a joint is allowed`,
  'field-point-in-ground': ({ zM }) => `lies at z = ${metres(zM)}, in the ground; z of 0 and more is allowed`,
  'field-point-in-wire': ({ wire }) => `lies inside wire ${wire}; a point outside every wire is allowed`,
  'too-many-segments': ({ segments, most }) =>
    `needs ${segments} segments; at most ${most} are allowed, so use a lower frequency or fewer wires`,
  'bad-sweep': ({ given }) =>
    `is ${given}; three numbers from,to,points are allowed: MHz above 0, to not below from, 2 to 10000 points`,
};

export const geometryProblemCodes: readonly string[] = Object.keys(said);

/** One line for a problem; the whole record is called by the given name. */
export function geometryProblemLine(key: string, code: string, data: Data, wholeRecord: string): string {
  const words = said[code];
  return `${key === '' ? wholeRecord : key}: ${words ? words(data) : `cannot be solved (${code}); see the schema`}`;
}
