/** Records that this version cannot read: kept, named, and to be taken out as they are. */
import { nameOf } from '../../../storage/export-file';
import { keptPlans } from '../../../words/en/kept-plans';
import { plans as words } from '../../../words/en/screens';
import { fileName, saveFile } from '../../files';
import { useSay } from '../../say';
import { useStores } from '../../stores/stores';

export function SetAside() {
  const say = useSay();
  const list = useStores().library.unreadable.value;
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="aside">
      <h2 id="aside">{say(keptPlans.unreadableHead)}</h2>
      <ul class="rows setaside">
        {list.map(([id, entry]) => {
          if (entry.kind === 'good') return null;
          const name = nameOf(entry.raw) ?? say(words.unnamed);
          return (
            <li key={id}>
              <p>{say(entry.kind === 'newer' ? keptPlans.newerPlan : keptPlans.brokenPlan, { name })}</p>
              <div class="ways">
                <button
                  type="button"
                  class="btn"
                  onClick={() => saveFile(fileName(Date.now()), JSON.stringify(entry.raw, null, 1))}
                >
                  {say(keptPlans.takeOut)}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
