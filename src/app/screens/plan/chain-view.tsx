/** The feed system on the plumb line, from wire to radio: devices are tags, the stretch between two tags is the distance. */

import type { Answers } from '../../../design/answers';
import { radiatorM } from '../../../plan/plan-figures';
import type { ChainItem, Plan } from '../../../plan/plan-schema';
import { capital } from '../../../words/capital';
import { boxTest } from '../../../words/en/box-test-screen';
import { planScreen } from '../../../words/en/plan-screen';
import { windScreen } from '../../../words/en/wind-screen';
import { KeyLength } from '../../jobs/key-length';
import { SourceNote } from '../../jobs/source-note';
import { Underway } from '../../jobs/underway';
import { woundDevices } from '../../jobs/windings';
import { to } from '../../routes';
import { useSay } from '../../say';
import { BuildView } from './build-view';
import { boxAtFeedPoint } from './feed-box';
import { FiguresView } from './figures-view';
import { useFold } from './fold';
import { OtherRings } from './other-rings';
import { WorkingView } from './working-view';

const places = {
  'feed-point': planScreen.atFeedPoint,
  'along-line': planScreen.alongLine,
  'building-entry': planScreen.atEntry,
  radio: planScreen.atRadio,
} as const;

/** A device is told where it stands once: at the feed point and at the radio it needs no distance. */
const AT_FEED_POINT_M = 0.05;
/** Reason code of the stretch of coax that is the wire's other half. */
const COUNTERPOISE = 'line-is-counterpoise';

interface ChainViewProps {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly planId: string;
  readonly isUnderway: boolean;
}

export function ChainView({ plan, answers, planId, isUnderway }: ChainViewProps) {
  const say = useSay();
  const hasBox = boxAtFeedPoint(plan);
  const wireM = radiatorM(plan);
  const wound = woundDevices(plan);
  return (
    <section aria-labelledby="chain">
      <div class="head">
        <h2 id="chain" tabIndex={-1}>
          {say(planScreen.chain)}
        </h2>
        <Underway isUnderway={isUnderway} />
      </div>
      <ol class="chain">
        <li class="sky">
          <svg class="d" viewBox="0 0 328 96" aria-hidden="true">
            <path class="w" d="M24 110 L24 96 L322 12" />
            <circle class="o" cx="322" cy="12" r="6" />
          </svg>
          <h3>{say(planScreen.wire)}</h3>
          {wireM !== null && <KeyLength metres={wireM} what={say(planScreen.wire)} />}
        </li>
        {plan.chain.map((item, index) => {
          const key = `${item.device} ${item.at} ${index}`;
          if (item.device === 'line') return <Stretch key={key} item={item} />;
          const isFirst = plan.chain.findIndex(({ device }) => device === item.device) === index;
          const woundId = wound.find((each) => each.item === item)?.id;
          return <Device key={key} {...{ item, hasBox, isFirst, answers, planId, woundId }} />;
        })}
      </ol>
    </section>
  );
}

function Stretch({ item }: { readonly item: ChainItem }) {
  const say = useSay();
  return (
    <li class="span">
      <span class="dim" />
      <div class="length-of">
        {item.lengthM !== null && <KeyLength metres={item.lengthM} what={item.name} />}
        <Why item={item} words={say(planScreen.stretch, { line: item.name })} />
      </div>
      {item.why.some(({ code }) => code === COUNTERPOISE) && <p>{say(planScreen.isCounterpoise)}</p>}
    </li>
  );
}

interface DeviceProps {
  readonly item: ChainItem;
  readonly hasBox: boolean;
  /** The first of its kind on the line: it is said what such a device does. */
  readonly isFirst: boolean;
  readonly answers: Answers;
  readonly planId: string;
  /** Under which its turns are counted, where it is wound. */
  readonly woundId: string | undefined;
}

function Device({ item, hasBox, isFirst, answers, planId, woundId }: DeviceProps) {
  const say = useSay();
  const last = item.device === 'radio';
  const [first] = item.why;
  const away = item.distanceM !== null && item.distanceM > AT_FEED_POINT_M && item.at !== 'radio';
  return (
    <li class={last ? 'node end' : 'node'}>
      <h3 class="tag">{capital(item.name)}</h3>
      {last && <Bob />}
      <div class="body">
        {!last && (
          <p>
            <b>{say(places[item.at], { away })}</b>{' '}
            {away && item.distanceM !== null && say(planScreen.counted, { metres: item.distanceM, hasBox })}
          </p>
        )}
        {isFirst && item.device !== 'line' && item.device !== 'radio' && (
          <p>{say(planScreen[`does_${item.device}`])}</p>
        )}
        {last && first !== undefined && <p>{first.text}</p>}
        {item.figures?.shortfalls.map((shortfall) => (
          <p key={shortfall}>
            <b>{shortfall}</b>
          </p>
        ))}
        <div class="folds">
          {!last && <Why item={item} />}
          {item.build !== null && (
            <BuildView item={item} build={item.build}>
              {woundId !== undefined && <BenchLinks {...{ item, planId, woundId }} />}
              {item.figures !== null && <FiguresView item={item} figures={item.figures} />}
              <OtherRings item={item} answers={answers} planId={planId} />
            </BuildView>
          )}
        </div>
      </div>
    </li>
  );
}

interface BenchLinksProps {
  readonly item: ChainItem;
  readonly planId: string;
  readonly woundId: string;
}

/** What is done with it at the table. */
function BenchLinks({ item, planId, woundId }: BenchLinksProps) {
  const say = useSay();
  const { name } = item;
  return (
    <>
      <a class="btn tall" href={to.wind(planId, woundId)} aria-label={say(windScreen.openFor, { name })}>
        {say(windScreen.open)}
      </a>
      {item.figures?.test != null && (
        <a class="btn tall" href={to.boxTest(planId, woundId)} aria-label={say(boxTest.openFor, { name })}>
          {say(boxTest.open)}
        </a>
      )}
    </>
  );
}

/** Why it is there. A stretch of line is named in the same breath. */
function Why({ item, words = null }: { readonly item: ChainItem; readonly words?: string | null }) {
  const say = useSay();
  const fold = useFold(`why ${item.device} ${item.at}`);
  if (item.why.length === 0) return words === null ? null : <p>{words}</p>;
  return (
    <details {...fold}>
      <summary aria-label={words === null ? `${say(planScreen.why)}: ${item.name}` : undefined}>
        {words ?? say(planScreen.why)}
      </summary>
      <div class="reasons">
        {item.why.map(({ code, text }) => (
          <p key={code}>{text}</p>
        ))}
        {item.minimumOhm !== null && item.minimumOhmBand !== null && (
          <p>{say(planScreen.atLeast, { ohm: item.minimumOhm, band: item.minimumOhmBand })}</p>
        )}
        {item.build === null && (item.device === 'arrester' || item.device === 'tuner') && (
          <p>
            <b>{say(planScreen.toBuy)}.</b> {item.buy}
          </p>
        )}
        <WorkingView working={item.distanceMWorking} what={item.name} />
        <SourceNote sources={item.why.map(({ source }) => source)} />
      </div>
    </details>
  );
}

const Bob = () => (
  <svg class="bob" viewBox="0 0 48 58" aria-hidden="true">
    <path d="M24 0V10" stroke="currentColor" stroke-width="7" />
    <path d="M13 9h22v7l5 12-16 28L8 28l5-12z" fill="currentColor" />
  </svg>
);
