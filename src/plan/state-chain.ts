/** The chain from wire to radio in words. */
import type { Link, Reason } from '../advice/finding';
import { buy, deviceNames } from '../words/en/devices';
import { why as reasons } from '../words/en/why';
import { render } from '../words/message';
import type { ChainItem, Plan } from './plan-schema';
import type { Speaker } from './speaker';
import { stateAlternative, stateBuild, stateFigures } from './state-device';
import { stateSource, stateWorkingOrNull } from './word-sources';

export const stateChain = (chain: readonly Link[], speaker: Speaker): Plan['chain'] =>
  chain.map((link) => stateLink(link, speaker));

function stateLink(link: Link, speaker: Speaker): ChainItem {
  const name = deviceNames[link.device] ?? link.device;
  return {
    device: link.device,
    at: link.at,
    distanceM: link.distanceM,
    distanceMWorking: stateWorkingOrNull(link.distanceMWorking),
    ratio: link.ratio,
    kind: link.kind,
    ports: link.ports === null ? null : { ...link.ports },
    minimumOhm: link.minimumOhm,
    minimumOhmBand: link.minimumOhmBand,
    line: link.line,
    lengthM: link.lengthM,
    name: render(name, { ratio: link.ratio ?? 0, line: link.line ?? '' }, speaker.format),
    why: link.why.map((reason) => stateReason(reason, speaker)),
    build: link.build === null ? null : stateBuild(link.build, speaker),
    figures: link.figures === null ? null : stateFigures(link.figures, speaker),
    alternatives: link.alternatives.map((each) => stateAlternative(each, speaker)),
    buy: speaker.say(buy, link.buy),
  };
}

const stateReason = (reason: Reason, speaker: Speaker): ChainItem['why'][number] => ({
  code: reason.code,
  text: speaker.say(reasons, reason),
  source: stateSource(reason.source),
});
