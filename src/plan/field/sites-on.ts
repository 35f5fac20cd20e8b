/** The antenna as the solver takes it on each band: a linked wire is another one on each, every other antenna is the same on all. */
import type { Dimensions } from '../../advice/dimensions';
import type { BandFacts, Facts } from '../../advice/facts';
import { linkCount } from '../../advice/wire-links';
import { layoutOf } from '../layout-of';
import { type FieldSite, fieldSite } from './field-site';

export type SiteOn = (at: BandFacts) => FieldSite;

/** Null without a shape, and where no current could flow into the feed point. */
export function sitesOn(facts: Facts, dimensions: Dimensions, portsM: readonly number[]): SiteOn | null {
  const siteOf = (at?: BandFacts): FieldSite | null => {
    const layout = layoutOf(facts, dimensions, at);
    return layout === null ? null : fieldSite(layout, facts.settled.ground, portsM);
  };
  const whole = siteOf();
  if (whole === null) return null;
  return linkCount(dimensions) === 0 ? () => whole : (at) => siteOf(at) ?? whole;
}
