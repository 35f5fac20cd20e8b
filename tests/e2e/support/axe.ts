import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What axe finds wrong with the page as it stands, one line to a fault; with `enhancedContrast` also text below 7:1. */
export async function accessibilityFaults(page: Page, { enhancedContrast = false } = {}): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({ rules: { 'color-contrast-enhanced': { enabled: enhancedContrast } } })
    .analyze();
  return violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id}: ${help}: ${target.join(' ')}`));
}
