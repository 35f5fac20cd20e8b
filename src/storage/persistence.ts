/** Whether the browser promises to keep what is stored, and how much room there is. */
export type Keeping = 'promised' | 'not-promised' | 'cannot-tell';

export interface StorageManagerLike {
  persisted?(): Promise<boolean>;
  persist?(): Promise<boolean>;
  estimate?(): Promise<{ usage?: number; quota?: number }>;
}

export async function keepingOf(manager: StorageManagerLike | undefined): Promise<Keeping> {
  if (manager?.persisted === undefined) return 'cannot-tell';
  return (await manager.persisted()) ? 'promised' : 'not-promised';
}

/** Asks the browser to keep what is stored; some ask the person in turn, most decide by themselves. */
export async function askToKeep(manager: StorageManagerLike | undefined): Promise<Keeping> {
  if (manager?.persist === undefined) return keepingOf(manager);
  return (await manager.persist()) ? 'promised' : 'not-promised';
}

/** Bytes used and allowed; null where the browser does not say. */
export async function roomOf(
  manager: StorageManagerLike | undefined,
): Promise<{ readonly usedBytes: number; readonly allowedBytes: number } | null> {
  const { usage, quota } = (await manager?.estimate?.()) ?? {};
  return usage === undefined || quota === undefined ? null : { usedBytes: usage, allowedBytes: quota };
}
