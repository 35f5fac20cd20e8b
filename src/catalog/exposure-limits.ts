/**
 * Limits on electric and magnetic fields where people may be, 1.8 to 54 MHz: level = a · f^b, f in MHz; E in V/m, H in A/m, both rms, S in W/m².
 * `averagingMin` 0 means that the level holds for the crest of a transmission and knows no averaging.
 *
 * Read in the source: the US rule, ICNIRP local levels (table 6) and stimulation levels, the European levels for workers. From memory, checked by
 * continuity at the joins only: ICNIRP whole-body levels, 1999/519/EC, Safety Code 6, and that the Australian standard repeats ICNIRP's numbers.
 * A rule set is a planning aid: national law may be stricter.
 */
import type { RuleSet } from '../design/choices';
