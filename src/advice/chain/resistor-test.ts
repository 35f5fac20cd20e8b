/**
 * The test of a wound transformer on the table: a resistor in place of the antenna, an analyser for 50 Ω in place of the radio.
 * The resistor is the nearest that is sold to 50 Ω times the ratio that the turns really give; the SWR expected is the designed box's own into
 * it, stray inductance and capacitor included. Core tolerance moves it little where the core does its work.
 */
import { complex } from '../../base/complex';
import { transformerHighInput, transformerInput } from '../../physics/component-curve';
import { swr } from '../../physics/line';
import { nearestE24Ohm } from '../../physics/preferred-values';
import { MAX_SWR } from '../../physics/transformer-evaluate';
import type { TransformerDesign } from '../../physics/transformer-need';
import type { ResistorTest } from '../device-finding';
import type { Facts } from '../facts';
import { SYSTEM_OHM } from '../line-run';
import { type TransformerTask, tabled } from './design-task';

export function resistorTest(
  { bands }: Facts,
  { need, turned }: TransformerTask,
  design: TransformerDesign,
): ResistorTest {
  const ratio = turned ? 1 / design.ratio : design.ratio;
  const resistorOhm = nearestE24Ohm(SYSTEM_OHM * ratio);
  // Where the antenna has the lower impedance, the coax meets the side of more turns.
  const inputAt = (turned ? transformerHighInput : transformerInput)(need, design);
  return {
    resistorOhm,
    goodSwr: MAX_SWR,
    bands: bands.map(({ band, focusMHz }) => ({
      band,
      swr: swr(inputAt(tabled(focusMHz * 1e6), complex(resistorOhm)), SYSTEM_OHM),
    })),
  };
}
