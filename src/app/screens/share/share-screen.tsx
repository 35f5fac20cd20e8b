/** Hands a plan over: to a phone beside this one with no signal, as link, text, picture, paper or file. Nothing leaves before a tap. */
import { planAsText } from '../../../plan/plain-text';
import { exportText } from '../../../storage/export-file';
import { shareScreen } from '../../../words/en/share-screen';
import { planAddress } from '../../handover/plan-address';
import { QrCode, useQr } from '../../handover/qr-code';
import { fileNameOf, sendFile } from '../../handover/send-file';
import { type OpenPlan, WithPlan } from '../../jobs/open-plan';
import { SendText } from '../../jobs/send-text';
import { Top } from '../../parts/top';
import { type PlanRoute, to } from '../../routes';
import { useSay } from '../../say';
import { measuredLines } from '../trim/measured-text';
import { CardView } from './card-view';
import { Way } from './way';
import '../../jobs/jobs.css';
import '../../handover/qr-code.css';
import './share.css';

export function ShareScreen({ route }: { route: PlanRoute }) {
  return <WithPlan planId={route.planId}>{(open) => <Share key={open.saved.id} {...open} />}</WithPlan>;
}

function Share({ saved, answers, plan, name }: OpenPlan) {
  const say = useSay();
  const address = planAddress(answers, location.href);
  const code = useQr(address);
  const keep = (): void => {
    const text = exportText({ plans: [saved], parts: [] }, Date.now());
    void sendFile(new File([text], fileNameOf(name, 'json'), { type: 'application/json' }), name);
  };
  const asText = (): string =>
    planAsText(plan, { name, format: say.format, measured: measuredLines(saved.measurements, say) });
  return (
    <>
      <Top up={{ href: to.plan(saved.id), words: name }} />
      <main id="main" class="two share-page">
        <div class="stack">
          <h1 tabIndex={-1}>{say(shareScreen.title)}</h1>
          <section aria-labelledby="beside">
            <h2 id="beside">{say(shareScreen.codeHead)}</h2>
            <QrCode code={code} />
            <p>{say(shareScreen.codeHow)}</p>
            {answers.onHand !== undefined && <p class="small">{say(shareScreen.partsStay)}</p>}
          </section>
        </div>
        <div class="stack">
          <Way head={shareScreen.linkHead} why={shareScreen.linkWhy}>
            <SendText title={name} text={() => address} main={false} words={linkWords} />
          </Way>
          <Way head={shareScreen.textHead} why={shareScreen.textWhy}>
            <SendText title={name} text={asText} main={false} />
          </Way>
          <CardView plan={plan} answers={answers} name={name} code={typeof code === 'string' ? null : code} />
          <Way head={shareScreen.paperHead} why={shareScreen.paperWhy}>
            <a class="btn tall" href={to.sheet(saved.id)}>
              {say(shareScreen.openSheet)}
            </a>
          </Way>
          <Way head={shareScreen.fileHead} why={shareScreen.fileWhy}>
            <button type="button" class="btn tall" onClick={keep}>
              {say(shareScreen.keepFile)}
            </button>
          </Way>
        </div>
      </main>
    </>
  );
}

const linkWords = { send: shareScreen.sendLink, copy: shareScreen.copyLink };
