/** Words of the field study that no solution is needed for: where chokes are counted from, and noise weaker and stronger. */
import { describe, expect, test } from 'vitest';
import { chokeSetText, fieldWords, placedText } from '../../src/words/en/field';
import { createFormat } from '../../src/words/format';
import { render } from '../../src/words/message';

const format = createFormat('metric');
const set = [
  { distanceM: 20.7, ohm: 5000 },
  { distanceM: 0, ohm: 1000 },
];

describe('a set of chokes', () => {
  test('is told in order along the coax, counted from the box where there is one', () => {
    expect(chokeSetText(set, true, format)).toMatch(/^1 kΩ at the box, 5 kΩ at 20\.7.m.* along the coax from the box$/);
    expect(chokeSetText(set, false, format)).toMatch(/^1 kΩ at the feed point, 5 kΩ at 20\.7.m.* from the feed point$/);
  });

  test('that stands at the box alone is counted from nothing', () => {
    expect(placedText([{ name: '20 beads', distanceM: 0 }], true, format)).toBe('20 beads at the box');
  });
});

const said = (code: keyof typeof fieldWords, data: Parameters<typeof render>[1]): string =>
  render(fieldWords[code], data, format);

test.each([
  [{ houseDb: 43, outdoorsDb: -2 }, /from the house reaches the receiver 43 dB weaker .* outdoors 2 dB stronger\.$/],
  [{ houseDb: 0 }, /from the house reaches the receiver no weaker on 40 m than with none\.$/],
  [{ houseDb: 12, isPortable: true }, /from where you operate reaches the receiver 12 dB weaker/],
])('noise: %o', (data, expected) => {
  expect(said('reception', { band: '40m', ...data })).toMatch(expected);
});

test.each([
  [{ distanceM: 0, hasBox: true }, /^The choke at the box stands/],
  [{ distanceM: 0, hasBox: false }, /^The choke at the feed point stands/],
  [{ distanceM: 4.11, hasBox: true }, /^The choke 4\.11.m.* down the coax stands/],
])('duty of a choke: %o', (data, expected) => {
  expect(said('choke-duty', { band: '40m', voltageV: 210, heatW: 3, ...data })).toMatch(expected);
});

test('currents at the radio are told only where there is one beyond the entry', () => {
  const currents = { band: '40m', powerW: 100, noneMa: 200, plannedMa: 5, noneRadioMa: 100, plannedRadioMa: 2 };
  expect(said('shield-currents', { ...currents, hasRadio: false })).not.toMatch(/radio/);
  expect(said('shield-currents', { ...currents, hasRadio: true })).toMatch(
    /At the radio about 100 mA and about 2 mA\.$/,
  );
  const owned = { ...currents, hasRadio: true, ownedMa: 20, ownedRadioMa: 9 };
  expect(said('shield-currents', owned)).toMatch(/what you own about 20 mA\. .* with your own about 9 mA\.$/);
});

test('chokes left out of the trial are counted', () => {
  expect(said('owned-untried', { count: 1 })).toMatch(/^1 choke of yours .* was not tried/);
  expect(said('owned-untried', { count: 3 })).toMatch(/^3 chokes of yours .* were not tried/);
});
