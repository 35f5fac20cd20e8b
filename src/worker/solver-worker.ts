/** The thin shell that runs the solver in a Web Worker: starts the fastest kernels and passes messages. */
import { chooseKernels } from '../solver/choose-kernels';
import type { SolverReply, SolverRequest } from '../solver/protocol';
import { SolverServer } from '../solver/serve';
import fields from '../wasm/fields.wasm?bytes';
import fieldsRelaxed from '../wasm/fields-relaxed.wasm?bytes';
import ldlt from '../wasm/ldlt.wasm?bytes';
import ldltRelaxed from '../wasm/ldlt-relaxed.wasm?bytes';
import sums from '../wasm/sums.wasm?bytes';
import sumsRelaxed from '../wasm/sums-relaxed.wasm?bytes';

declare const self: DedicatedWorkerGlobalScope;

const imports = { env: { abort: () => undefined } };
const kernels = chooseKernels(
  {
    simd: { ldlt, fields, sums },
    relaxed: { ldlt: ldltRelaxed, fields: fieldsRelaxed, sums: sumsRelaxed },
  },
  {
    validate: (bytes) => WebAssembly.validate(bytes),
    instantiate: async (bytes) => (await WebAssembly.instantiate(bytes, imports)).instance.exports,
  },
);

/** A turn of the event loop without the delay that timers have. */
const turn = new MessageChannel();
/** Several jobs may rest at once: each message wakes the one that has waited longest. */
const resting: (() => void)[] = [];
turn.port1.onmessage = () => resting.shift()?.();
const rest = (): Promise<void> =>
  new Promise((resolve) => {
    resting.push(resolve);
    turn.port2.postMessage(null);
  });

const server = kernels.then(
  (ready) =>
    new SolverServer(ready, {
      send: (reply: SolverReply) => self.postMessage(reply),
      rest,
      now: () => performance.now(),
    }),
);

self.onmessage = async ({ data }: MessageEvent<SolverRequest>) => (await server).answer(data);
