import { rmSync } from 'node:fs';
import type { TestProject } from 'vitest/node';
import { findBrowser } from '../../browser.mjs';
import { buildApp } from './build-app';

/** Before all browser tests: one browser and one build, shared by every file. */
export default async function setup(project: TestProject): Promise<() => void> {
  const browser = await findBrowser();
  process.stdout.write(`Browser: ${browser.from}\n`);
  project.provide('browser', browser);
  const dir = buildApp('app');
  project.provide('builtDir', dir);
  return () => rmSync(dir, { recursive: true, force: true });
}

declare module 'vitest' {
  interface ProvidedContext {
    browser: { executablePath: string; env: Record<string, string>; from: string };
    builtDir: string;
  }
}
