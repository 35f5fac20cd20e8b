import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, inject, test } from 'vitest';
import { openBrowser, untilKeptOffline } from './support/browser';
import { serveBuilt } from './support/serve';

test('the app opens under its own security policy without a complaint', async () => {
  const { url } = await serveBuilt();
  const { page, complaints } = await openBrowser();
  const response = await page.goto(url);
  await page.locator('#app > *').first().waitFor();
  expect(response?.headers()['content-security-policy']).toContain("default-src 'none'");
  await untilKeptOffline(page);
  expect(await page.title()).toContain('Halyard');
  expect(complaints).toEqual([]);
});

test('the policy in the page alone keeps a foreign script out', async () => {
  const page = readFileSync(join(inject('builtDir'), 'index.html'), 'utf8');
  expect(page.indexOf('Content-Security-Policy')).toBeGreaterThan(0);
  expect(page.indexOf('Content-Security-Policy')).toBeLessThan(page.indexOf('<script'));
});

test('the notices of what is built into the app are served with it', async () => {
  const { url } = await serveBuilt();
  const served = await fetch(`${url}licences.txt`);
  expect(served.headers.get('content-type')).toContain('text/plain');
  const text = await served.text();
  for (const part of ['Halyard contributors', 'SIL OPEN FONT LICENSE', 'Apache License', 'ISC License'])
    expect(text).toContain(part);
  const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
  for (const [name, version] of Object.entries(dependencies)) expect(text).toContain(`\n${name} ${version} (`);
  expect(text).not.toContain(`\nvite ${devDependencies.vite} `);
});

test('any page opens with the server gone once the first visit is over', async () => {
  const server = await serveBuilt();
  const { page } = await openBrowser();
  await page.goto(server.url);
  await untilKeptOffline(page);
  await server.stop();
  await expect(fetch(server.url)).rejects.toThrow();
  await page.reload();
  await page.locator('#app > *').first().waitFor();
  await page.goto(`${server.url}?from=somewhere#/on-hand`);
  await page.locator('#app > *').first().waitFor();
  await page.goto(`${server.url}some/page/that/is/none`);
  await page.locator('#app > *').first().waitFor();
  expect(page.url()).toBe(server.url);
  const icon = await page.evaluate(async () => (await fetch('/icons/icon-192.png')).status);
  expect(icon).toBe(200);
});

test('the app also works below a path of a host, server gone', async () => {
  const server = await serveBuilt(undefined, '/field/');
  const { page, complaints } = await openBrowser();
  await page.goto(server.url);
  await page.locator('#app > *').first().waitFor();
  await untilKeptOffline(page);
  await server.stop();
  await page.reload();
  await page.locator('#app > *').first().waitFor();
  expect(complaints).toEqual([]);
});
