/** A dipole with links in its legs. Invented antennas. */
import { describe, expect, test } from 'vitest';
import { hangsAs } from '../../src/advice/hanging';
import { freeWireM } from '../../src/advice/power-line';
import { cautionsBefore } from '../../src/advice/steps';
import { conductorM, LINK_M, linkCount, linkedLegs } from '../../src/advice/wire-links';
import type { Answers } from '../../src/design/answers';
import { halfWave } from '../../src/physics/lengths';
import { steps as stepWords } from '../../src/words/en/steps';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { type GivenAnswers, wholePlan } from './whole-plan';

const linked = (given: GivenAnswers = {}) =>
  wholePlan({ radiator: 'linked-wire', fedAt: 'centre', bands: ['40m', '20m'], station: 'portable', ...given });

const bandSets: readonly Answers['bands'][] = [
  ['40m', '20m'],
  ['80m', '40m', '20m'],
  ['20m', '17m', '15m', '12m', '10m'],
  ['160m', '6m'],
  ['60m', '30m', '10m', '6m'],
];

describe('lengths', () => {
  // Common practice, no source: 20 m 5.06 m to a leg, then 5.0 m more to 40 m, each link adding 1 to 3 cm. Bare wire; the tolerance is the
  // last figure told and what another place in the band makes of it.
  test('20 m and 40 m in bare wire come out as everybody cuts them', () => {
    const [inner, outer] = linked({ wire: 'copper-2.0mm-bare' }).cuts;
    expect(inner?.finishedM).toBeGreaterThan(5.01);
    expect(inner?.finishedM).toBeLessThan(5.11);
    expect(outer?.finishedM).toBeGreaterThan(4.95);
    expect(outer?.finishedM).toBeLessThan(5.05);
    expect(LINK_M).toBeGreaterThanOrEqual(0.01);
    expect(LINK_M).toBeLessThanOrEqual(0.03);
  });

  test.each(bandSets.map((bands) => [bands]))(
    '%o: pieces and closed links add up to the half-wave of each band',
    (bands) => {
      const { facts, dimensions, cuts } = linked({ bands });
      const pieces = cuts.filter(({ piece }) => piece.startsWith('leg-piece'));
      expect(pieces.map(({ piece, count }) => `${count} ${piece}`)).toEqual(
        [...facts.bands].reverse().map(({ band }) => `2 leg-piece-${band}`),
      );
      const wireFactor = { value: facts.wire.velocityFactor.value, from: 'catalogue' } as const;
      let legM = 0;
      for (const [index, at] of [...facts.bands].reverse().entries()) {
        const { finishedM, legM: told } = pieces[index] ?? { finishedM: Number.NaN, legM: Number.NaN };
        expect(finishedM).toBeGreaterThan(0.25);
        legM += finishedM + (index === 0 ? 0 : LINK_M);
        const whole = halfWave({ frequencyMHz: { value: at.focusMHz, from: 'assumed' }, wireFactor });
        expect(legM).toBeCloseTo(whole.metres / 2, 9);
        expect(told).toBeCloseTo(legM, 9);
        expect(conductorM(dimensions, at.band)).toBeCloseTo(2 * legM, 9);
      }
      expect(dimensions.radiator.metres).toBeCloseTo(2 * legM, 9);
    },
  );

  // Common practice, no source: cut 2 to 3 % long. What is trimmed behind a link is the resonance of the whole leg.
  test('the spare of each piece is a fortieth of the leg it ends', () => {
    const { cuts, dimensions } = linked({ bands: ['20m', '17m'] });
    for (const [index, { legM }] of linkedLegs(dimensions).entries()) {
      const { cutM, finishedM } = cuts[index] ?? { cutM: 0, finishedM: 0 };
      expect(cutM - finishedM - 0.3).toBeCloseTo(0.025 * legM, 9);
    }
  });

  test('a length that was told of another wire is not used', () => {
    const told = linked({ lengthChoice: 'fixed', wireLengthM: 8 });
    expect(told.dimensions.radiator.metres).toBeCloseTo(linked().dimensions.radiator.metres, 9);
    expect(told.facts.assumed.map(({ key }) => key)).not.toContain('lengthChoice');
  });

  test('one band alone has no link', () => {
    const { cuts, parts, dimensions, steps } = linked({ bands: ['40m'] });
    expect(linkCount(dimensions)).toBe(0);
    expect(cuts[0]?.note.code).toBe('linked-only');
    expect(parts.filter(({ item }) => item.code.startsWith('link-'))).toEqual([]);
    expect(steps.map(({ id }) => id)).not.toContain('change-links');
  });
});

