/** The frequency to cut for, band by band. A dial reading in kilohertz is asked about, not corrected. */
import { useState } from 'preact/hooks';
import { bandEdgesMHz } from '../../../catalog/bands';
import { answering } from '../../../words/en/answering';
import { bandName } from '../../../words/en/names';
import { readFrequencyField } from '../../fields/number-fields';
import { fieldText } from '../../fields/quantity-text';
import { useSay } from '../../say';
import type { BodyProps } from './body';
import { TypedField } from './typed-field';

export function FrequencyBody({ answers, draft, typed, onTyped, onAccept, onNext, onNotSure, accept }: BodyProps) {
  const say = useSay();
  const bands = draft.bands ?? [];
  const waiting = bands.find((each) => typed(`focusMHz.${each}`) !== undefined);
  const [chosen, choose] = useState(waiting ?? bands[0]);
  const band = bands.find((each) => each === chosen) ?? bands[0];
  if (band === undefined) return null;
  const edges = bandEdgesMHz(band, draft.region ?? 1, draft.country);
  const focus = answers.focusMHz ?? {};
  const value = focus[band];
  return (
    <>
      <fieldset>
        <legend class="vh">{say(answering.bandLabel)}</legend>
        <div class="segs wrap">
          {bands.map((each) => (
            <label key={each} class="seg">
              <input type="radio" name="band" checked={each === band} onChange={() => choose(each)} />
              <b>{bandName(each)}</b>
              <span class="small-in">{focus[each] ?? ''}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <TypedField
        key={band}
        label={bandName(band)}
        text={typed(`focusMHz.${band}`)}
        settledText={value === undefined ? undefined : fieldText({ kind: 'frequency', value }, 'metric', say.format)}
        hint={say(answering.bandFits, { low: edges.lowMHz, high: edges.highMHz })}
        padUnits={['MHz', 'kHz']}
        read={(text) => readFrequencyField(text, { bandName: bandName(band), edges })}
        onText={(text) => onTyped(`focusMHz.${band}`, text)}
        onQuantity={(quantity) => onAccept({ focusMHz: { ...focus, [band]: quantity.value } }, `focusMHz.${band}`)}
        onNext={onNext}
        onNotSure={onNotSure}
        accept={accept}
      />
    </>
  );
}
