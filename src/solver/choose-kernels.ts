/**
 * Which kernels an engine can run, found by asking it to validate two tiny modules: one with a 128-bit instruction, one with a relaxed
 * fused multiply-add. The validating and instantiating functions come from outside, since WebAssembly is no part of the language.
 */
import { type Kernels, plainKernels } from './kernels';
import { wasmKernels } from './wasm-kernels';
import type { KernelModules } from './wasm-modules';

type Bytes = Uint8Array<ArrayBuffer>;

type ModuleName = keyof KernelModules;

/** Each module with plain 128-bit SIMD and with relaxed SIMD. */
export interface KernelBytes {
  readonly simd: Readonly<Record<ModuleName, Bytes>>;
  readonly relaxed: Readonly<Record<ModuleName, Bytes>>;
}

export interface Engine {
  validate(bytes: Bytes): boolean;
  /** Exports of the module. */
  instantiate(bytes: Bytes): Promise<unknown>;
}

// (func (result v128) …) with i32x4.splat, and the same with f64x2.relaxed_madd.
const simdProbe = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15, 253, 98, 11,
];
const relaxedProbe = [
  0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 15, 1, 13, 0, 65, 1, 253, 15, 65, 2, 253, 15,
  253, 128, 2, 11,
];

export async function chooseKernels(bytes: KernelBytes, engine: Engine): Promise<Kernels> {
  const can = (probe: readonly number[]): boolean => engine.validate(Uint8Array.from(probe));
  if (!can(simdProbe)) return plainKernels;
  const isRelaxed = can(relaxedProbe);
  const chosen = isRelaxed ? bytes.relaxed : bytes.simd;
  const [ldlt, fields, sums] = await Promise.all(
    [chosen.ldlt, chosen.fields, chosen.sums].map((module) => engine.instantiate(module)),
  );
  return wasmKernels(isRelaxed ? 'relaxed-simd' : 'simd', { ldlt, fields, sums } as KernelModules);
}
