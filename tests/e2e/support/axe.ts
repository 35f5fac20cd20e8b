import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

interface Asked {
  /** Text below 7:1 is a fault too. */
  readonly enhancedContrast?: boolean;
  /** Ask only what can change when nothing but the colours does. */
  readonly coloursOnly?: boolean;
}

/** What axe finds wrong with the page as it stands, one line to a fault. */
export async function accessibilityFaults(
  page: Page,
  { enhancedContrast = false, coloursOnly = false }: Asked = {},
): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page })
    .options({
      rules: { 'color-contrast-enhanced': { enabled: enhancedContrast } },
      ...(coloursOnly ? { runOnly: ['cat.color'] } : {}),
    })
    .analyze();
  return violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id}: ${help}: ${target.join(' ')}`));
}
