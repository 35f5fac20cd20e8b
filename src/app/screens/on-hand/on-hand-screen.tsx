/** The operator's own parts. Each plan checks them against its need. */
import { signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { OwnedPart } from '../../../design/owned-part';
import { partKinds, onHand as words } from '../../../words/en/places';
import { shell } from '../../../words/en/screens';
import { partText } from '../../answer-text';
import { Icon } from '../../parts/icon';
import { SaveNote, SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { PartEditor, partFormId } from './part-editor';
import { type PartKind, partKindIds, startingValues, type Values, valuesOf } from './part-form';
import './on-hand.css';

/** What is being written: kept while other screens are looked at. */
export interface PartDraft {
  /** The part on the list that is changed; null for a new one. */
  readonly owned: OwnedPart | null;
  readonly kind: PartKind;
  readonly values: Values;
}
const draft = signal<PartDraft | null>(null);
const choosing = signal(false);
const removed = signal<OwnedPart | null>(null);

export function OnHandScreen() {
  const say = useSay();
  const { parts } = useStores();
  const list = parts.parts.value;
  const unreadable = parts.unreadable.value.length;
  const open = draft.value;
  const toKinds = (isChoosing: boolean): void => {
    choosing.value = isChoosing;
  };
  const close = (): void => {
    draft.value = null;
  };
  return (
    <>
      <Top title={say(words.title)}>
        <SaveNote />
      </Top>
      <main id="main">
        <SaveTrouble />
        {open === null && !choosing.value && (
          <>
            <p>{say(words.meaning)}</p>
            <Removed />
            <PartList list={list} />
            {unreadable > 0 && <p class="stop">{say(words.unreadable, { count: unreadable })}</p>}
          </>
        )}
        {open === null && choosing.value && <KindChoice />}
        {open !== null && (
          <PartEditor
            draft={open}
            onValues={(values) => {
              draft.value = { ...open, values };
            }}
            onPart={(part) => {
              void (open.owned === null ? parts.add(part) : parts.put({ ...open.owned, part }));
              close();
            }}
            onCancel={close}
          />
        )}
      </main>
      <section class="act" aria-label={say(shell.actions)}>
        {open === null && !choosing.value && (
          <button type="button" class="btn go" onClick={() => toKinds(true)}>
            <Icon name="plus" />
            {say(words.add)}
          </button>
        )}
        {(open !== null || choosing.value) && (
          <button type="button" class="btn tall" onClick={open === null ? () => toKinds(false) : close}>
            {say(words.cancel)}
          </button>
        )}
        {open !== null && (
          <button type="submit" class="btn go" form={partFormId}>
            {say(open.owned === null ? words.save : words.saveChange)}
          </button>
        )}
      </section>
    </>
  );
}

function PartList({ list }: { list: readonly OwnedPart[] }) {
  const say = useSay();
  const { parts } = useStores();
  if (list.length === 0) return <p>{say(words.none)}</p>;
  return (
    <ul class="rows owned">
      {list.map((owned) => {
        const name = partText(owned.part, say.format);
        return (
          <li key={owned.id}>
            <b>{name}</b>
            <div class="ways">
              <button
                type="button"
                class="btn"
                aria-label={`${say(words.change)}: ${name}`}
                onClick={() => {
                  draft.value = { owned, kind: owned.part.part, values: valuesOf(owned.part) };
                }}
              >
                {say(words.change)}
              </button>
              <button
                type="button"
                class="btn"
                aria-label={`${say(words.remove)}: ${name}`}
                onClick={() => {
                  removed.value = owned;
                  void parts.remove(owned.id);
                }}
              >
                {say(words.remove)}
              </button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}

function Removed() {
  const say = useSay();
  const { parts } = useStores();
  const owned = removed.value;
  if (owned === null) return null;
  return (
    <div class="changed" role="status">
      <p>{say(words.removed, { name: partText(owned.part, say.format) })}</p>
      <button
        type="button"
        class="btn"
        onClick={() => {
          removed.value = null;
          void parts.put(owned);
        }}
      >
        <Icon name="undo" />
        {say(shell.undo)}
      </button>
    </div>
  );
}

function KindChoice() {
  const say = useSay();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section aria-labelledby="kind">
      <h2 id="kind" tabIndex={-1} ref={heading}>
        {say(words.kindTitle)}
      </h2>
      <ul class="kinds">
        {partKindIds.map((kind) => (
          <li key={kind}>
            <button
              type="button"
              class="btn tall wide"
              onClick={() => {
                choosing.value = false;
                draft.value = { owned: null, kind, values: startingValues(kind) };
              }}
            >
              {partKinds[kind]}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
