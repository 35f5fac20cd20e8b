/**
 * Answers requests of protocol.ts, whatever carries them. `rest` gives the carrier a turn between steps, so that a call-off can arrive;
 * `now` is a clock in milliseconds.
 */
import { InputError } from '../base/input-error';
import type { Kernels } from './kernels';
import type { SolverReply, SolverRequest } from './protocol';
import { solve } from './solve';
import { prepareInSteps } from './sweep';

export interface Carrier {
  send(reply: SolverReply): void;
  rest(): Promise<void>;
  now(): number;
}

/** A partial result is sent at most so often. */
const PARTIAL_EVERY_MS = 60;

export class SolverServer {
  private readonly cancelled = new Set<number>();
  private readonly running = new Set<number>();

  constructor(
    private readonly kernels: Kernels,
    private readonly carrier: Carrier,
  ) {}

  async answer(request: SolverRequest): Promise<void> {
    if (request.kind === 'cancel') {
      if (this.running.has(request.id)) this.cancelled.add(request.id);
      return;
    }
    const { id } = request;
    this.running.add(id);
    try {
      if (request.kind === 'solve') {
        const options = { mesh: request.mesh, kernels: this.kernels, clock: () => this.carrier.now() };
        this.carrier.send({ id, kind: 'solved', solution: solve(request.geometry, options) });
      } else await this.prepare(request);
    } catch (error) {
      const known = error instanceof InputError;
      const data = known ? error.data : { detail: String(error) };
      this.carrier.send({ id, kind: 'failed', code: known ? error.code : 'internal', data });
    } finally {
      this.running.delete(id);
      this.cancelled.delete(id);
    }
  }

  private async prepare(request: Extract<SolverRequest, { kind: 'prepare' }>): Promise<void> {
    const { id, geometry, frequenciesHz, mesh, meshHz } = request;
    const steps = prepareInSteps(geometry, frequenciesHz, { mesh, meshHz, kernels: this.kernels });
    let lastPartialMs = this.carrier.now();
    for (;;) {
      const step = steps.next();
      if (step.done) {
        this.carrier.send({ id, kind: 'prepared', prepared: step.value });
        return;
      }
      const { done, of, partial } = step.value;
      this.carrier.send({ id, kind: 'progress', done, of });
      if (partial && this.carrier.now() - lastPartialMs > PARTIAL_EVERY_MS) {
        this.carrier.send({ id, kind: 'partial', prepared: partial() });
        lastPartialMs = this.carrier.now();
      }
      await this.carrier.rest();
      if (this.cancelled.has(id)) throw new InputError('cancelled', {});
    }
  }
}
