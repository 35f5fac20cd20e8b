/** A wound transformer tried out at the table: which resistor, what SWR to expect on each band, what was read, and whether that will do. */
import { useState } from 'preact/hooks';
import type { SavedPlan } from '../../../design/saved-plan';
import type { ChainItem, Plan } from '../../../plan/plan-schema';
import { decimalText } from '../../../words/decimal';
import { boxTest } from '../../../words/en/box-test-screen';
import { jobs } from '../../../words/en/job-screens';
import { bandName } from '../../../words/en/names';
import { readSwr } from '../../fields/read-swr';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { type WoundDevice, woundDevices } from '../../jobs/windings';
import { Columned } from '../../parts/column-table';
import { SaveTrouble } from '../../parts/save-note';
import { Top } from '../../parts/top';
import { type BenchRoute, to } from '../../routes';
import { moment, useSay } from '../../say';
import { useStores } from '../../stores/stores';
import { type BoxReading, boxBuild, boxReadingKey, boxReadings, buildInHand, partsOfBuild } from './box-readings';
import { type BoxVerdict, judgeSwr, USABLE_SWR } from './judge-swr';
import '../../jobs/jobs.css';
import { Underway } from '../../jobs/underway';
import './box-test.css';

type Test = NonNullable<NonNullable<ChainItem['figures']>['test']>;

export function BoxTestScreen({ route }: { route: BenchRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <BoxTest open={open} device={route.device} />}</WithPlan>;
}

/** The device of the address, or the first that can be tested. */
function testedIn(plan: Plan, device: string) {
  const tested = woundDevices(plan).flatMap((wound) => {
    const test = wound.item.figures?.test ?? null;
    return test === null ? [] : [{ wound, test }];
  });
  return tested.find(({ wound }) => wound.id === device) ?? tested[0];
}

function BoxTest({ open: { plan, saved, name, study }, device }: { readonly open: OpenPlan; readonly device: string }) {
  const say = useSay();
  const tested = testedIn(plan, device);
  const up = { href: to.plan(saved.id), words: name };
  if (tested === undefined) {
    return (
      <>
        <Top up={up} />
        <main id="main">
          <h1 tabIndex={-1}>{say(boxTest.nothing)}</h1>
          <p>{say(boxTest.nothingWhy)}</p>
        </main>
      </>
    );
  }
  const { wound, test } = tested;
  const { item } = wound;
  const isSettled = study.kind !== 'working' && study.kind !== 'idle';
  return (
    <>
      <Top up={up} />
      <main id="main" class="two">
        <div class="stack">
          <div class="in-hand">
            <h1 tabIndex={-1}>
              {say(boxTest.title)} <span>{item.name}</span>
            </h1>
          </div>
          <SaveTrouble />
          <p>{say(boxTest.meaning)}</p>
          <p class="resistor">
            <span>{say(boxTest.resistorIs)}</span> <b>{say(boxTest.resistor, { ohm: test.resistorOhm })}</b>
          </p>
          <ol class="test-steps">
            {say(boxTest.how, { ohm: test.resistorOhm, isBalanced: item.ports?.in === 'balanced' })
              .split('|')
              .map((each) => (
                <li key={each}>{each}</li>
              ))}
          </ol>
          <p>
            <b>{say(boxTest.noSending)}</b>
          </p>
        </div>
        <div class="stack">
          <Readings {...{ saved, wound, test, isSettled }} />
          <Acceptable test={test} hasCapacitor={item.build?.capacitorPf != null} />
        </div>
      </main>
      <section class="act" aria-label={say(jobs.next)}>
        <a class="btn go" href={to.plan(saved.id)}>
          {say(boxTest.toPlan)}
        </a>
      </section>
    </>
  );
}

interface ReadingsProps {
  readonly saved: SavedPlan;
  readonly wound: WoundDevice;
  readonly test: Test;
  /** False while the plan may still come to another box. */
  readonly isSettled: boolean;
}

