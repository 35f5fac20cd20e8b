/**
 * Resistance and reactance of one choke from the lowest to the highest wanted frequency: resistance as the heavy line, reactance as the fine one,
 * each named beside its end; at every wanted band a bracket for how far the resistance of real rings may lie. Squares say how many ohms.
 */
import { at, bracket, Drawing, path, px, spread } from './figures';

interface Spread {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

export interface OhmsPoint {
  readonly atMHz: number;
  readonly rOhm: Spread;
  readonly xOhm: Spread;
}

interface ChokeOhmsProps {
  readonly curve: readonly OhmsPoint[];
  readonly bands: readonly { readonly name: string; readonly atMHz: number; readonly rOhm: Spread }[];
  /** What is asked for, where one number holds for all. */
  readonly neededOhm: number | null;
  readonly words: { readonly resistance: string; readonly reactance: string; readonly needed: string };
  readonly label: string;
}

const WIDTH = 280;
/** Where the paper ends and the names begin. */
const PAPER = 188;
/** Room for a band's name, px. */
const NAME = 42;
const SIDE = 16;
const TOP = 26;
const TALL = 170;
const steps = [100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000] as const;

interface Frame {
  x(mhz: number): number;
  y(ohm: number): number;
  readonly squareOhm: number;
  readonly least: number;
  readonly most: number;
}

/** Ohms to one square. */
export const chokeSquareOhm = (curve: readonly OhmsPoint[]): number => frameOf(curve).squareOhm;

function frameOf(curve: readonly OhmsPoint[]): Frame {
  const mhz = curve.map(({ atMHz }) => atMHz);
  const [from, to] = [Math.log(Math.min(...mhz)), Math.log(Math.max(...mhz))];
  const top = Math.max(...curve.flatMap(({ rOhm, xOhm }) => [rOhm.high, xOhm.nominal]));
  const bottom = Math.min(0, ...curve.map(({ xOhm }) => xOhm.nominal));
  const squareOhm = steps.find((step) => (top - bottom) / step <= 7) ?? 100_000;
  const most = Math.ceil(top / squareOhm) * squareOhm;
  const least = Math.floor(bottom / squareOhm) * squareOhm;
  return {
    x: (each) => SIDE + ((PAPER - 2 * SIDE) * (Math.log(each) - from)) / Math.max(to - from, 1e-9),
    y: (ohm) => TOP + (TALL * (most - ohm)) / (most - least),
    squareOhm,
    least,
    most,
  };
}

export function ChokeOhms({ curve, bands, neededOhm, words, label }: ChokeOhmsProps) {
  const { x, y, squareOhm, least, most } = frameOf(curve);
  const rules: string[] = [];
  for (let ohm = least; ohm <= most; ohm += squareOhm) rules.push(`M${at(0, y(ohm))}H${PAPER}`);
  const isRoomy = bands.length * NAME <= PAPER;
  const told = isRoomy ? bands : [...bands.slice(0, 1), ...bands.slice(-1)];
  const spots = spread(
    told.map(({ atMHz }) => x(atMHz)),
    NAME,
    NAME / 2,
    PAPER - NAME / 2,
  );
  const isAsked = neededOhm !== null && neededOhm < most;
  const named = namesOf(curve, isAsked ? neededOhm : null, words, y);
  return (
    <Drawing width={WIDTH} height={TOP + TALL + 34} label={label}>
      <path class="q" d={rules.join('')} />
      <path class="s" d={`M${at(0, y(0))}H${PAPER}`} />
      {isAsked && <path class="r" d={`M${at(0, y(neededOhm))}H${PAPER}`} />}
      {bands.map(({ atMHz, rOhm }) => (
        <path class="m" d={bracket(x(atMHz), y(rOhm.low), y(rOhm.high))} />
      ))}
      <path class="s" d={path(curve.map(({ atMHz, xOhm }) => [x(atMHz), y(xOhm.nominal)] as const))} />
      <path class="c" d={path(curve.map(({ atMHz, rOhm }) => [x(atMHz), y(rOhm.nominal)] as const))} />
      {told.map(({ name }, index) => (
        <text class="k" x={px(spots[index] ?? 0)} y={TOP + TALL + 28} text-anchor="middle">
          {name}
        </text>
      ))}
      {named.map(({ text, key, at: height }) => (
        <text class={key ? 'k' : undefined} x={PAPER + 6} y={px(height + 5.5)}>
          {text}
        </text>
      ))}
    </Drawing>
  );
}

/** Names beside the right end of each line, kept apart. */
function namesOf(
  curve: readonly OhmsPoint[],
  neededOhm: number | null,
  words: ChokeOhmsProps['words'],
  y: (ohm: number) => number,
) {
  const last = curve.at(-1);
  const names = [
    { text: words.resistance, key: true, ohm: last?.rOhm.nominal ?? 0 },
    { text: words.reactance, key: false, ohm: last?.xOhm.nominal ?? 0 },
    ...(neededOhm === null ? [] : [{ text: words.needed, key: false, ohm: neededOhm }]),
  ];
  const spots = spread(
    names.map(({ ohm }) => y(ohm)),
    21,
    TOP,
    TOP + TALL,
  );
  return names.map(({ text, key }, index) => ({ text, key, at: spots[index] ?? 0 }));
}
