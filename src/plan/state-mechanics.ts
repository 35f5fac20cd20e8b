/** Weight, wind and ice, and the volts on the antenna, as a plan states them. */
import type { AntennaVoltage } from '../advice/antenna-voltage';
import { LEAST_FACTOR, type Mechanics, type Pull, type Span } from '../advice/mechanics';
import { mechanicsWords } from '../words/en/mechanics';
import { type Data, render } from '../words/message';
import type { MechanicsPlan, VoltagePlan } from './mechanics-schema';
import type { Speaker } from './speaker';
import { stateWorking, stateWorkingOrNull } from './word-sources';

export const stateVoltages = (list: readonly AntennaVoltage[]): VoltagePlan[] =>
  list.map((entry) => ({
    ...entry,
    feedPointVWorking: stateWorkingOrNull(entry.feedPointVWorking),
    wireEndVWorking: stateWorkingOrNull(entry.wireEndVWorking),
  }));

const statePull = ({ newton, factor, working }: Pull): MechanicsPlan['spans'][number]['rest'] => ({
  newton,
  factor,
  working: stateWorking(working),
});

export function stateMechanics(found: Mechanics | null, { format }: Speaker): MechanicsPlan | null {
  if (found === null) return null;
  const say = ([code, data]: Said): string => render(mechanicsWords[code], data, format);
  return {
    spans: found.spans.map(({ sag, rest, wind, ice, ...span }) => ({
      ...span,
      sagM: sag.metres,
      sagMWorking: stateWorking(sag.working),
      rest: statePull(rest),
      wind: statePull(wind),
      ice: statePull(ice),
    })),
    breakN: found.breakN,
    code: found.code,
    rope: found.rope,
    guys: found.guys,
    ladderFootM: found.ladderFootM,
    text: said(found).map(say),
  };
}

type Said = readonly [keyof typeof mechanicsWords, Data];

function said({ spans, breakN, code, rope, guys, ladderFootM }: Mechanics): readonly Said[] {
  return [
    ...spans.flatMap((span) => spanSaid(span, breakN)),
    ...(code.spanM > 0
      ? ([[code.metalMeets ? (code.sizeMeets ? 'code-met' : 'code-size') : 'code-metal', code]] as const)
      : []),
    ...(rope === null
      ? []
      : ([
          ['rope', { diameterM: rope.diameterM, ropeBreakN: rope.breakN }],
          ['tree', { weightKg: rope.weightKg, swayM: rope.swayM }],
        ] as const)),
    ...(guys === null ? [] : ([['guys', guys]] as const)),
    ['ladder', { ladderFootM }],
  ];
}

/** Sag beyond this part of the span comes from what hangs in its middle. Common practice. */
const MUCH_SAG = 0.1;

function spanSaid({ id, spanM, sag, centreN, rest, wind, ice }: Span, breakN: number): readonly Said[] {
  const least = Math.min(wind.factor, ice.factor);
  return [
    ['sag', { span: id, spanM, sagM: sag.metres, restN: rest.newton, factor: rest.factor }],
    ...(centreN > 0 && sag.metres > MUCH_SAG * spanM ? ([['heavy-centre', { centreN }]] as const) : []),
    ['weather', { windN: wind.newton, iceN: ice.newton, breakN }],
    ...(least < LEAST_FACTOR ? ([['weak', { least }]] as const) : []),
  ];
}
