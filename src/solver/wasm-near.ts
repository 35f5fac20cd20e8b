/** The waves of short sources by asm/sums.ts. */
import { type NearSums, type ShortSources, SUMS } from './near-waves';
import { place, placeTable, type SumModule } from './wasm-modules';

export function nearSumsBy(sums: SumModule): NearSums {
  return (k0, table) => {
    const before = sums.mark();
    const outAt = sums.reserve(8 * SUMS);
    if (table !== undefined) placeTable(sums, table);
    return {
      add(to, point, direct, reflected) {
        const mark = sums.mark();
        const listsAt = place(
          sums,
          [direct, reflected].map((list: ShortSources) => list.inPairs(point)),
        );
        const out = new Float64Array(sums.memory.buffer, outAt, SUMS);
        out.set(to);
        sums.directWaves(outAt, listsAt[0], direct.count / 2, ...point, k0);
        if (table !== undefined) sums.reflectedWaves(outAt, listsAt[1], reflected.count / 2, ...point, k0);
        to.set(out);
        sums.release(mark);
      },
      end: () => sums.release(before),
    };
  };
}
