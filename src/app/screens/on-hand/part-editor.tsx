/** One part's fields. Problems stand beside their field; nothing typed is lost. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PartOnHand } from '../../../design/answers';
import { coreDiameterMm, lineName, wireName } from '../../../words/en/catalog-names';
import { fieldProblems, waysOut } from '../../../words/en/fields';
import { partKinds, onHand as words } from '../../../words/en/places';
import type { Message } from '../../../words/message';
import { quantityText } from '../../fields/quantity-text';
import type { BadReading } from '../../fields/reading';
import { StopPanel } from '../../parts/stop-panel';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';
import type { PartDraft } from './on-hand-screen';
import { type PartField, partFields, readPart, type Values } from './part-form';

interface EditorProps {
  readonly draft: PartDraft;
  readonly onValues: (values: Values) => void;
  readonly onPart: (part: PartOnHand) => void;
  readonly onCancel: () => void;
}

/** By which the button of the action row sends the form. */
export const partFormId = 'part-form';

export function PartEditor({ draft, onValues, onPart, onCancel }: EditorProps) {
  const say = useSay();
  const units = useStores().settings.units.value;
  const heading = useRef<HTMLHeadingElement>(null);
  const [checked, setChecked] = useState(false);
  const { kind, values } = draft;
  const read = readPart(kind, values, { unit: units === 'metric' ? 'm' : 'ft', format: say.format });
  useEffect(() => heading.current?.focus(), [kind]);
  const problemOf = (field: PartField) => (checked && 'wrong' in read ? read.wrong.get(field.key) : undefined);
  return (
    <form
      id={partFormId}
      class="typed part"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setChecked(true);
        if ('part' in read) onPart(read.part);
      }}
    >
      <h2 tabIndex={-1} ref={heading}>
        {partKinds[kind]}
      </h2>
      {partFields[kind].map((field) => (
        <Field
          key={field.key}
          field={field}
          text={values[field.key] ?? ''}
          problem={problemOf(field)}
          onText={(text) => onValues({ ...values, [field.key]: text })}
          onCancel={onCancel}
        />
      ))}
    </form>
  );
}

interface FieldProps {
  readonly field: PartField;
  readonly text: string;
  readonly problem: BadReading | undefined;
  readonly onText: (text: string) => void;
  readonly onCancel: () => void;
}

/** What a trade word on a label means. */
const hints: Readonly<Record<string, Message>> = { kind: words.kindHint, mix: words.mixHint };

function Field({ field, text, problem, onText, onCancel }: FieldProps) {
  const say = useSay();
  const id = `part-${field.key}`;
  const hint = hints[field.key];
  return (
    <div class="typed">
      <label for={id}>{say(words[field.words])}</label>
      {field.type === 'choice' ? (
        <select id={id} value={text} onChange={(event) => onText(event.currentTarget.value)}>
          {field.options.map((option) => (
            <option key={option} value={option}>
              {optionText(field, option, say)}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={id}
          type="text"
          autoComplete="off"
          inputMode={field.type === 'length' ? 'text' : 'decimal'}
          value={text}
          aria-invalid={problem !== undefined}
          aria-describedby={problem === undefined ? undefined : `${id}-problem`}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
      {hint !== undefined && <p class="small">{say(hint)}</p>}
      {problem !== undefined && (
        <StopPanel
          id={`${id}-problem`}
          words={say(fieldProblems[problem.problem], problem.data)}
          ways={[
            ...problem.take.map(({ way, quantity }) => ({
              words: say(waysOut[way], { what: quantityText(quantity, say.format) }),
              act: () => onText(quantity.kind === 'length' ? `${quantity.value} m` : String(quantity.value)),
            })),
            { words: say(waysOut.typeAgain), act: () => document.getElementById(id)?.focus() },
            { words: say(words.cancel), act: onCancel },
          ]}
        />
      )}
    </div>
  );
}

function optionText(field: PartField, option: string, say: ReturnType<typeof useSay>): string {
  switch (field.key) {
    case 'line':
      return lineName(option);
    case 'wire':
      return wireName(option);
    case 'kind':
      return say(option === 'voltage' ? words.voltage : words.current);
    case 'size':
      return say(words.ringSize, { mm: coreDiameterMm(option), code: option.toUpperCase() });
    default:
      return option;
  }
}
