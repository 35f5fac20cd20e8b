/** Every combination of the answers that decide a chain, for tests that have to hold for all of them. Invented antennas. */
import { feedPositionsOf } from '../../src/advice/system';
import type { Answers } from '../../src/design/answers';
import { lengthChoiceIds, radiatorIds, returnPathIds, shackEndIds } from '../../src/design/choices';

const feedLines = ['rg-58', 'rg-6', 'window-line', 'twin-lead', 'none'] as const;
const bandSets: Answers['bands'][] = [['40m'], ['80m', '40m', '20m', '10m']];
const impedances = [
  { r: 48, x: 5 },
  { r: 420, x: -60 },
] as const;

/** About eight thousand; the answers that only add reasons change from one to the next. */
export function everyCombination(): Answers[] {
  const found: Answers[] = [];
  for (const radiator of radiatorIds)
    for (const fedAt of feedPositionsOf[radiator])
      for (const lengthChoice of lengthChoiceIds)
        for (const feedLine of feedLines)
          for (const shackEnd of shackEndIds)
            for (const station of ['home', 'portable'] as const)
              for (const bands of bandSets) {
                const n = found.length;
                found.push({
                  radiator,
                  fedAt,
                  lengthChoice,
                  feedLine,
                  shackEnd,
                  station,
                  bands,
                  ...(lengthChoice === 'fixed' ? { wireLengthM: 20 + (n % 23) } : {}),
                  ...(n % 3 === 0 ? { rfInShack: true } : {}),
                  ...(n % 5 === 0 ? { indoors: true } : {}),
                  ...(n % 7 === 0 ? { feedLineRoute: 'along' as const } : {}),
                  ...(n % 11 === 0 ? { feedLineLengthM: 2 } : {}),
                  ...(n % 13 < 6 ? { returnPath: returnPathIds[n % 13] ?? 'none' } : {}),
                  ...(radiator === 'other' && n % 2 === 0
                    ? { feedImpedance: impedances[(n / 2) % 2] ?? impedances[0] }
                    : {}),
                  ...(radiator === 'other' && n % 17 < 8 ? { balanced: true } : {}),
                  ...(n % 19 === 0 ? { powerW: 1500, mode: 'data' as const } : {}),
                  ...(n % 23 === 0 ? { powerW: 5 } : {}),
                });
              }
  return found;
}
