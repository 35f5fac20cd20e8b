/** What the rules say of feed points, before any field solution, against what books print. Bare 2 mm wire, 20 m band, "high up" is 60 m. */
import { test } from 'vitest';
import { dimensionsOf } from '../../src/advice/dimensions';
import { factsOf, isNoSystem } from '../../src/advice/facts';
import { feedPointOf } from '../../src/advice/feed-impedance';
import { type Complex, magnitude } from '../../src/base/complex';
import type { Answers } from '../../src/design/answers';
import { centreFedRadiationOhm } from '../../src/physics/wire-radiation';
import { expectPublished, published, titled } from '../fixtures/published-checks';

function feedPoint(given: Partial<Answers>): Complex {
  const facts = factsOf({ bands: ['20m'], shackEnd: 'radio', wire: 'copper-2.0mm-bare', heightM: 60, ...given });
  if (isNoSystem(facts)) throw new Error('no such feed point');
  const found = feedPointOf(facts, facts.bands[0], dimensionsOf(facts));
  if (found === null) throw new Error('no rule');
  return found.z;
}

/** A leg of a quarter-wave, 5 m, whose end hangs that far below the apex: 30 degrees down make an apex of 120, 45 one of 90. */
const bent = (dropM: number): number =>
  feedPoint({ radiator: 'inverted-v', fedAt: 'centre', supportHeightM: 60, endHeightM: 60 - dropM }).re;
const end = (heightM: number): number => magnitude(feedPoint({ radiator: 'straight-wire', fedAt: 'end', heightM }));

const values: Readonly<Record<string, () => number[]>> = {
  'impedance-01': () => [centreFedRadiationOhm(Math.PI)],
  'impedance-03': () => [feedPoint({ radiator: 'straight-wire', fedAt: 'centre' }).re],
  'impedance-04': () => [feedPoint({ radiator: 'folded-wire', fedAt: 'centre' }).re],
  'impedance-05': () => [feedPoint({ radiator: 'loop', fedAt: 'corner' }).re],
  'impedance-11': () => [end(8), end(60)],
  'impedance-12': () => [bent(2.6), bent(3.6)],
};

const checks = published('feed-impedance.json');

test.each(titled(checks))('%s', (_title, check) => expectPublished(check, values[check.id]?.() ?? []));
