import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

/** Builds the app as published, into a folder of this process alone, so that runs at the same time do no harm. Returns it. */
export function buildApp(name: string, chosen: { HALYARD_VERSION?: string; HALYARD_LANGUAGE?: string } = {}): string {
  const dir = resolve('node_modules/.cache/e2e', `${name}-${process.pid}`);
  const { status, stderr, stdout } = spawnSync(process.execPath, ['node_modules/vite/bin/vite.js', 'build'], {
    env: { ...process.env, NODE_ENV: 'production', HALYARD_OUT_DIR: dir, HALYARD_VERSION: '0.0.0-test', ...chosen },
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`the app does not build:\n${stdout}\n${stderr}`);
  return dir;
}