describe('how it hangs', () => {
  const shape = (given: GivenAnswers) => hangsAs(linked(given).facts.settled);

  test('its heights tell: both ends low unless told otherwise, level, or sloping from a support above the feed point', () => {
    expect(shape({})).toBe('inverted-v');
    expect(shape({ heightM: 8, endHeightM: 8 })).toBe('straight-wire');
    expect(shape({ heightM: 7, endHeightM: 3, supportHeightM: 11 })).toBe('sloper');
    expect(shape({ heightM: 7, endHeightM: 3, supportHeightM: 8 })).toBe('inverted-v');
    expect(hangsAs({ ...linked().facts.settled, radiator: 'loop' })).toBe('loop');
  });

  test('as an inverted V over one support it has ropes, run and pull of one', () => {
    const own = linked({ bands: ['40m'], heightM: 10 });
    const v = wholePlan({ radiator: 'inverted-v', fedAt: 'centre', heightM: 10, station: 'portable' });
    expect(own.dimensions.runM).toBeCloseTo(v.dimensions.runM, 9);
    const ropes = (plan: typeof v) => plan.cuts.filter(({ note }) => note.code.startsWith('rope-'));
    expect(ropes(own)).toEqual(ropes(v));
    expect(own.mechanics?.spans).toEqual(v.mechanics?.spans);
  });

  test('links add their weight to the pull', () => {
    const pull = (bands: Answers['bands']) => linked({ bands, heightM: 10 }).mechanics?.spans[0]?.rest.newton ?? 0;
    expect(pull(['40m', '20m', '10m'])).toBeGreaterThan(pull(['40m']));
  });

  // As twice the support and the whole leg, which swings as one piece however many links are in it.
  test('the distance from power lines counts the whole leg', () => {
    const { facts, dimensions, cuts } = linked({ bands: ['40m', '20m', '15m'] });
    const legM = cuts.filter(({ piece }) => piece.startsWith('leg-piece')).reduce((sum, { cutM }) => sum + cutM, 0);
    expect(freeWireM(facts, dimensions, cuts)).toBeCloseTo(legM, 9);
    const level = linked({ bands: ['40m', '20m', '15m'], endHeightM: 8 });
    expect(freeWireM(level.facts, level.dimensions, level.cuts)).toBeCloseTo(2 * legM, 9);
  });
});

describe('parts, steps and cautions', () => {
  test('each link has its insulator, plugs and labels: twice one for each band but the first', () => {
    const links = linked({ bands: ['40m', '20m', '15m'] }).parts.filter(({ item }) => item.code.startsWith('link-'));
    expect(links.map(({ item, quantity }) => `${quantity} ${item.code}`)).toEqual([
      '4 link-insulator',
      '4 link-plug',
      '4 link-label',
    ]);
  });

  test.each(['trim', 'transmit-test', 'change-links'] as const)(
    'nobody comes to %s without the cautions of links',
    (id) => {
      const lines = (given: GivenAnswers) => cautionsBefore(id, linked(given).cautions).flatMap((each) => each.lines);
      expect(lines({})).toEqual(expect.arrayContaining([47, 48, 49]));
      expect(lines({ bands: ['40m'] })).not.toContain(47);
    },
  );

  test('under a roof the volts are told, and nothing of lowering, lines or wind', () => {
    const lines = cautionsBefore('change-links', linked({ indoors: true }).cautions).flatMap((each) => each.lines);
    expect(lines).toContain(47);
    expect(lines).not.toContain(48);
    expect(lines).not.toContain(49);
  });

  test('the steps say the order of trimming and how the links stand for each band', () => {
    const { steps } = linked({ bands: ['40m', '20m', '15m'] });
    const text = (id: string): string => {
      const step = steps.find((each) => each.id === id);
      return step === undefined ? '' : render(stepWords[step.code] ?? '', step.data, createFormat('metric'));
    };
    expect(text('measure')).toContain('Begin on 15 m, with every link open');
    expect(text('trim')).toContain('15 m, then 20 m, then 40 m');
    const change = text('change-links');
    expect(change).toContain('radio off, coax unplugged');
    expect(change).toContain('for 15 m every link open');
    expect(change).toContain('for 20 m closed up to the 15 m link, open beyond');
    expect(change).toContain('for 40 m every link closed');
    expect(text('leave')).toContain('close every link');
  });
});
