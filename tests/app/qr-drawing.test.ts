import { decodeQR } from 'qr/decode.js';
import { describe, expect, test } from 'vitest';
import { codeIn, planAddress } from '../../src/app/handover/plan-address';
import { type QrDrawing, qrDrawing } from '../../src/app/handover/qr-drawing';
import { bandIds } from '../../src/catalog/band-ids';
import type { Answers } from '../../src/design/answers';
import { readLink } from '../../src/storage/plan-link';

const page = 'https://halyard.example/field/';

const short: Answers = { bands: ['40m', '20m'], radiator: 'inverted-v', fedAt: 'centre', shackEnd: 'radio' };

/** Every question answered, most of them with the longest answer there is. Invented. */
const long: Answers = {
  bands: [...bandIds],
  radiator: 'inverted-l',
  fedAt: 'off-centre',
  shackEnd: 'feed-point-tuner',
  name: 'Wiese hinter dem Übungsplatz, zweiter Versuch mit langem Draht am Turm, Süd',
  units: 'imperial',
  region: 1,
  country: 'DE',
  ruleSet: 'ca-safety-code-6',
  station: 'portable',
  indoors: false,
  focusMHz: { '80m': 3.6125, '40m': 7.1255, '30m': 10.1365, '20m': 14.2275, '15m': 21.2855, '10m': 28.4955 },
  powerW: 100.5,
  mode: 'voice',
  transmitShare: 0.35,
  feedFraction: 0.1425,
  lengthChoice: 'non-resonant',
  wireLengthM: 41.275,
  spanM: 44.1325,
  heightM: 10.3575,
  endHeightM: 2.6675,
  supportHeightM: 11.4375,
  wire: 'copper-1.6mm-bare',
  ground: 'average',
  returnPath: 'ground-radials',
  radialCount: 16,
  radialLengthM: 5.1435,
  counterpoiseM: 5.1435,
  feedLine: 'rg-213',
  feedLineLengthM: 22.8625,
  feedLineRoute: 'square',
  runHeightM: 0.3575,
  entryDistanceM: 20.1175,
  houseEarth: 'earth',
  rfInShack: true,
  nearestPersonM: 6.4025,
  nearestPowerLineM: 41.1475,
};

/** The drawing as a camera sees it: dark on light, each module some pixels wide. */
function seen({ size, path }: QrDrawing, pixels: number) {
  const side = size * pixels;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)) {
    for (let py = 0; py < pixels; py++) {
      const from = ((Number(y) * pixels + py) * side + Number(x) * pixels) * 4;
      data.fill(0, from, from + Number(length) * pixels * 4);
    }
  }
  for (let at = 3; at < data.length; at += 4) data[at] = 255;
  return { width: side, height: side, data };
}

describe.each([
  ['four answers', short],
  ['every question answered', long],
])('%s', (_name, answers) => {
  test('become a code that reads back as the same answers', async () => {
    const address = planAddress(answers, page);
    const drawing = await qrDrawing(address);
    const read = decodeQR(seen(drawing, 4));
    expect(read).toBe(address);
    expect(readLink(codeIn(read) ?? '')).toEqual({ schema: 1, ...answers });
  });

  test('a module is no smaller than 3 px on a screen 360 px wide', async () => {
    const { size } = await qrDrawing(planAddress(answers, page));
    expect(328 / size).toBeGreaterThanOrEqual(3);
  });

  test('four modules stay empty all round', async () => {
    const { size, path } = await qrDrawing(planAddress(answers, page));
    for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)/g)) {
      expect(Number(x)).toBeGreaterThanOrEqual(4);
      expect(Number(y)).toBeGreaterThanOrEqual(4);
      expect(Number(x) + Number(length)).toBeLessThanOrEqual(size - 4);
      expect(Number(y)).toBeLessThan(size - 4);
    }
  });
});

test('parts on hand stay at home', () => {
  const address = planAddress({ ...short, onHand: [{ part: 'core', core: 'ft240-31', count: 2 }] }, page);
  expect(address).toBe(planAddress(short, page));
});

test.each([
  'https://halyard.example/#/receive/v1~b40m~sradio~~abc',
  'Our antenna: https://halyard.example/#/receive/v1~b40m~sradio~~abc see you there',
  ' v1~b40m~sradio~~abc\n',
  'halyard.example/field/#/receive/v1~b40m~sradio~~abc',
])('a link is found in %j', (text) => {
  expect(codeIn(text)).toBe('v1~b40m~sradio~~abc');
});

test.each(['', 'https://halyard.example/', 'WIFI:S:field;;', 'v1 is out', '#/receive/'])(
  'no link is found in %j',
  (text) => {
    expect(codeIn(text)).toBeNull();
  },
);
