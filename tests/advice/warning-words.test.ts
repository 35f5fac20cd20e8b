/** What a warning says: the band, the cure and the numbers that belong to these answers, and how grave it is for them. */
import { describe, expect, test } from 'vitest';
import type { Warning } from '../../src/advice/finding';
import type { Answers } from '../../src/design/answers';
import { warningWords } from '../../src/words/en/warnings';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';
import { dipole } from './invented-antennas';
import { doublet, endFed, nonResonant, offCentre, otherWordings, warningsFor } from './raised-warnings';

const format = createFormat('metric');
const found = (answers: Answers, code: string): Warning | undefined =>
  warningsFor(answers).find((warning) => warning.code === code);

describe('what a warning says', () => {
  test('a wrong transformer is told by the band that it spoils most, and by the other bands', () => {
    // 2.5 kΩ at the end of a half-wave behind 9:1 is 270 Ω: SWR 5.4 and more (common practice).
    const { data } = found(
      { ...endFed, onHand: [{ part: 'transformer', ratio: 9, kind: 'voltage' }] },
      'wrong-transformer',
    )!;
    expect([data.band, data.others]).toEqual(['80m', '40m']);
    expect(data.swr).toBeGreaterThan(5.4);
    expect(data.leastSwr).toBeLessThanOrEqual(Number(data.swr));
  });

  test('a plug that sparks over is not cured by a thicker line', () => {
    const plug = otherWordings.map((answers) => found(answers, 'over-plug')).find((warning) => warning !== undefined);
    expect(plug?.waysOut.map(({ code }) => code)).toEqual(['lower-swr', 'less-power', 'other-plug']);
    const heat = found({ ...dipole, feedLine: 'rg-174', powerW: 1000, mode: 'data' }, 'over-power');
    expect(heat?.waysOut.map(({ code }) => code)).toEqual(['heavier-line', 'less-power', 'lower-swr']);
  });

  test('lost watts are told of every 100: 3 dB is half', () => {
    const { data } = found({ ...dipole, feedLineLengthM: 90 }, 'line-loss')!;
    expect(data.lostOf100W).toBeCloseTo(100 * (1 - 10 ** (-Number(data.lossDb) / 10)), 9);
    expect(render(warningWords['line-loss'].text, { ...data, lossDb: 3.0103, lostOf100W: 50 }, format)).toContain(
      'turns 50 W of every 100 W into heat (3 dB)',
    );
  });

  test('loss in a line is cured by what this antenna can have', () => {
    const ways = (answers: Answers) => found(answers, 'line-loss')?.waysOut.map(({ code }) => code);
    expect(ways({ ...dipole, feedLineLengthM: 60 })).toEqual(['heavier-line', 'shorter-line']);
    expect(ways({ ...dipole, bands: ['40m', '20m'] })).toEqual(['mend-match', 'open-wire', 'shorter-line']);
    // One wire against a counterpoise takes no open-wire line, and a length away from resonance has no match to mend.
    expect(ways(nonResonant)).toEqual(['tuner-at-feed-point', 'heavier-line', 'shorter-line']);
    const short: Answers = { ...doublet, lengthChoice: 'fixed', wireLengthM: 22 };
    expect(ways(short)).toEqual(['wider-line', 'longer-wire', 'shorter-line']);
    expect(ways({ ...short, feedLine: 'open-wire', wireLengthM: 12 })).toEqual(['longer-wire', 'shorter-line']);
  });

  test('a choke that stands high volts and stays cold is told of its volts, not of its heat', () => {
    const ways = (answers: Answers) => {
      const warning = found(answers, 'choke-at-voltage-maximum');
      return [Number(warning?.data.heatW) < 1, warning?.waysOut[0]?.code];
    };
    expect(ways({ ...offCentre, bands: ['80m', '40m', '20m', '10m'], powerW: 400, mode: 'cw' })).toEqual([
      true,
      'apart',
    ]);
    expect(ways(offCentre)[1]).not.toBe('apart');
  });

  test('thin wire is held against wind and ice, and weak wire says that it would part', () => {
    const thin = (answers: Answers): string => {
      const warning = found(answers, 'thin-wire')!;
      return render(warningWords['thin-wire'].why, warning.data, format);
    };
    expect(thin({ ...dipole, bands: ['10m'] })).toContain('it holds.');
    expect(thin({ ...endFed, wire: 'ptfe-awg22' })).toContain('it would part.');
  });
});

test('stops come first', () => {
  const order = ['stop', 'warn', 'note'];
  const found = warningsFor({ ...doublet, shackEnd: 'radio', spanM: 10 }).map(({ severity }) =>
    order.indexOf(severity),
  );
  expect(found).toEqual([...found].sort());
});

test('contradictory answers are kept and not held against the antenna', () => {
  const stops = warningsFor({ ...dipole, radialCount: 0, feedFraction: 0.1, returnPath: 'none' });
  expect(stops.filter(({ severity }) => severity === 'stop')).toEqual([]);
});

test('what only some countries allow is a note, and a power line at home waits for its operator', () => {
  const severityOf = (answers: Answers, id: string) => warningsFor(answers).find((each) => each.id === id)?.severity;
  expect(severityOf({ ...dipole, bands: ['160m'], focusMHz: { '160m': 1.9 } }, 'outside-band')).toBe('note');
  expect(severityOf({ ...dipole, focusMHz: { '40m': 7.25 } }, 'outside-band')).toBe('stop');
  expect(severityOf({ ...dipole, nearestPowerLineM: 20 }, 'power-line-too-near')).toBe('warn');
  expect(severityOf({ ...dipole, station: 'portable', nearestPowerLineM: 20 }, 'power-line-too-near')).toBe('stop');
});
