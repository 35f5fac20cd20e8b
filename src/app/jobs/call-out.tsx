/** A length to be read across two metres: the number, its unit as a word, the other unit below. Feet first puts feet large. */
import { feetInches, metricParts } from '../../base/format-length';
import { decimalText } from '../../words/decimal';
import { callOut } from '../../words/en/job-screens';
import { feetInchesText, metresText } from '../../words/length-text';
import { useSay } from '../say';
import { useStores } from '../stores/stores';

export function CallOut({ metres }: { readonly metres: number }) {
  const say = useSay();
  const metric = useStores().settings.units.value === 'metric';
  const shown = metricParts(metres);
  const { feet, inches, half } = feetInches(metres);
  if (metric) {
    return (
      <p class="call">
        <span class="num">{decimalText(shown.metres, shown.decimals)}</span>
        <span class="unit">{say(callOut.metres)}</span>
        <span class="feet nb">{feetInchesText(metres)}</span>
      </p>
    );
  }
  return (
    <p class="call">
      {feet > 0 && (
        <span class="num two">
          {feet} <small>{say(callOut.feet)}</small>
        </span>
      )}
      {(inches > 0 || half || feet === 0) && (
        <span class={feet > 0 ? 'num three' : 'num'}>
          {inches > 0 || !half ? inches : ''}
          {half ? '½' : ''} <small>{say(callOut.inches)}</small>
        </span>
      )}
      <span class="feet nb">{metresText(metres)}</span>
    </p>
  );
}
