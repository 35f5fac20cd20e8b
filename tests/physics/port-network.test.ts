import { describe, expect, test } from 'vitest';
import { complex } from '../../src/base/complex';
import { InputError } from '../../src/base/input-error';
import { excite, type OpenAntenna, stateAt } from '../../src/physics/port-network';

/** One gap, one load, one probe: the gap's current goes on through the load, and half of it past the probe. */
const y = {
  count: 3,
  driven: 2,
  re: Float64Array.of(0.02, 0.01, 0.01, 0.02, 0.01, 0.005),
  im: new Float64Array(6),
};
const antenna: OpenAntenna = {
  frequenciesHz: Float64Array.of(7e6),
  gapVolts: [complex(1)],
  loadOhms: [complex(50)],
  probeIds: ['entry'],
  portCount: 3,
  yRe: y.re,
  yIm: y.im,
};

describe('an antenna seen from its ports', () => {
  test('follows the bilinear law of one load', () => {
    const { currents, volts } = excite(y, { gapVolts: [complex(1)], loadOhms: [complex(50)] });
    // I_L = Y_LG V / (1 + Y_LL Z) = 0.01 / 2; I_G = 0.02 - 0.01 * 50 * 0.005.
    expect(currents[1]?.re).toBeCloseTo(0.005, 12);
    expect(currents[0]?.re).toBeCloseTo(0.0175, 12);
    expect(volts[1]?.re).toBeCloseTo(-0.25, 12);
    expect(stateAt(antenna, 0, [complex(50)]).feed.impedance.re).toBeCloseTo(1 / 0.0175, 9);
  });

  test.each([
    ['a load more than it has', () => stateAt(antenna, 0, [complex(50), complex(50)])],
    ['a load less', () => stateAt(antenna, 0, [])],
    ['a frequency that was not solved', () => stateAt(antenna, 1, [complex(50)])],
    ['a gap more', () => excite(y, { gapVolts: [complex(1), complex(1)], loadOhms: [complex(50)] })],
    [
      'numbers that are missing',
      () => excite({ ...y, im: new Float64Array(5) }, { gapVolts: [complex(1)], loadOhms: [complex(50)] }),
    ],
  ])('refuses %s instead of counting with nothing', (_, act) => {
    expect(act).toThrow(InputError);
  });
});
