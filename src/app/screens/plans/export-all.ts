/** Everything that is kept, as one file: what cannot be read goes along as it is. */
import { exportText } from '../../../storage/export-file';
import { fileName, saveFile } from '../../files';
import type { Stores } from '../../stores/stores';

export function saveAll({ library, parts }: Stores): void {
  const entries = [...library.entries.value.values()];
  const plans = entries.map((entry) => (entry.kind === 'good' ? entry.record : entry.raw));
  const owned = [
    ...parts.parts.value,
    ...parts.unreadable.value.map(({ read }) => (read.kind === 'good' ? read.record : read.raw)),
  ];
  const at = Date.now();
  saveFile(fileName(at), exportText({ plans, parts: owned }, at));
}
