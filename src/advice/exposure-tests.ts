/** Which limits each rule set asks for, for people who know of the exposure and for everybody else. */
import { exposureLimits, type LimitSetId, levelAt } from '../catalog/exposure-limits';
import type { RuleSet } from '../design/choices';
import { densityOfElectric, densityOfMagnetic } from '../physics/exposure-screen';
import type { ExposureLimit } from './finding';

export type Tier = 'knowing' | 'public';

const international: Readonly<Record<Tier, readonly LimitSetId[]>> = {
  knowing: ['icnirp-body-occupational', 'icnirp-local-occupational', 'icnirp-crest-occupational'],
  public: ['icnirp-body-public', 'icnirp-local-public', 'icnirp-crest-public'],
};

/** The Australian standard repeats the international levels: that it does is from memory, wherever those were read. */
export const limitSets: Readonly<Record<RuleSet, Readonly<Record<Tier, readonly LimitSetId[]>>>> = {
  'us-fcc': { knowing: ['us-controlled'], public: ['us-uncontrolled'] },
  'icnirp-2020': international,
  'eu-1999-519': { knowing: ['eu-workers', 'eu-workers-magnetic', 'eu-workers-crest'], public: ['eu-public'] },
  'ca-safety-code-6': {
    knowing: ['ca-controlled', 'ca-controlled-crest'],
    public: ['ca-uncontrolled', 'ca-uncontrolled-crest'],
  },
  'au-rps-s1': international,
};

export type FieldKind = 'electric' | 'magnetic' | 'power';

/** One limit to be met at one frequency. */
export interface ExposureTest {
  readonly set: LimitSetId;
  readonly kind: FieldKind;
  readonly limit: number;
  /** The same as power density of a plane wave, W/m². */
  readonly density: number;
  /** No averaging: the crest decides. */
  readonly onCrest: boolean;
}

export const densityOf = (kind: FieldKind, limit: number): number =>
  kind === 'electric' ? densityOfElectric(limit) : kind === 'magnetic' ? densityOfMagnetic(limit) : limit;

export function testsFor(ruleSet: RuleSet, tier: Tier, frequencyMHz: number): ExposureTest[] {
  const kinds: readonly FieldKind[] = ['electric', 'magnetic', 'power'];
  return limitSets[ruleSet][tier].flatMap((set) =>
    kinds.flatMap((kind): ExposureTest[] => {
      const limit = levelAt(exposureLimits[set].value[kind], frequencyMHz);
      if (limit === null) return [];
      const onCrest = exposureLimits[set].value.averagingMin === 0;
      return [{ set, kind, limit, density: densityOf(kind, limit), onCrest }];
    }),
  );
}

/** Every limit of a frequency as it is told, with how its number came in. */
export const limitsOn = (ruleSet: RuleSet, frequencyMHz: number): ExposureLimit[] =>
  (['knowing', 'public'] as const).flatMap((tier) =>
    testsFor(ruleSet, tier, frequencyMHz).map(({ set, kind, limit }) => {
      const { value, provenance, source } = exposureLimits[set];
      const isRepeated = ruleSet === 'au-rps-s1';
      return {
        tier,
        kind,
        limit,
        averagingMin: value.averagingMin,
        provenance: isRepeated ? 'memory' : provenance,
        source,
      };
    }),
  );
