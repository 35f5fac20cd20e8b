/** How far everybody stays away on the band that asks for most; null when a band has no result. */
import { type AntennaPart, antennaParts } from '../../../design/antenna-part';
import type { SiteKeepOut } from '../../../drawing/keep-out-zones';
import type { Plan } from '../../../plan/plan-schema';

export function keepOutOf({ exposure }: Plan): number | null {
  const known = exposure.flatMap(({ publicM }) => (publicM === null ? [] : [publicM]));
  return known.length === 0 || known.length < exposure.length ? null : Math.max(...known);
}

/** The same for each part, as it is drawn. Until the fields are solved every part has the one distance there is. */
export function keepOutZonesOf(plan: Plan): SiteKeepOut | null {
  const { exposure } = plan;
  const most = keepOutOf(plan);
  const widest = exposure.find(({ publicM }) => publicM === most);
  if (most === null || widest === undefined) return null;
  const farthest = (part: AntennaPart): number =>
    Math.max(
      ...exposure.map(({ method, parts, publicM }) =>
        method === 'solved' ? (parts.find((each) => each.part === part)?.publicM ?? 0) : (publicM ?? 0),
      ),
    );
  return {
    parts: antennaParts.map((part) => ({ part, metres: farthest(part) })).filter(({ metres }) => metres > 0),
    groundM: Math.max(...exposure.map(({ groundPublicM }) => groundPublicM ?? 0)),
    decides: widest.part,
  };
}
