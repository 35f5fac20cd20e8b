/** What `components.bench.mjs` measures: design searches over the whole catalogue, and how far each family of published checks lies off. */
import { complex } from '../../src/base/complex';
import { coreIds } from '../../src/catalog/core-ids';
import { designChoke } from '../../src/physics/choke-design';
import type { ChokeNeed } from '../../src/physics/choke-need';
import { designTransformer } from '../../src/physics/transformer-design';
import type { TransformerNeed } from '../../src/physics/transformer-need';
import { coaxToWind } from '../../src/physics/wound-conductor';
import components from '../fixtures/published/components.json';
import { componentValues } from '../published/component-values';

/** Centres of the amateur bands from 160 to 6 m. */
const bandsHz = [1.9, 3.65, 5.36, 7.1, 10.12, 14.15, 18.12, 21.2, 24.94, 28.8, 51].map((mhz) => mhz * 1e6);
const onHand = coreIds.map((core) => ({ core, count: 2 }));

const transformer = (ratio: number, powerW: number): TransformerNeed => ({
  ratio,
  winding: 'auto',
  points: bandsHz.slice(1, 10).map((hz) => ({ hz, load: complex(50 * ratio, 10 * ratio) })),
  lineOhm: 50,
  powerW,
  averageFactor: 1,
  housing: 'closed-box',
  onHand,
});

const choke = (minimumOhm: number, openV: number | null, from: number): ChokeNeed => ({
  minimumOhm,
  reactiveMinimumOhm: 5000,
  points: bandsHz
    .slice(from, 10)
    .map((hz) => ({ hz, source: openV === null ? null : { openV, impedance: complex(1000) } })),
  powerW: 100,
  averageFactor: 1,
  housing: 'closed-box',
  conductors: [coaxToWind('rg-58'), coaxToWind('rg-400'), coaxToWind('rg-316')],
  onHand,
});

export const searches: readonly { readonly what: string; readonly run: () => unknown }[] = [
  { what: '4:1 transformer, 100 W', run: () => designTransformer(transformer(4, 100)) },
  { what: '49:1 transformer, 100 W', run: () => designTransformer(transformer(49, 100)) },
  { what: '49:1 transformer, 3 kW: nothing is enough', run: () => designTransformer(transformer(49, 3000)) },
  { what: '1 kΩ choke, 80 to 10 m', run: () => designChoke(choke(1000, null, 1)) },
  { what: '5 kΩ choke, 80 to 10 m, driven', run: () => designChoke(choke(5000, 423, 1)) },
  { what: '20 kΩ choke, 160 to 10 m: nothing is enough', run: () => designChoke(choke(20_000, 1500, 0)) },
];

/** Families of checks by the beginning of their ids. */
const families: Readonly<Record<string, RegExp>> = {
  'line equations': /^(line-zin|touchstone|swr-loss|open-)/,
  'wound rings and beads': /^(one-turn|bead|ferrite|al-|toroid)/,
  'coils of coax': /^(coil|impedance|choke-(14|15|16|17|18|19|20|21|22))/,
  'ferrite chokes': /^choke-0/,
  transformers: /^transformer/,
};

/** Error of each value as a part of the printed one, or of its tolerance where zero is printed. */
export const errorsByFamily = (): ReadonlyMap<string, readonly number[]> =>
  new Map(
    Object.entries(families).map(([family, ids]) => [
      family,
      components.checks
        .filter(({ id }) => ids.test(id))
        .flatMap(({ id, expected, tolerance }) =>
          (componentValues[id]?.() ?? []).map((value, i) => {
            const printed = expected[i] ?? Number.NaN;
            return Math.abs(value - printed) / (printed === 0 ? tolerance.value : Math.abs(printed));
          }),
        ),
    ]),
  );
