/**
 * The field study of one antenna: the operator's own wires over their own ground, with the outside of their coax as one more conductor, solved
 * on every wanted band. It gives field facts, which replace the values of the rules in the plan one by one.
 *
 * Order of the work: lengths, then currents and chokes at the focus of each band, SWR over the bands, gain and near fields, and what the disputes
 * come to here. After each part the facts so far are handed out.
 */
import { chainOf } from '../advice/chain/chain';
import { type Dimensions, dimensionsOf } from '../advice/dimensions';
import { searchReachM } from '../advice/exposure';
import { type BandFacts, type Facts, factsOf, isNoSystem } from '../advice/facts';
import type { BandField, ChokeChoice, FieldFacts } from '../advice/field-facts';
import type { Link } from '../advice/finding';
import { knowing } from '../advice/solved-facts';
import type { Band } from '../catalog/band-ids';
import type { Answers } from '../design/answers';
import type { Layout } from '../geometry/layout';
import { bandFieldOf, bandShield, type PreparedBand, prepareBand, radiationOf, sweepOf } from './field/band-study';
import { houseChokes, searchPlaces } from './field/choke-places';
import { chooseChokes, resistive } from './field/choke-search';
import { type Studied, settleDisputes } from './field/disputed';
import type { PlacedChoke } from './field/field-site';
import type { FieldInstrument } from './field/instrument';
import { bestPlacement, ownedChokes } from './field/owned-chokes';
import { operate } from './field/shield-currents';
import { type SiteOn, sitesOn } from './field/sites-on';
import { solveLengths } from './field/solved-lengths';
import { type OnBand, onEach, orNull, type StudyOptions, watch } from './field/watched';
import { layoutOf } from './layout-of';

/** Null when there is nothing to solve: no antenna chosen, or one whose shape is not known. */
export async function studyField(
  answers: Answers,
  instrument: FieldInstrument,
  options: StudyOptions = {},
): Promise<FieldFacts | null> {
  if (answers.radiator === undefined) return null;
  const asked = factsOf(answers);
  if (isNoSystem(asked)) return null;
  const watched = watch(instrument, options);
  const lengths = await orNull(solveLengths(asked, dimensionsOf(asked), watched));
  const solved = lengths === null ? {} : { lengths };
  const facts = knowing(asked, solved.lengths);
  const dimensions = dimensionsOf(facts, solved);
  const chain = chainOf(facts, dimensions);
  return studyBands({ facts, dimensions, chain, solved }, watched, options);
}

/** The antenna as far as it is decided. */
interface Decided {
  readonly facts: Facts;
  readonly dimensions: Dimensions;
  readonly chain: readonly Link[];
  readonly solved: Pick<FieldFacts, 'lengths'>;
}

/** The antenna on every band with all choke places open, and the chokes that were chosen. */
interface Opened {
  readonly layout: Layout;
  readonly siteOn: SiteOn;
  readonly ready: readonly PreparedBand[];
  readonly chokes: ChokeChoice | null;
  readonly planned: readonly PlacedChoke[];
}

async function open({ facts, dimensions }: Decided, instrument: FieldInstrument): Promise<Opened | null> {
  const layout = layoutOf(facts, dimensions);
  if (layout === null) return null;
  const house = houseChokes(facts, dimensions);
  const places = searchPlaces(facts, house);
  const portsM = [...house.map(({ distanceM }) => distanceM), ...places.antennaM, ...places.furtherM];
  const siteOn = sitesOn(facts, dimensions, portsM);
  if (siteOn === null) return null;
  const ready = (await onEach(facts.bands, (at) => prepareBand(instrument, siteOn(at), at), instrument.rest)).map(
    ({ found }) => found,
  );
  if (ready.length === 0) return null;
  const chokes = chooseChokes(house, places, ready.map(bandShield));
  return { layout, siteOn, ready, chokes, planned: resistive(chokes?.chosen.chokes ?? []) };
}

async function studyBands(
  decided: Decided,
  instrument: FieldInstrument,
  { onPartial }: StudyOptions,
): Promise<FieldFacts | null> {
  const { facts, dimensions, solved } = decided;
  const opened = await open(decided, instrument);
  if (opened === null) return null;
  const { ready, chokes, planned } = opened;
  const owned = bestPlacement(ready, ownedChokes(facts), plannedPlaces(opened));
  const known = {
    ...solved,
    ...(chokes === null ? {} : { chokes }),
    ...(owned === null ? {} : { ownedUntried: owned.untried }),
  };
  const atFocus = ready.map((band) => ({
    at: band.at,
    found: bandFieldOf(band, chokes?.chosen.chokes ?? [], owned?.placed ?? null),
  }));
  const found = collect(atFocus, known, onPartial);
  const siteOn = sitesOn(facts, dimensions, plannedPlaces(opened)) ?? opened.siteOn;
  const bands = ready.map(({ at }) => at);
  const reachM = (at: BandFacts): number => searchReachM(facts, dimensions, at);
  found.add(await onEach(bands, (at) => sweepOf(instrument, siteOn(at), at, planned), instrument.rest));
  found.add(await onEach(bands, (at) => radiationOf(instrument, siteOn(at), at, planned, reachM(at)), instrument.rest));
  const disputes = await orNull(settleDisputes(asStudied(decided, opened), instrument));
  return { ...found.facts(), ...(disputes === null ? {} : { disputes }) };
}

const plannedPlaces = ({ planned }: Opened): readonly number[] => planned.map(({ distanceM }) => distanceM);

const asStudied = ({ facts, chain }: Decided, { layout, ready, planned }: Opened): Studied => ({
  facts,
  layout,
  chain,
  planned,
  ready,
  feedPoints: ready.map(({ at, coax }) => ({ mhz: at.focusMHz, z: operate(coax, planned).z })),
});

/** Gathers what each part of the work adds to a band, and hands out the whole after each. */
function collect(
  first: readonly OnBand<BandField>[],
  known: Pick<FieldFacts, 'lengths' | 'chokes' | 'ownedUntried'>,
  onPartial: StudyOptions['onPartial'],
) {
  const bands: Partial<Record<Band, BandField>> = {};
  const facts = (): FieldFacts => ({ bands: { ...bands }, ...known });
  const add = (more: readonly OnBand<BandField>[]): void => {
    for (const { at, found } of more) bands[at.band] = { ...bands[at.band], ...found };
    onPartial?.(facts());
  };
  add(first);
  return { add, facts };
}
