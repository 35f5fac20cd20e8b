/** What a file brought: taken, here already, refused, each refusal with every reason. */
import type { FileRefusal, ImportContent, RefusedRecord } from '../../../storage/export-file';
import { fileRefusals, receive } from '../../../words/en/places';
import { shortProblemLine } from '../../../words/en/problems';
import { useSay } from '../../say';

export type ImportReport =
  | { readonly refusal: FileRefusal }
  | { readonly content: ImportContent; readonly written: boolean };

export function Report({ report }: { report: ImportReport }) {
  const say = useSay();
  if ('refusal' in report) {
    return (
      <p class="stop" role="alert">
        {fileRefusals[report.refusal]}
      </p>
    );
  }
  const { content, written } = report;
  const { plans, parts, alreadyHere, refused } = content;
  if (!written) {
    return (
      <p class="stop" role="alert">
        {say(receive.notWritten)}
      </p>
    );
  }
  return (
    <section role="status" aria-labelledby="report">
      <h2 id="report">{say(receive.fileHead)}</h2>
      <p>{say(receive.took, { count: plans.length })}</p>
      {parts.length > 0 && <p>{say(receive.tookParts, { count: parts.length })}</p>}
      {alreadyHere.length > 0 && <p>{say(receive.already, { count: alreadyHere.length })}</p>}
      {refused.length > 0 && (
        <div class="stop">
          <p>
            <b>{say(receive.refused, { count: refused.length })}</b>
          </p>
          {refused.map((record) => (
            <Refused key={`${record.list} ${record.place}`} record={record} />
          ))}
        </div>
      )}
    </section>
  );
}

function Refused({ record }: { record: RefusedRecord }) {
  const say = useSay();
  const { place, list, name, newer, problems } = record;
  const title = say(list === 'plans' ? receive.refusedPlan : receive.refusedPart, { place, name: name ?? '' });
  return (
    <>
      <p>
        <b>{title}</b> {newer && say(receive.newer)}
      </p>
      <ul class="out">
        {problems.map((problem) => (
          <li key={`${problem.key} ${problem.code}`}>{shortProblemLine(problem, say(receive.record))}</li>
        ))}
      </ul>
    </>
  );
}
