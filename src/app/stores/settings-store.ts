/** Settings: shown at once, written behind. A record that cannot be read is left alone and nothing is written over it. */
import { computed, signal } from '@preact/signals';
import { noSettings, type Settings } from '../../design/settings';
import type { ReadRecord } from '../../storage/read-record';
import type { Records } from '../../storage/records';
import { StorageError } from '../../storage/storage-error';
import type { Written } from '../../storage/tabs';
import type { SaveLight } from './save-light';
import { savingTo } from './saving';

export interface SettingsOptions {
  readonly records: Records | null;
  readonly light: SaveLight;
  readonly tell: (written: Written) => void;
}

export function createSettingsStore({ records, light, tell }: SettingsOptions) {
  const save = savingTo(records, light);
  const settings = signal<Settings>(noSettings);
  const read = signal<ReadRecord<Settings>['kind']>('good');
  const ofPlan = signal<Settings['units']>(undefined);

  async function load(): Promise<void> {
    const found = await records?.settings();
    if (found === undefined) return;
    read.value = found.kind;
    if (found.kind === 'good') settings.value = found.record;
  }

  return {
    settings: computed(() => settings.value),
    units: computed(() => settings.value.units ?? ofPlan.value ?? 'metric'),
    /** The order of the plan in sight, which counts where this phone has none of its own; returns what takes it back. */
    standIn(units: Settings['units']): () => void {
      ofPlan.value = units;
      return () => {
        ofPlan.value = undefined;
      };
    },
    load,
    reread: load,

    /** Sets one thing; undefined takes it back. */
    async set<K extends Exclude<keyof Settings, 'version'>>(key: K, value: Settings[K] | undefined): Promise<void> {
      const next: Settings = { ...settings.value };
      if (value === undefined) delete next[key];
      else next[key] = value;
      settings.value = next;
      await save(async (to) => {
        if (read.value !== 'good') throw new StorageError(read.value === 'newer' ? 'record-newer' : 'record-broken');
        await to.putSettings(settings.value);
      });
      tell({ store: 'settings', id: 'settings' });
    },
  };
}
