/** The exposure limits that stand first where the operator lives. The operator may choose another set. */
import type { RuleSet } from '../design/choices';

const europeanUnion: readonly string[] =
  'AT BE BG HR CY CZ DK EE FI FR DE GR HU IE IT LV LT LU MT NL PL PT RO SK SI ES SE'.split(' ');

export function defaultRuleSet(country: string | null): RuleSet {
  if (country === null) return 'icnirp-2020';
  if (country === 'US') return 'us-fcc';
  if (country === 'CA') return 'ca-safety-code-6';
  if (country === 'AU') return 'au-rps-s1';
  return europeanUnion.includes(country) ? 'eu-1999-519' : 'icnirp-2020';
}
