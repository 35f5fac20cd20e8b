/**
 * The field study of one antenna: the operator's own wires over their own ground, with the outside of their coax as one more conductor, solved
 * on every wanted band. It gives field facts, which replace the values of the rules in the plan one by one.
 *
 * Order of the work: lengths, then currents and chokes at the focus of each band, gain and efficiency, SWR over the bands, and what the disputes
 * come to here. After each part the facts so far are handed out.
 */
import { chainOf } from '../advice/chain/chain';
import { type Dimensions, dimensionsOf } from '../advice/dimensions';
import { searchReachM } from '../advice/exposure';
import { type BandFacts, type Facts, factsOf, isNoSystem } from '../advice/facts';
import type { BandField, FieldFacts } from '../advice/field-facts';
import type { Link } from '../advice/finding';
import { InputError } from '../base/input-error';
import type { Band } from '../catalog/bands';
import type { Answers } from '../design/answers';
import {
  bandFieldOf,
  bandShield,
  bestPlacement,
  type PreparedBand,
  prepareBand,
  radiationOf,
  sweepOf,
} from './field/band-study';
import { houseChokes, searchPlaces } from './field/choke-places';
import { chooseChokes, resistive } from './field/choke-search';
import { settleDisputes } from './field/disputed';
import { type FieldSite, fieldSite, type PlacedChoke } from './field/field-site';
import type { FieldInstrument } from './field/instrument';
import { chokePlacesIn, ownedChokes } from './field/owned-chokes';
import { operate } from './field/shield-currents';
import { solveLengths } from './field/solved-lengths';
import { layoutOf } from './layout-of';

export interface StudyOptions {
  /** Told after every solution; `of` grows while more turns out to be needed. */
  readonly onProgress?: (done: number, of: number) => void;
  /** Facts so far, after each part of the work. */
  readonly onPartial?: (facts: FieldFacts) => void;
  /** Asked before and after every solution; a study called off throws InputError 'cancelled'. */
  readonly isCancelled?: () => boolean;
}

/** Null when there is nothing to solve: no antenna chosen, or one whose shape is not known. */
export async function studyField(
  answers: Answers,
  instrument: FieldInstrument,
  options: StudyOptions = {},
): Promise<FieldFacts | null> {
  if (answers.radiator === undefined) return null;
  const facts = factsOf(answers);
  if (isNoSystem(facts)) return null;
  const watched = watch(instrument, options);
  const lengths = await orNull(solveLengths(facts, dimensionsOf(facts), watched));
  const solved = lengths === null ? {} : { lengths };
  const dimensions = dimensionsOf(facts, solved);
  const chain = chainOf(facts, dimensions);
  return studyChokes({ facts, dimensions, chain, solved }, watched, options);
}

/** The antenna as far as it is decided. */
interface Decided {
  readonly facts: Facts;
  readonly dimensions: Dimensions;
  readonly chain: readonly Link[];
  readonly solved: Pick<FieldFacts, 'lengths'>;
}

/** The instrument with progress counted and cancelling looked after. */
function watch(instrument: FieldInstrument, { onProgress, isCancelled }: StudyOptions): FieldInstrument {
  let done = 0;
  let of = 0;
  const counted = async <T>(work: () => Promise<T>): Promise<T> => {
    if (isCancelled?.()) throw new InputError('cancelled');
    of++;
    const result = await work();
    done++;
    onProgress?.(done, of);
    if (isCancelled?.()) throw new InputError('cancelled');
    return result;
  };
  return {
    prepare: (geometry, frequenciesHz) => counted(() => instrument.prepare(geometry, frequenciesHz)),
    solve: (geometry) => counted(() => instrument.solve(geometry)),
    withLoads: instrument.withLoads,
  };
}

/** A band whose wires the solver refuses is left to the rules; being called off is no such refusal. */
async function orNull<T>(work: Promise<T>): Promise<T | null> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof InputError && error.code !== 'cancelled') return null;
    throw error;
  }
}

async function onEach<T>(
  bands: readonly BandFacts[],
  work: (at: BandFacts) => Promise<T>,
): Promise<readonly { readonly at: BandFacts; readonly found: T }[]> {
  const all = await Promise.all(bands.map(async (at) => ({ at, found: await orNull(work(at)) })));
  return all.flatMap(({ at, found }) => (found === null ? [] : [{ at, found }]));
}

async function studyChokes(
  { facts, dimensions, chain, solved }: Decided,
  instrument: FieldInstrument,
  { onPartial }: StudyOptions,
): Promise<FieldFacts | null> {
  const layout = layoutOf(facts, dimensions);
  if (layout === null) return null;
  const house = houseChokes(facts, dimensions);
  const places = searchPlaces(facts, house);
  const portsM = [...house.map(({ distanceM }) => distanceM), ...places.antennaM, ...places.furtherM];
  const site = fieldSite(layout, facts.settled.ground, portsM);
  if (site === null) return null;
  const ready = (await onEach(facts.bands, (at) => prepareBand(instrument, site, at))).map(({ found }) => found);
  if (ready.length === 0) return null;
  const shields = ready.map((band) => bandShield(instrument, site, band));
  const chokes = chooseChokes(house, places, shields);
  const planned = resistive(chokes?.chosen.chokes ?? []);
  const known = { ...solved, ...(chokes === null ? {} : { chokes }) };
  const found = collect(bandsAtFocus(facts, chain, site, instrument, ready, planned), known, onPartial);
  const plannedSite =
    fieldSite(
      layout,
      facts.settled.ground,
      planned.map(({ distanceM }) => distanceM),
    ) ?? site;
  const bands = ready.map(({ at }) => at);
  found.add(
    await onEach(bands, (at) => radiationOf(instrument, plannedSite, at, planned, searchReachM(facts, dimensions, at))),
  );
  found.add(await onEach(bands, (at) => sweepOf(instrument, plannedSite, at, planned)));
  const disputes = await orNull(
    settleDisputes(
      {
        facts,
        layout,
        chain,
        planned,
        ready,
        shieldOn: (band) => bandShield(instrument, site, band),
        feedPoints: ready.map(({ at, prepared }) => ({
          mhz: at.focusMHz,
          z: operate(instrument, site, prepared, planned).z,
        })),
      },
      instrument,
    ),
  );
  return { ...found.facts(), ...(disputes === null ? {} : { disputes }) };
}

function bandsAtFocus(
  facts: Facts,
  chain: readonly Link[],
  site: FieldSite,
  instrument: FieldInstrument,
  ready: readonly PreparedBand[],
  planned: readonly PlacedChoke[],
): readonly Found[] {
  const placed = bestPlacement(instrument, site, ready, ownedChokes(facts), chokePlacesIn(chain));
  return ready.map((band) => ({ at: band.at, found: bandFieldOf(instrument, site, band, planned, placed) }));
}

interface Found {
  readonly at: BandFacts;
  readonly found: BandField;
}

/** Gathers what each part of the work adds to a band, and hands out the whole after each. */
function collect(
  first: readonly Found[],
  known: Pick<FieldFacts, 'lengths' | 'chokes'>,
  onPartial: StudyOptions['onPartial'],
) {
  const bands: Partial<Record<Band, BandField>> = {};
  const facts = (): FieldFacts => ({ bands: { ...bands }, ...known });
  const add = (more: readonly Found[]): void => {
    for (const { at, found } of more) bands[at.band] = { ...bands[at.band], ...found };
    onPartial?.(facts());
  };
  add(first);
  return { add, facts };
}
