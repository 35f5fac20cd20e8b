/** The field for the dip, with keys for thumbs, the last value beside it, and every doubt asked in place. What was typed stays. */
import { useState } from 'preact/hooks';
import type { SavedPlan } from '../../../design/saved-plan';
import { bandName } from '../../../words/en/names';
import { trimScreen } from '../../../words/en/trim-screen';
import { readSwr } from '../../fields/read-swr';
import { NumberPad } from '../../parts/number-pad';
import { StopPanel, type Way } from '../../parts/stop-panel';
import { go } from '../../router';
import { to } from '../../routes';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { type DipReading, readDip } from './read-dip';
import { dipField, measuredOn, mhzText, ownWireText, readField, wireInUseM } from './trim-state';
import type { TrimTarget } from './trim-targets';

interface DipFieldProps {
  readonly saved: SavedPlan;
  readonly target: TrimTarget;
  readonly targets: readonly TrimTarget[];
  onTaken(): void;
}

export function DipField({ saved, target, targets, onTaken }: DipFieldProps) {
  const say = useSay();
  const { library } = useStores();
  const [doubt, setDoubt] = useState<DipReading | null>(null);
  const [swrText, setSwrText] = useState('');
  const [swrWrong, setSwrWrong] = useState(false);
  const field = dipField(target);
  const text = saved.typed[field]?.text ?? '';
  const last = measuredOn(saved, target).at(-1);
  const band = bandName(target.band);

  const type = (typed: string): void => {
    setDoubt(null);
    library.edit(saved.id, { kind: 'typed', field, text: typed });
  };
  const take = (megahertz: number): void => {
    const swr = readSwr(swrText);
    if (swr === null) {
      setSwrWrong(true);
      return;
    }
    const wireM = wireInUseM(saved, target, targets);
    const ownText = target.inner.length === 0 ? null : ownWireText(saved, target, targets, wireM);
    const measurement = { id: crypto.randomUUID(), at: Date.now(), band: target.band, dipMHz: megahertz, wireM };
    library.edit(
      saved.id,
      { kind: 'measured', measurement: swr === undefined ? measurement : { ...measurement, swr } },
      { kind: 'typed', field, text: '' },
      ...(ownText === null ? [] : [{ kind: 'typed', field: readField(target), text: ownText } as const]),
      { kind: 'progress', job: 'trim', step: 'measure' },
    );
    setDoubt(null);
    setSwrText('');
    onTaken();
  };
  const enter = (): void => {
    const reading = readDip(text, target, targets);
    if (reading.kind === 'dip') take(reading.megahertz);
    else setDoubt(reading);
  };
  return (
    <form
      class="typed"
      onSubmit={(event) => {
        event.preventDefault();
        enter();
      }}
    >
      <label for="dip">{say(trimScreen.dipOn, { band })}</label>
      <div class="with-last">
        <input
          id="dip"
          class="number"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          aria-describedby={doubt === null ? 'last' : 'dip-doubt'}
          onInput={(event) => type(event.currentTarget.value)}
        />
        {last !== undefined && (
          <span id="last" class="small">
            {say(trimScreen.last, { mhz: mhzText(last.dipMHz) })}
          </span>
        )}
      </div>
      {doubt !== null && (
        <Doubt
          doubt={doubt}
          text={text}
          band={band}
          onTake={take}
          onType={() => type('')}
          onBand={(other) => go(to.job(saved.id, 'trim', other))}
        />
      )}
      <NumberPad units={[]} text={text} settled={false} onText={type} on />
      <label for="swr">{say(trimScreen.swrLabel, { mhz: mhzText(target.workMHz) })}</label>
      <input
        id="swr"
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={swrText}
        aria-describedby={swrWrong ? 'swr-wrong' : undefined}
        onInput={(event) => {
          setSwrText(event.currentTarget.value);
          setSwrWrong(false);
        }}
      />
      {swrWrong && (
        <p class="stop" role="alert" id="swr-wrong">
          {say(trimScreen.swrWrong)}
        </p>
      )}
      <button type="submit" class="btn go">
        {say(trimScreen.enter)}
      </button>
    </form>
  );
}

interface DoubtProps {
  readonly doubt: DipReading;
  readonly text: string;
  readonly band: string;
  onTake(megahertz: number): void;
  onType(): void;
  onBand(band: string): void;
}

function Doubt({ doubt, text, band, onTake, onType, onBand }: DoubtProps) {
  const say = useSay();
  const again: Way = { words: say(trimScreen.typeAgain), act: onType };
  const id = 'dip-doubt';
  switch (doubt.kind) {
    case 'dip':
      return null;
    case 'empty':
      return (
        <p class="stop" role="alert" id={id}>
          {say(trimScreen.empty)}
        </p>
      );
    case 'not-a-number':
      return <StopPanel id={id} words={say(trimScreen.notNumber, { text })} ways={[again]} />;
    case 'unit': {
      const ways = doubt.megahertz.map(
        (mhz): Way => ({ words: say(trimScreen.meant, { mhz: mhzText(mhz) }), act: () => onTake(mhz) }),
      );
      return <StopPanel id={id} words={say(trimScreen.unitDoubt, { text, band })} ways={[...ways, again]} />;
    }
    case 'far': {
      const { megahertz, onBand: other } = doubt;
      const mhz = mhzText(megahertz);
      const ways: Way[] = [
        ...(other === null
          ? []
          : [{ words: say(trimScreen.isOn, { band: bandName(other.band) }), act: () => onBand(other.band) }]),
        { words: say(trimScreen.yesIs, { mhz }), act: () => onTake(megahertz) },
        again,
      ];
      return <StopPanel id={id} words={say(trimScreen.far, { mhz, band })} ways={ways} />;
    }
  }
}