function Readings({ saved, wound, test, isSettled }: ReadingsProps) {
  const say = useSay();
  const all = boxReadings(saved, wound.id);
  const inHand = buildInHand(boxBuild(wound), isSettled, all);
  return (
    <Columned>
      <table class="box-test">
        <thead>
          <tr>
            <th scope="col">{say(boxTest.band)}</th>
            <th scope="col">
              {say(boxTest.expected)} <Underway isUnderway={!isSettled} />
            </th>
            <th scope="col">{say(boxTest.measured)}</th>
          </tr>
        </thead>
        <tbody>
          {test.bands.map(({ band, swr }) => {
            const reading = boxReadingKey(wound.id, inHand, band);
            return (
              <Reading
                key={reading}
                saved={saved}
                reading={reading}
                name={bandName(band)}
                expected={say(boxTest.aboutSwr, { swr: decimalText(swr, 1) })}
                judge={(measured) => (isSettled ? judgeSwr(measured, test.goodSwr, swr) : 'unjudged')}
                earlier={all.find((each) => each.band === band && each.build !== inHand)}
              />
            );
          })}
        </tbody>
      </table>
    </Columned>
  );
}

interface ReadingProps {
  readonly saved: SavedPlan;
  /** What it is kept under. */
  readonly reading: string;
  /** Of the band. */
  readonly name: string;
  readonly expected: string;
  readonly judge: (measured: number) => BoxVerdict | 'unjudged';
  /** Of a box that was wound otherwise. */
  readonly earlier: BoxReading | undefined;
}

/** A row to fill in, and below it, as wide as the table, what that means. */
function Reading({ saved, reading, name, expected, judge, earlier }: ReadingProps) {
  const say = useSay();
  const { library } = useStores();
  const [wrong, setWrong] = useState(false);
  const kept = saved.readings[reading];
  const value = kept?.value ?? null;
  const take = (text: string): void => {
    const read = readSwr(text);
    setWrong(read === null);
    if (read === null) return;
    library.edit(
      saved.id,
      { kind: 'reading', key: reading, value: read ?? null },
      { kind: 'typed', field: reading, text: '' },
    );
  };
  const id = reading.replaceAll(' ', '-');
  return (
    <>
      <tr>
        <th scope="row">{name}</th>
        <td data-head={say(boxTest.expected)}>{expected}</td>
        <td data-head={say(boxTest.measured)}>
          <input
            type="text"
            inputMode="decimal"
            autoComplete="off"
            aria-label={say(boxTest.fieldFor, { band: name })}
            aria-describedby={`${id}-is`}
            value={saved.typed[reading]?.text ?? (value === null ? '' : say.format.number(value))}
            onInput={({ currentTarget }) =>
              library.edit(saved.id, { kind: 'typed', field: reading, text: currentTarget.value })
            }
            onChange={({ currentTarget }) => take(currentTarget.value)}
          />
        </td>
      </tr>
      <tr class="judged">
        <td colSpan={3}>
          <span id={`${id}-is`} role="status">
            {wrong && <b>{say(boxTest.wrong)}</b>}
            {!wrong && value !== null && kept !== undefined && (
              <b>{say(boxTest[judge(value)], { time: moment(kept.at) })}</b>
            )}
          </span>
          {earlier !== undefined && <Earlier reading={earlier} />}
        </td>
      </tr>
    </>
  );
}

/** Kept, but no proof of the box that the plan now asks for. */
function Earlier({ reading: { build, value, at } }: { readonly reading: BoxReading }) {
  const say = useSay();
  const swr = say.format.number(value);
  return <p class="earlier">{say(boxTest.earlier, { ...partsOfBuild(build), swr, time: moment(at) })}</p>;
}

function Acceptable({ test, hasCapacitor }: { readonly test: Test; readonly hasCapacitor: boolean }) {
  const say = useSay();
  return (
    <>
      <section aria-labelledby="acceptable">
        <h2 id="acceptable">{say(boxTest.acceptableHead)}</h2>
        <p>{say(boxTest.acceptable, { good: decimalText(test.goodSwr, 1), usable: decimalText(USABLE_SWR, 1) })}</p>
        <p class="small">{say(boxTest.doubt)}</p>
      </section>
      <section aria-labelledby="where">
        <h2 id="where">{say(boxTest.badHead)}</h2>
        <ul class="faults">
          {say(boxTest.badChecks, { hasCapacitor })
            .split('|')
            .map((each) => (
              <li key={each}>{each}</li>
            ))}
        </ul>
      </section>
    </>
  );
}
