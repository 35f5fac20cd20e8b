import type { VNode } from 'preact';
import { render } from 'preact-render-to-string';
import { expect } from 'vitest';

/** As a file that opens by itself; the app styles drawings by class, so these show shape alone. */
export const file = (drawing: VNode): string =>
  `${render(drawing).replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"')}\n`;

/** Nothing unknown is drawn, and the drawing says what it shows. */
export const sound = (svg: string): void => {
  expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  expect(svg).toMatch(/role="img" aria-label="[^"]+"/);
};
