/**
 * Where 100 W from the radio go: line, devices on the way through, ground with wire and shield chokes, and what is radiated. Decibels of line and
 * devices, and the radiated watts, are the plan's own; a device loss nobody knows yet counts as none.
 */
import type { Plan } from '../../../plan/plan-schema';

export interface Budget {
  readonly lineW: number;
  readonly devicesW: number | null;
  /** Left at the feed point. */
  readonly feedW: number;
  /** Null until the antenna is solved. */
  readonly nearW: number | null;
  readonly radiatedW: number | null;
}

type Row = Pick<Plan['bands'][number], 'lineLossDb' | 'deviceLossDb'>;
type Study = Pick<NonNullable<Plan['fieldStudy']>['bands'][number], 'radiatedW'>;

export function budgetOf({ lineLossDb, deviceLossDb }: Row, study: Study | null): Budget | null {
  if (lineLossDb === null) return null;
  const afterLineW = 100 * 10 ** (-lineLossDb / 10);
  const feedW = afterLineW * 10 ** (-(deviceLossDb ?? 0) / 10);
  const radiatedW = study?.radiatedW ?? null;
  return {
    lineW: 100 - afterLineW,
    devicesW: deviceLossDb === null ? null : afterLineW - feedW,
    feedW,
    nearW: radiatedW === null ? null : feedW - radiatedW,
    radiatedW,
  };
}
