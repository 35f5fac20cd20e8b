import { practice, recalled, type Sourced } from './sourced';

/** Plugs on amateur coax: the peak voltage and the average power at HF that they stand. Null: not the limit in practice. */
export const connectorIds = ['uhf-plug', 'bnc'] as const;
export type ConnectorId = (typeof connectorIds)[number];

export interface Connector {
  readonly id: ConnectorId;
  readonly peakVoltageV: Sourced | null;
  readonly powerW: Sourced | null;
}

export const connectors: Readonly<Record<ConnectorId, Connector>> = {
  'uhf-plug': { id: 'uhf-plug', peakVoltageV: recalled(500, 'engineering-judgement'), powerW: null },
  bnc: {
    id: 'bnc',
    peakVoltageV: recalled(500, 'engineering-judgement'),
    powerW: practice(150, 'engineering-judgement'),
  }, // 100 to 200 W
};
