import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { createStaticServer, listen } from '../../src/cli/static-server.mjs';

/** A small invented build with a file beside it that nobody may read. */
async function served(base = '/') {
  const root = mkdtempSync(join(tmpdir(), 'halyard-'));
  mkdirSync(join(root, 'built/assets'), { recursive: true });
  writeFileSync(join(root, 'built/index.html'), '<title>page</title>');
  writeFileSync(join(root, 'built/assets/a.js'), 'export {};');
  writeFileSync(join(root, 'secret.txt'), 'secret');
  const server = createStaticServer(join(root, 'built'), base);
  const port = await listen(server, 0);
  onTestFinished(() => {
    server.close();
    server.closeAllConnections();
    rmSync(root, { recursive: true });
  });
  return { port, url: `http://localhost:${port}` };
}

/** Without the tidying of addresses that fetch does. */
const rawStatus = (port: number, path: string) =>
  new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path }, (response) => resolve(response.resume().statusCode))
      .on('error', reject)
      .end();
  });

test('files come with their type and the security policy', async () => {
  const { url } = await served();
  const page = await fetch(`${url}/`);
  expect(await page.text()).toBe('<title>page</title>');
  expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8');
  expect(page.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
  const script = await fetch(`${url}/assets/a.js`);
  expect(script.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
});

test('only files named by their content are kept without asking again', async () => {
  const { url } = await served();
  expect((await fetch(`${url}/assets/a.js`)).headers.get('cache-control')).toContain('immutable');
  const page = await fetch(`${url}/`);
  expect(page.headers.get('cache-control')).toBe('no-cache');
  const again = await fetch(`${url}/`, { headers: { 'If-None-Match': page.headers.get('etag') ?? '' } });
  expect(again.status).toBe(304);
});

test.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/../../secret.txt', '/%'])(
  'nothing outside the build is read: %s',
  async (path) => {
    const { port } = await served();
    expect(await rawStatus(port, path)).toBe(404);
  },
);

test('a page of another name leads to the app, a missing file stays missing', async () => {
  const { url } = await served('/field/');
  const page = await fetch(`${url}/field/nowhere`, { headers: { Accept: 'text/html' }, redirect: 'manual' });
  expect([page.status, page.headers.get('location')]).toEqual([302, '/field/']);
  expect((await fetch(`${url}/field/nowhere.png`)).status).toBe(404);
  expect((await fetch(`${url}/elsewhere`, { headers: { Accept: 'text/html' } })).status).toBe(404);
});

test('a port that is in use is left alone and another one taken', async () => {
  const { port } = await served();
  const other = createStaticServer(tmpdir());
  onTestFinished(() => {
    other.close();
  });
  expect(await listen(other, port)).not.toBe(port);
});
