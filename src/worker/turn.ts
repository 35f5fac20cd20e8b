/** Waits for a turn of the event loop, without the delay that timers have. */
const turn = new MessageChannel();
/** Several may wait at once: each message wakes the one that has waited longest. */
const resting: (() => void)[] = [];
turn.port1.onmessage = () => resting.shift()?.();

export const rest = (): Promise<void> =>
  new Promise((resolve) => {
    resting.push(resolve);
    turn.port2.postMessage(null);
  });
