/** What is set once for every plan, whether the app works with no signal, and files. */
import { useState } from 'preact/hooks';
import { withUnit } from '../../../base/read-length';
import { regionIds } from '../../../catalog/band-ids';
import { ruleSetIds } from '../../../design/choices';
import type { Settings } from '../../../design/settings';
import { askToKeep } from '../../../storage/persistence';
import { keptPlans } from '../../../words/en/kept-plans';
import { settings as words } from '../../../words/en/places';
import { optionWords } from '../../../words/en/questions';
import { plans, shell } from '../../../words/en/screens';
import { CountrySelect } from '../../parts/country-select';
import { SaveNote, SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { checkForUpdate, updateReady } from '../../pwa';
import { to } from '../../routes';
import { useSay } from '../../say';
import type { Library } from '../../stores/library';
import { useStores } from '../../stores/stores';
import { saveAll } from '../plans/export-all';
import { planName } from '../plans/plan-line';
import { KeepCheck } from './keep-check';
import { Segments } from './segments';
import './settings.css';

export function SettingsScreen() {
  const say = useSay();
  return (
    <>
      <Top title={say(words.title)}>
        <SaveNote />
      </Top>
      <main id="main" class="two">
        <div class="stack">
          <SaveTrouble />
          <Display />
          <Place />
        </div>
        <div class="stack">
          <KeepCheck />
          <Keeping />
          <Files />
          <DeletedPlans />
          <Version />
        </div>
      </main>
    </>
  );
}

/** Digits typed without a unit keep the one they were typed in: changing what stands first never changes a length. */
function keepTypedLengths(library: Library, units: 'metric' | 'imperial'): void {
  for (const plan of library.plans.value) {
    for (const [field, { text }] of Object.entries(plan.typed)) {
      const kept = field.endsWith('M') ? withUnit(text, units === 'metric' ? 'm' : 'ft') : text;
      if (kept !== text) library.edit(plan.id, { kind: 'typed', field, text: kept });
    }
  }
}

function Display() {
  const say = useSay();
  const { library, settings: store } = useStores();
  const { units, light, hand } = store.settings.value;
  return (
    <>
      <Segments
        legend={say(words.units)}
        why={say(words.unitsWhy)}
        name="units"
        chosen={units ?? 'plan'}
        options={[
          { value: 'plan', words: say(words.asThePlan) },
          { value: 'metric', words: say(words.metric) },
          { value: 'imperial', words: say(words.imperial) },
        ]}
        onChoose={(chosen) => {
          keepTypedLengths(library, store.units.value);
          void store.set('units', chosen === 'plan' ? undefined : chosen);
        }}
      />
      <Segments
        legend={say(words.light)}
        why={say(words.lightWhy)}
        name="light"
        chosen={light ?? 'auto'}
        options={[
          { value: 'auto', words: say(words.auto) },
          { value: 'day', words: say(words.day) },
          { value: 'night', words: say(words.night) },
        ]}
        onChoose={(chosen) => void store.set('light', chosen === 'auto' ? undefined : chosen)}
      />
      <Segments
        legend={say(words.hand)}
        why={say(words.handWhy)}
        name="hand"
        chosen={hand ?? 'right'}
        options={[
          { value: 'left', words: say(words.left) },
          { value: 'right', words: say(words.right) },
        ]}
        onChoose={(chosen) => void store.set('hand', chosen)}
      />
    </>
  );
}

function Place() {
  const say = useSay();
  const store = useStores().settings;
  const { region, country, ruleSet } = store.settings.value;
  return (
    <fieldset class="place">
      <legend>{say(words.place)}</legend>
      <p class="small">{say(words.placeWhy)}</p>
      <div class="typed">
        <label for="region">{say(words.region)}</label>
        <select
          id="region"
          aria-describedby="region-why"
          value={region === undefined ? '' : String(region)}
          onChange={(event) => {
            const chosen = regionIds.find((id) => String(id) === event.currentTarget.value);
            void store.set('region', chosen);
          }}
        >
          <option value="">{say(words.notSet)}</option>
          {regionIds.map((id) => (
            <option key={id} value={String(id)}>
              {optionWords('region', String(id))}
            </option>
          ))}
        </select>
        <p class="small" id="region-why">
          {say(words.regionWhy)}
        </p>
      </div>
      <div class="typed">
        <label for="country">{say(words.country)}</label>
        <CountrySelect
          id="country"
          country={country}
          none={say(words.notSet)}
          onCountry={(chosen) => void store.set('country', chosen)}
        />
        <p class="small">{say(words.countryWhy)}</p>
      </div>
      <div class="typed">
        <label for="rules">{say(words.ruleSet)}</label>
        <select
          id="rules"
          aria-describedby="rules-why"
          value={ruleSet ?? ''}
          onChange={(event) => {
            const chosen: Settings['ruleSet'] = ruleSetIds.find((id) => id === event.currentTarget.value);
            void store.set('ruleSet', chosen);
          }}
        >
          <option value="">{say(words.notSet)}</option>
          {ruleSetIds.map((id) => (
            <option key={id} value={id}>
              {optionWords('ruleSet', id)}
            </option>
          ))}
        </select>
        <p class="small" id="rules-why">
          {say(words.ruleSetWhy)}
        </p>
      </div>
    </fieldset>
  );
}

/** Whether the browser has promised to keep the plans, and a way to ask it. */
function Keeping() {
  const say = useSay();
  const { keeping } = useStores();
  return (
    <section>
      <h2>{say(words.keepingHead)}</h2>
      <p>{say(words[keeping.value])}</p>
      {keeping.value === 'not-promised' && (
        <div class="ways">
          <button
            type="button"
            class="btn tall"
            onClick={() => {
              void askToKeep(navigator.storage).then((answer) => {
                keeping.value = answer;
              });
            }}
          >
            {say(words.askToKeep)}
          </button>
        </div>
      )}
    </section>
  );
}

function Files() {
  const say = useSay();
  const stores = useStores();
  return (
    <section>
      <h2>{say(words.files)}</h2>
      <p class="small">{say(plans.filesWhy)}</p>
      <div class="ways">
        <button type="button" class="btn tall" onClick={() => saveAll(stores)}>
          {say(plans.exportAll)}
        </button>
        <a class="btn tall" href={to.receive()}>
          {say(keptPlans.importFile)}
        </a>
      </div>
    </section>
  );
}

/** Deleted plans can come back until they are removed for good; only that is asked about, because it destroys. */
function DeletedPlans() {
  const say = useSay();
  const { library } = useStores();
  const [asked, setAsked] = useState<string | null>(null);
  const list = library.deleted.value;
  if (list.length === 0) return null;
  return (
    <section>
      <h2>{say(keptPlans.deletedHead)}</h2>
      <ul class="rows bin">
        {list.map((plan) => {
          const name = planName(plan, say);
          return (
            <li key={plan.id}>
              <p>
                <b>{asked === plan.id ? say(keptPlans.destroyAsk, { name }) : name}</b>
              </p>
              <div class="ways">
                {asked === plan.id ? (
                  <>
                    <button type="button" class="btn" onClick={() => setAsked(null)}>
                      {say(keptPlans.destroyNo)}
                    </button>
                    <button type="button" class="btn" onClick={() => void library.destroy(plan.id)}>
                      {say(keptPlans.destroyYes)}
                    </button>
                  </>
                ) : (
                  <>
                    <button
                      type="button"
                      class="btn"
                      onClick={() => library.edit(plan.id, { kind: 'deleted', on: false })}
                    >
                      {say(keptPlans.putBack)}
                    </button>
                    <button type="button" class="btn" onClick={() => setAsked(plan.id)}>
                      {say(keptPlans.destroy)}
                    </button>
                  </>
                )}
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function Version() {
  const say = useSay();
  const [looked, setLooked] = useState(false);
  return (
    <section>
      <p>
        {say(shell.appName)}. {say(words.version, { version: __APP_VERSION__ })}. {say(words.privacy)}
      </p>
      <div class="ways">
        <button type="button" class="btn tall" onClick={() => void checkForUpdate().then(() => setLooked(true))}>
          {say(words.checkUpdate)}
        </button>
      </div>
      <p role="status">{looked && !updateReady.value && say(words.noUpdate)}</p>
    </section>
  );
}
