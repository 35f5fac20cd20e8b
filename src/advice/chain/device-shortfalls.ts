/** Where a design falls short of what the antenna asks: each limit that is overrun, with its number and the band. */
import { magnitude } from '../../base/complex';
import { coreOf } from '../../catalog/cores';
import { ferrites } from '../../catalog/ferrites';
import type { ChokeDesign, ChokePoint, ChokeShortfall } from '../../physics/choke-need';
import { RISE_LIMIT_K } from '../../physics/core-heat';
import { MAX_LOSS_DB, MAX_SWR } from '../../physics/transformer-evaluate';
import type { TransformerDesign, TransformerPoint, TransformerShortfall } from '../../physics/transformer-need';
import type { Facts } from '../facts';
import type { Said } from '../finding';

/** Index and item where `of` is largest. */
export function worstPoint<T>(points: readonly T[], of: (point: T) => number): readonly [number, T] {
  let worst = 0;
  for (const [i, point] of points.entries()) if (of(point) > of(points[worst] as T)) worst = i;
  return [worst, points[worst] as T];
}

const bandOf = (facts: Facts, index: number): string => facts.bands[index]?.band ?? facts.bands[0].band;

export function transformerShortfallsOf(facts: Facts, design: TransformerDesign): Said[] {
  const { points } = design;
  const onWorst = (of: (point: TransformerPoint) => number): { band: string; value: number } => {
    const [index, point] = worstPoint(points, of);
    return { band: bandOf(facts, index), value: of(point) };
  };
  const said = (shortfall: TransformerShortfall): Said => {
    switch (shortfall) {
      case 'loss':
        return { code: 'short-loss', data: { ...onWorst((point) => point.lossNominalDb), limit: MAX_LOSS_DB } };
      case 'swr':
        return { code: 'short-swr', data: { ...onWorst((point) => point.swrNominal), limit: MAX_SWR } };
      case 'heat':
        return heatShort(
          facts,
          onWorst((point) => point.riseK),
          design.safePowerW,
        );
      case 'flux':
        return { code: 'short-flux', data: { ...onWorst((point) => point.fluxDensityT), mostW: design.safePowerW } };
      case 'winding-too-long':
        return { code: 'short-winding', data: onWorst((point) => point.windingWavelengths) };
      case 'does-not-fit':
        return { code: 'short-fit', data: { turns: design.secondaryTurns, core: design.core } };
    }
  };
  const isManganese = ferrites[coreOf(design.core).mix].composition.value === 'MnZn';
  return [...design.shortfalls.map(said), ...(isManganese ? [{ code: 'short-manganese', data: {} }] : [])];
}

const heatShort = ({ settled }: Facts, worst: { band: string; value: number }, mostW: number): Said => ({
  code: 'short-heat',
  data: { ...worst, limit: RISE_LIMIT_K, powerW: settled.powerW, mode: settled.mode ?? '', mostW },
});

export function chokeShortfallsOf(facts: Facts, design: ChokeDesign): Said[] {
  const ohmOf = ({ impedance }: ChokePoint): number => magnitude(impedance.nominal);
  const weakest = (isReactive: boolean) => {
    const [index, point] = worstPoint(design.points, (each) =>
      each.isReactive === isReactive ? each.neededOhm / ohmOf(each) : 0,
    );
    return { band: bandOf(facts, index), ohm: ohmOf(point), neededOhm: point.neededOhm };
  };
  const said = (shortfall: ChokeShortfall): Said => {
    switch (shortfall) {
      case 'impedance':
        return { code: 'short-ohms', data: weakest(false) };
      case 'reactive':
        return { code: 'short-reactive', data: weakest(true) };
      case 'heat': {
        const [index] = worstPoint(design.points, (point) => point.heatW ?? 0);
        return heatShort(facts, { band: bandOf(facts, index), value: design.riseK ?? 0 }, design.safePowerW ?? 0);
      }
      case 'cable-power':
        return { code: 'short-cable', data: { conductor: design.conductor.id } };
      case 'bend':
        return { code: 'short-bend', data: { conductor: design.conductor.id, core: design.core } };
      case 'does-not-fit':
        return { code: 'short-fit', data: { turns: Math.max(...design.turns), core: design.core } };
    }
  };
  return design.shortfalls.map(said);
}
