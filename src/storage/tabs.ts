/** Tells the other tabs what has been written, and hears it from them. */
export interface Written {
  readonly store: 'plans' | 'onHand' | 'settings' | 'photos';
  /** Of the record; of pictures, that of their plan. */
  readonly id: string;
}

export interface Tabs {
  tell(written: Written): void;
  close(): void;
}

export function joinTabs(onWritten: (written: Written) => void, name = 'halyard-written'): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(name);
  channel.onmessage = ({ data }: MessageEvent<Written>) => onWritten(data);
  return { tell: (written) => channel.postMessage(written), close: () => channel.close() };
}
