/** Plots of one message each, by hand and held against SVG files kept beside this test. */
import { describe, expect, test } from 'vitest';
import { ChokeOhms, chokeSquareOhm, type OhmsPoint } from '../../src/drawing/choke-ohms';
import { type LossAt, LossCurve, lossSquareW } from '../../src/drawing/loss-curve';
import { PowerTapes } from '../../src/drawing/power-tapes';
import { dipOf, goodStretches, SwrTape } from '../../src/drawing/swr-tape';
import { file, sound } from './svg-file';

describe('the SWR of one band', () => {
  const sweep = [
    { mhz: 7, swr: 3 },
    { mhz: 7.1, swr: 1 },
    { mhz: 7.2, swr: 2.5 },
  ];

  test('is good between the two places where it crosses 2:1', () => {
    const [[from, to] = [0, 0], ...others] = goodStretches(sweep);
    expect(others).toEqual([]);
    expect(from).toBeCloseTo(7.05, 6);
    expect(to).toBeCloseTo(7.1 + 0.1 / 1.5, 6);
  });

  test.each([
    { name: 'nowhere', swr: [3, 4, 5], good: [] },
    { name: 'everywhere, in one piece', swr: [1.5, 1.2, 1.9], good: [[7, 7.2]] },
    {
      name: 'at both ends',
      swr: [1, 3, 1],
      good: [
        [7, 7.05],
        [7.15, 7.2],
      ],
    },
  ])('good $name', ({ swr, good }) => {
    const stretches = goodStretches(swr.map((each, index) => ({ mhz: 7 + index / 10, swr: each })));
    expect(stretches.map((each) => each.map((mhz) => Math.round(mhz * 1000) / 1000))).toEqual(good);
  });

  test('still falling at an edge, the dip lies there or beyond', () => {
    expect(dipOf(sweep)).toEqual({ kind: 'at', mhz: 7.1 });
    expect(dipOf(sweep.slice(1))).toEqual({ kind: 'lower' });
    expect(dipOf(sweep.slice(0, 2))).toEqual({ kind: 'higher' });
    expect(dipOf([])).toBeNull();
  });

  test('as a tape', async () => {
    const tapeWords = { aim: 'yours 7.15', dip: 'dip 7.1', below: 'thick: under 2:1', ends: ['7', '7.2'] as const };
    const svg = file(
      <SwrTape
        lowMHz={7}
        highMHz={7.2}
        aimMHz={7.15}
        dipMHz={7.1}
        good={goodStretches(sweep)}
        words={tapeWords}
        label="SWR of 40 m"
      />,
    );
    sound(svg);
    await expect(svg).toMatchFileSnapshot('svg/swr-tape.svg');
  });
});

test('resistance and reactance of a choke, both named, every band bracketed', async () => {
  const spreadOf = (nominal: number) => ({ low: nominal * 0.6, nominal, high: nominal * 1.25 });
  const curve: OhmsPoint[] = [
    { atMHz: 7, rOhm: spreadOf(4000), xOhm: spreadOf(3000) },
    { atMHz: 14, rOhm: spreadOf(6000), xOhm: spreadOf(500) },
    { atMHz: 28, rOhm: spreadOf(3000), xOhm: spreadOf(-2500) },
  ];
  expect(chokeSquareOhm(curve)).toBe(2000);
  const bands = curve.map(({ atMHz, rOhm }) => ({ name: `${atMHz} MHz`, atMHz, rOhm }));
  const names = { resistance: 'resistance', reactance: 'reactance', needed: 'asked 5 kΩ' };
  const svg = file(<ChokeOhms curve={curve} bands={bands} neededOhm={5000} words={names} label="a choke" />);
  sound(svg);
  expect(svg.match(/>(resistance|reactance|asked 5 kΩ)</g)).toHaveLength(3);
  await expect(svg).toMatchFileSnapshot('svg/choke-ohms.svg');
});

describe('the loss of a transformer', () => {
  const loss = (atMHz: number, low: number, nominal: number, high: number): LossAt => ({
    atMHz,
    watts: { low, nominal, high },
  });
  const named = (point: LossAt) => ({ ...point, name: `${point.atMHz} MHz`, told: `${point.watts.nominal} W` });

  test('is to scale: an octave is half the width of two, and 12 W are six squares', async () => {
    const curve = [loss(7, 3, 4, 5), loss(14, 1, 2, 3), loss(28, 6, 8, 12)];
    const bands = [named(curve[0]), named(curve[2])];
    expect(lossSquareW({ curve, bands })).toBe(2);
    const svg = file(<LossCurve curve={curve} bands={bands} label="a transformer" />);
    sound(svg);
    // By hand: 26 px at each side of 280, floor at 150, 12 W in 120 px.
    expect(svg).toContain('d="M26 110L140 130L254 70"');
    expect(svg).toContain('d="M21 100h10M26 100V120M21 120h10"');
    expect(svg).toContain('d="M249 30h10M254 30V90M249 90h10"');
    expect(svg).toContain('cx="254" cy="70"');
    expect(svg.match(/>(4 W|8 W|7 MHz|28 MHz)</g)).toHaveLength(4);
    await expect(svg).toMatchFileSnapshot('svg/loss-curve.svg');
  });

  test('of a fraction of a watt stays near the floor', () => {
    const curve = [loss(7, 0.2, 0.3, 0.4), loss(14, 0.2, 0.3, 0.4)];
    expect(lossSquareW({ curve, bands: [] })).toBe(1);
    const svg = file(<LossCurve curve={curve} bands={curve.map(named)} label="a good transformer" />);
    // Four squares of 1 W in 120 px: 0.3 W is 9 px above the floor at 150.
    expect(svg).toContain('d="M26 141L254 141"');
  });

  test('with more bands than names fit names the lowest, the worst and the highest, and marks them all', () => {
    const curve = [3.6, 7.1, 10.1, 14.1, 18.1, 21.2, 28.5].map((mhz) => loss(mhz, 1, mhz === 10.1 ? 9 : 2, 10));
    const svg = file(<LossCurve curve={curve} bands={curve.map(named)} label="many bands" />);
    sound(svg);
    expect(svg.match(/<circle/g)).toHaveLength(7);
    expect(svg.match(/>[\d.]+ MHz</g)).toEqual(['>3.6 MHz<', '>10.1 MHz<', '>28.5 MHz<']);
  });
});

test('where 100 W go: filled as far as what is left, 2 px to a watt, a tick between devices and line where both have room', async () => {
  const tapes = [
    { name: '40 m', feedW: 70, devicesW: 10, told: '70 W' },
    { name: '10 m', feedW: 40, devicesW: 1, told: '40 W' },
  ];
  const svg = file(<PowerTapes tapes={tapes} label="two bands" />);
  sound(svg);
  // By hand: tapes begin at 58; 70 W are 140 px, and the tick stands at 58 + 2 · 80.
  expect(svg.match(/class="f" x="58" y="\d+" width="(140|80)"/g)).toHaveLength(2);
  expect(svg).toContain('d="M218 8v20"');
  expect(svg.match(/class="s"/g)).toHaveLength(1);
  await expect(svg).toMatchFileSnapshot('svg/power-tapes.svg');
});
