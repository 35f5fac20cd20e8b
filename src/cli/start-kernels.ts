/** The solver's kernels for node: WebAssembly where this node can run it, plain code otherwise. */
import { chooseKernels } from '../solver/choose-kernels';
import type { Kernels } from '../solver/kernels';
import fields from '../wasm/fields.wasm?bytes';
import fieldsRelaxed from '../wasm/fields-relaxed.wasm?bytes';
import ldlt from '../wasm/ldlt.wasm?bytes';
import ldltRelaxed from '../wasm/ldlt-relaxed.wasm?bytes';
import sums from '../wasm/sums.wasm?bytes';
import sumsRelaxed from '../wasm/sums-relaxed.wasm?bytes';

type Bytes = Uint8Array<ArrayBuffer>;

/** The part of WebAssembly used here; node's types leave it out. */
interface WasmEngine {
  validate(bytes: Bytes): boolean;
  instantiate(bytes: Bytes, imports: object): Promise<{ readonly instance: { readonly exports: unknown } }>;
}

export function startKernels(): Promise<Kernels> {
  const engine = (globalThis as unknown as { WebAssembly: WasmEngine }).WebAssembly;
  const imports = { env: { abort: () => undefined } };
  return chooseKernels(
    {
      simd: { ldlt, fields, sums },
      relaxed: { ldlt: ldltRelaxed, fields: fieldsRelaxed, sums: sumsRelaxed },
    },
    {
      validate: (bytes) => engine.validate(bytes),
      instantiate: async (bytes) => (await engine.instantiate(bytes, imports)).instance.exports,
    },
  );
}
