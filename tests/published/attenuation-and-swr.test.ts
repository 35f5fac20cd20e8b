import { test } from 'vitest';
import { complex } from '../../src/base/complex';
import { hertz } from '../../src/base/convert';
import type { LineId } from '../../src/catalog/line-ids';
import { lines } from '../../src/catalog/lines';
import { lineDataOf } from '../../src/physics/catalogue-line';
import { attenuationDbPer100M, swr } from '../../src/physics/line';
import { gammaOfReturnLoss, gammaOfSwr, mismatchLossDb, returnLossDb, swrOfGamma } from '../../src/physics/mismatch';
import { expectPublished, published, titled } from '../fixtures/published-checks';

const METRES_PER_100_FEET = 30.48;

/** Which line of the catalogue an attenuation check speaks of. */
const lineOf: Readonly<Record<string, LineId>> = {
  'attenuation-01': 'foam-6.1mm',
  'attenuation-02': 'foam-6.1mm',
  'attenuation-04': 'foam-10.3mm',
  'attenuation-05': 'foam-10.3mm',
  'attenuation-06': 'foam-10.3mm',
  'attenuation-07': 'foam-15mm',
  'attenuation-08': 'foam-15mm',
  'attenuation-10': 'rg-58',
  'attenuation-11': 'rg-174',
  'attenuation-12': 'rg-58',
  'attenuation-13': 'rg-213',
  'attenuation-14': 'foam-10.2mm-flexible',
  'attenuation-15': 'rg-58',
  'attenuation-16': 'rg-58',
  'attenuation-17': 'rg-213',
  'attenuation-19': 'rg-142',
};

const checks = published('attenuation-and-swr.json');
const of = (prefix: string) => titled(checks.filter(({ id }) => id.startsWith(prefix)));

test.each(of('attenuation'))('%s', (_title, check) => {
  const line = lineDataOf(lines[lineOf[check.id]]);
  const per100M = attenuationDbPer100M(line, hertz(check.inputs.f_MHz as number));
  expectPublished(check, [check.unit === 'dB/100 ft' ? (per100M * METRES_PER_100_FEET) / 100 : per100M]);
});

test.each(of('swr-table'))('%s', (_title, check) => {
  const { SWR, RL_dB, R, Z0 } = check.inputs as Readonly<Record<string, number>>;
  if (SWR !== undefined) {
    const gamma = gammaOfSwr(SWR);
    expectPublished(check, [gamma, returnLossDb(gamma), mismatchLossDb(gamma)]);
  } else if (RL_dB !== undefined) {
    const gamma = gammaOfReturnLoss(RL_dB);
    expectPublished(check, [swrOfGamma(gamma), gamma]);
  } else {
    expectPublished(check, [swr(complex(R), Z0)]);
  }
});
