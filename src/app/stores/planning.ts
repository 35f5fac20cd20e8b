/**
 * Starts the workers that plan, and the solvers they ask for. One makes plans and stays, so that an answer given is answered at once; another
 * studies fields, and ends with its solvers when it has had nothing to do for a while, for the sake of the phone's memory.
 */
import { PlanningClient, type PlanningWorkerLike } from '../../worker/planning-client';
import planningUrl from '../../worker/planning-worker?worker&url';
import solverUrl from '../../worker/solver-worker?worker&url';
import { trustedScriptUrl } from '../trusted-types';
import type { StartStudy } from './field-store';
import type { MakePlan } from './planner';
import type { StartSearch } from './search-store';

export interface Planning {
  readonly makePlan: MakePlan;
  readonly startStudy: StartStudy;
  readonly startSearch: StartSearch;
}

const IDLE_MS = 60_000;

const start = (url: string): Worker => new Worker(trustedScriptUrl('app-worker', url), { type: 'module' });

/** A worker's events carry more than the client reads, which the types of their handlers do not forgive. */
const startPlanner = (): PlanningWorkerLike => start(planningUrl) as unknown as PlanningWorkerLike;

function startSolver(port: MessagePort | undefined, onBroken: (detail: string) => void): () => void {
  const worker = start(solverUrl);
  worker.onerror = ({ message }) => onBroken(message ?? '');
  worker.postMessage(null, port === undefined ? [] : [port]);
  return () => worker.terminate();
}

export function createPlanning(): Planning {
  const starters = { planner: startPlanner, solver: startSolver };
  const plans = new PlanningClient(starters);
  const studies = new PlanningClient(starters, (end) => void setTimeout(end, IDLE_MS));
  return {
    makePlan: (answers, field) => plans.plan(answers, field),
    startStudy: (answers, watch) => studies.study(answers, watch),
    startSearch: (answers, known, onFound) => studies.search(answers, known, onFound),
  };
}
