/** Answers requests of planning-protocol.ts, whatever carries them. `rest` gives the carrier a turn, so that a call-off can arrive. */
import { createDesigner } from '../advice/chain/design-parts';
import type { FieldFacts } from '../advice/field-facts';
import { InputError } from '../base/input-error';
import type { Answers } from '../design/answers';
import type { Candidate } from '../plan/candidate-points';
import { makePlan } from '../plan/make-plan';
import type { PlanningReply, PlanningRequest } from './planning-protocol';
import { searchInPool, studyInPool } from './pool-study';
import type { Job, SolverPool } from './solver-pool';

interface Carrier {
  send(reply: PlanningReply): void;
  rest(): Promise<void>;
}

export class PlanningServer {
  /** A plan that changes by one answer or one solved number asks for most of its searches again. */
  private readonly designer = createDesigner();
  private readonly studies = new Map<number, Job<unknown>>();

  constructor(
    private readonly pool: SolverPool,
    private readonly carrier: Carrier,
  ) {}

  async answer(request: Exclude<PlanningRequest, { kind: 'solver-broke' }>): Promise<void> {
    const { id, kind } = request;
    if (kind === 'cancel') return this.studies.get(id)?.cancel();
    try {
      if (kind === 'plan') {
        const { answers, field } = request;
        const plan = makePlan(answers, { designer: this.designer, ...(field === undefined ? {} : { field }) });
        this.carrier.send({ id, kind: 'planned', plan });
      } else if (kind === 'study') {
        this.carrier.send({ id, kind: 'studied', facts: await this.study(id, request.answers) });
      } else {
        this.carrier.send({ id, kind: 'searched', candidates: await this.search(id, request.answers, request.known) });
      }
    } catch (error) {
      const known = error instanceof InputError;
      const data = known ? error.data : { detail: String(error) };
      this.carrier.send({ id, kind: 'failed', code: known ? error.code : 'internal', data });
    } finally {
      this.studies.delete(id);
    }
  }

  private study(id: number, answers: Answers): Promise<FieldFacts | null> {
    const { send, rest } = this.carrier;
    const watch = {
      onProgress: (done: number, of: number) => send({ id, kind: 'progress', done, of }),
      onPartial: (facts: FieldFacts) => send({ id, kind: 'partial', facts }),
    };
    const study = studyInPool(answers, this.pool, watch, rest);
    this.studies.set(id, study);
    return study.result;
  }

  private search(id: number, answers: Answers, known: readonly Candidate[]): Promise<readonly Candidate[]> {
    const { send, rest } = this.carrier;
    const { designer } = this;
    const onPartial = (candidates: readonly Candidate[], done: number) => send({ id, kind: 'found', candidates, done });
    const search = searchInPool(answers, this.pool, { designer, known, onPartial }, rest);
    this.studies.set(id, search);
    return search.result;
  }
}
