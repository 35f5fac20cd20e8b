/**
 * The thin shell that runs the solver in a Web Worker: starts the fastest kernels and passes messages. Whoever starts it hands it the port
 * through which requests come.
 */
import { chooseKernels } from '../solver/choose-kernels';
import type { SolverReply, SolverRequest } from '../solver/protocol';
import { SolverServer } from '../solver/serve';
import fields from '../wasm/fields.wasm?bytes';
import fieldsRelaxed from '../wasm/fields-relaxed.wasm?bytes';
import ldlt from '../wasm/ldlt.wasm?bytes';
import ldltRelaxed from '../wasm/ldlt-relaxed.wasm?bytes';
import sums from '../wasm/sums.wasm?bytes';
import sumsRelaxed from '../wasm/sums-relaxed.wasm?bytes';
import { rest } from './turn';

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

self.onmessage = async ({ ports: [port] }: MessageEvent<null>) => {
  if (port === undefined) return;
  const send = (reply: SolverReply): void => port.postMessage(reply);
  const server = new SolverServer(await kernels, { send, rest, now: () => performance.now() });
  port.onmessage = ({ data }: MessageEvent<SolverRequest>) => void server.answer(data);
};
