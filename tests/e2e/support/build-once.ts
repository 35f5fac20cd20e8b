import type { TestProject } from 'vitest/node';
import { findBrowser } from '../../browser.mjs';
import { buildApp } from './build-app';

/** Before all browser tests: one browser and one build, shared by every file. */
export default async function setup(project: TestProject): Promise<void> {
  const browser = await findBrowser();
  process.stdout.write(`Browser: ${browser.from}\n`);
  project.provide('browser', browser);
  project.provide('builtDir', buildApp('app'));
}

declare module 'vitest' {
  interface ProvidedContext {
    browser: { executablePath: string; env: Record<string, string>; from: string };
    builtDir: string;
  }
}
