/** Every combination of the answers that decide a plan, and a way to look at all of a plan. Invented antennas. */
import { createDesigner } from '../../src/advice/chain/design-parts';
import { feedPositionsOf } from '../../src/advice/system';
import type { Answers } from '../../src/design/answers';
import { feedPositionIds, lengthChoiceIds, radiatorIds, returnPathIds, shackEndIds } from '../../src/design/choices';
import { makePlan } from '../../src/plan/make-plan';
import type { Plan } from '../../src/plan/plan-schema';

/** A line of each kind the rules tell apart. */
const feedLines = ['rg-58', 'rg-6', 'window-line', 'twin-lead', 'none'] as const;
const bandSets: readonly Answers['bands'][] = [
  ['40m'],
  ['80m', '40m', '20m', '10m'],
  ['20m', '17m', '15m', '12m', '10m'],
  ['160m'],
  ['60m', '30m', '6m'],
];

/** Radiator × feed point × length choice × line × shack end × station; the rest changes from one to the next. */
export function everyAnswer(): Answers[] {
  const found: Answers[] = [];
  for (const radiator of radiatorIds)
    for (const fedAt of feedPositionsOf[radiator])
      for (const lengthChoice of lengthChoiceIds)
        for (const feedLine of feedLines)
          for (const shackEnd of shackEndIds)
            for (const station of ['home', 'portable'] as const) {
              const fixed = { radiator, fedAt, lengthChoice, feedLine, shackEnd, station };
              found.push({ ...fixed, ...passing(found.length, lengthChoice) });
            }
  return found;
}

/** Steps have no factor in common with one another or with the loops above, so that every value meets every other. */
function passing(n: number, lengthChoice: Answers['lengthChoice']): Pick<Answers, 'bands'> & Partial<Answers> {
  const path = returnPathIds[n % 13];
  return {
    bands: bandSets[n % bandSets.length] ?? ['40m'],
    ...(lengthChoice === 'fixed' ? { wireLengthM: 20 + (n % 23) } : {}),
    ...(path === undefined ? {} : { returnPath: path }),
    ...(n % 3 === 0 ? { indoors: true } : {}),
    ...(n % 7 === 0 ? { units: 'imperial' as const } : {}),
    ...(n % 11 === 0 ? { feedLineRoute: 'along' as const, feedLineLengthM: 2 } : {}),
    ...(n % 17 === 0 ? { powerW: 1500, mode: 'data' as const, nearestPersonM: 6 } : {}),
    ...(n % 19 === 0 ? { powerW: 5, nearestPowerLineM: 12, spanM: 14 } : {}),
    ...(n % 29 === 0 ? { rfInShack: true, onHand: drawer } : {}),
  };
}

const drawer: Answers['onHand'] = [
  { part: 'transformer', ratio: 9, kind: 'voltage' },
  { part: 'two-in-one', ratio: 49, ratingW: 100 },
  { part: 'choke', core: 'ft240-43', count: 1, turns: 8, line: 'rg-58' },
  { part: 'beads', count: 12, line: 'rg-58' },
  { part: 'coil', turns: 8, diameterM: 0.2, line: 'rg-213' },
  { part: 'core', core: 'ft140-31', count: 2 },
  { part: 'wire', wire: 'pvc-1.5mm2', lengthM: 12 },
  { part: 'line', line: 'rg-213', lengthM: 25 },
];

/** Radiators with feed points that they do not have. */
export function everyImpossibleFeedPoint(): Answers[] {
  return radiatorIds.flatMap((radiator) =>
    feedPositionIds
      .filter((fedAt) => !feedPositionsOf[radiator].includes(fedAt))
      .map((fedAt): Answers => ({ bands: ['40m'], radiator, fedAt, shackEnd: 'radio' })),
  );
}

/** Tells every value of a plan with its path, list places left out. */
export function tellValues(value: unknown, tell: (path: string, value: unknown) => void, path = ''): void {
  if (value === null || typeof value !== 'object') tell(path, value);
  else if (Array.isArray(value)) for (const item of value) tellValues(item, tell, path);
  else for (const [key, item] of Object.entries(value)) tellValues(item, tell, path === '' ? key : `${path}.${key}`);
}

const notForReading =
  /(^|\.)(citation|formula|id|code|from|unit|ruleSet|effect|piece|where|line|core|conductor|system)$/;

/** Tells every text of a plan that a person reads. */
export const tellTexts = (plan: Plan, tell: (path: string, text: string) => void): void =>
  tellValues(plan, (path, value) => {
    if (typeof value === 'string' && !notForReading.test(path)) tell(path, value);
  });

/** Plans of all of them. Searches for parts are shared: what is looked for here is the same plan, told faster. */
const designer = createDesigner();
export const planFor = (answers: Answers): Plan => makePlan(answers, { designer });
