/** The kernels' bytes and the browser's engine, as chooseKernels wants them. */
import type { chooseKernels } from '../../src/solver/choose-kernels';
import fields from '../../src/wasm/fields.wasm?bytes';
import fieldsRelaxed from '../../src/wasm/fields-relaxed.wasm?bytes';
import ldlt from '../../src/wasm/ldlt.wasm?bytes';
import ldltRelaxed from '../../src/wasm/ldlt-relaxed.wasm?bytes';
import sums from '../../src/wasm/sums.wasm?bytes';
import sumsRelaxed from '../../src/wasm/sums-relaxed.wasm?bytes';

/** Every module started here, so that its memory can be weighed. */
export const started: { readonly memory: { readonly buffer: ArrayBuffer } }[] = [];

export const choosingEngine = (): Parameters<typeof chooseKernels> => [
  {
    simd: { ldlt, fields, sums },
    relaxed: { ldlt: ldltRelaxed, fields: fieldsRelaxed, sums: sumsRelaxed },
  },
  {
    validate: (bytes) => WebAssembly.validate(bytes),
    instantiate: async (bytes) => {
      const { instance } = await WebAssembly.instantiate(bytes, { env: { abort: () => undefined } });
      started.push(instance.exports as unknown as (typeof started)[number]);
      return instance.exports;
    },
  },
];
