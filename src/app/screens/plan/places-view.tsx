/** The places of this site where people may be, each with its part of the limit, and which limits were written from memory. */
import type { Plan } from '../../../plan/plan-schema';
import { type WorstAtPlace, worstAtPlaces } from '../../../plan/worst-at-places';
import { fieldName, placeName, placesWords } from '../../../words/en/exposure';
import { bandName } from '../../../words/en/names';
import { planScreen } from '../../../words/en/plan-screen';
import { ColumnTable } from '../../parts/column-table';
import { useSay } from '../../say';

interface ExposureProps {
  readonly exposure: Plan['exposure'];
}

export function PlacesView({ exposure }: ExposureProps) {
  const say = useSay();
  const places = worstAtPlaces(exposure);
  if (places.length === 0) return null;
  return (
    <>
      <h3>{say(placesWords.head)}</h3>
      <p>{say(placesWords.intro)}</p>
      <ColumnTable
        class="people places"
        heads={[say(placesWords.place), say(planScreen.knowing), say(planScreen.anyone)]}
        rows={places.map(({ place, knowing, everyone }) => ({
          key: place,
          name: placeName(place),
          cells: [<AtPlace key="knowing" {...knowing} />, <AtPlace key="everyone" {...everyone} />],
        }))}
      />
      <p class="small">{say(placesWords.watts)}</p>
    </>
  );
}

function AtPlace({ band, part, mostW }: WorstAtPlace['knowing']) {
  const say = useSay();
  const data = { percent: 100 * part, band: bandName(band), mostW };
  return part > 1 ? <b>{say(placesWords.over, data)}</b> : <span>{say(placesWords.cell, data)}</span>;
}

/** Nothing where every limit was read in its source. */
export function RecalledLimits({ exposure }: ExposureProps) {
  const say = useSay();
  const recalled = exposure.flatMap(({ limits }) => limits.filter(({ provenance }) => provenance === 'memory'));
  const lines = recalled.map(({ tier, kind, averagingMin }) =>
    say(averagingMin === 0 ? placesWords.recalledCrest : placesWords.recalledLine, {
      tier,
      field: fieldName(kind),
      minutes: averagingMin,
    }),
  );
  return lines.length === 0 ? null : <p>{say(placesWords.recalled, { limits: [...new Set(lines)].join('; ') })}</p>;
}
