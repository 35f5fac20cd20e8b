/** One antenna of the list: its drawing, why it stands here, the figures of its field, and the way to open it as a plan. */
import type { Candidate } from '../../../plan/candidate-points';
import { systemName } from '../../../words/en/names';
import { everydayNames, which } from '../../../words/en/which';
import { AntennaSketch } from '../../pictures/radiators';
import { type Say, useSay } from '../../say';

/** The first ones show their reasons; those of the others are a tap away. */
const shownWhole = 3;

interface RowProps {
  readonly candidate: Candidate;
  readonly onOpen: () => void;
}

export function CandidateRow({ candidate, onOpen }: RowProps) {
  const say = useSay();
  const { rank, system, answers, place } = candidate;
  const name = everydayNames[system] ?? systemName(system);
  return (
    <li class="candidate">
      <div class="pic">
        <b class="rank">{rank}</b>
        <AntennaSketch {...answers} />
      </div>
      <div class="name">
        <h2>{name}</h2>
        <p class="small">{systemName(system)}</p>
        <p>
          <b>{place}</b>
        </p>
      </div>
      <div class="txt">
        {rank <= shownWhole ? (
          <Reasons candidate={candidate} />
        ) : (
          <details>
            <summary>{say(which.more)}</summary>
            <Reasons candidate={candidate} />
          </details>
        )}
        <button type="button" class="btn tall" aria-label={say(which.openOf, { name })} onClick={onOpen}>
          {say(which.open)}
        </button>
      </div>
    </li>
  );
}

function Reasons({ candidate }: { readonly candidate: Candidate }) {
  return (
    <section>
      <ul class="out">
        {candidate.reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
      {candidate.score.stops === 0 && <Figures candidate={candidate} />}
    </section>
  );
}

/** The rows stand from the start, so that nothing moves when the figures come. */
function Figures({ candidate }: { readonly candidate: Candidate }) {
  const say = useSay();
  const figures = candidate.solved ? solvedFigures(candidate, say) : null;
  const rows = [
    { head: which.radiated, value: figures?.radiated },
    { head: which.swr, value: figures?.swr },
    { head: candidate.answers.station === 'portable' ? which.entryPortable : which.entry, value: figures?.entry },
  ];
  return (
    <section class="solved">
      <h3>{say(which.figures)}</h3>
      <dl>
        {rows.map(({ head, value }) => (
          <div key={head}>
            <dt>{say(head)}</dt>
            <dd>{value ?? say(which.notYet)}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** Of the bands it works on. */
function solvedFigures(candidate: Candidate, say: Say) {
  const bands = candidate.bands.filter(({ served }) => served);
  const short = (value: number): number => Number(value.toPrecision(2));
  const range = (values: readonly number[]) => ({
    least: say.format.number(Math.min(...values), 2),
    most: say.format.number(Math.max(...values), 2),
  });
  const watts = bands.flatMap(({ radiatedW }) => radiatedW ?? []);
  const ratios = bands.flatMap(({ swrAtRadio }) => swrAtRadio ?? []);
  const entry = bands.flatMap(({ entryCurrentMa }) => entryCurrentMa ?? []);
  const mostMa = Math.max(0, ...entry);
  return {
    radiated: watts.length === 0 ? say(which.none) : say(which.watts, range(watts)),
    swr: ratios.length === 0 ? say(which.none) : say(which.ratios, range(ratios)),
    entry: entry.length === 0 ? say(which.none) : say(which.milliamperes, { ma: mostMa < 1 ? 0 : short(mostMa) }),
  };
}
