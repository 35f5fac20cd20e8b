// Serves a built app on this machine: the files with their types, and the headers a real host should send. Used by `npm start` and by the browser tests, so both see the same answers.
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { connect } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';
import { securityHeaders } from './security-headers.mjs';

/** @type {Record<string, string>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/**
 * @param {string} dir the build's folder
 * @param {string} pathname decoded path below the base, with its leading slash
 */
async function find(dir, pathname) {
  const file = normalize(join(dir, pathname.endsWith('/') ? `${pathname}index.html` : pathname));
  if (!file.startsWith(dir + sep)) return undefined;
  const body = await readFile(file).catch(() => undefined);
  return body && { file, body };
}

/** @param {string} pathname */
function decoded(pathname) {
  try {
    return decodeURIComponent(pathname);
  } catch {
    return undefined;
  }
}

/**
 * A server not yet listening.
 * @param {string} dir the build's folder
 * @param {string} base the path to serve it at
 */
export function createStaticServer(dir, base = '/') {
  return createServer(async (request, response) => {
    const pathname = decoded(new URL(request.url ?? '/', 'http://localhost').pathname);
    const found = pathname?.startsWith(base) ? await find(dir, `/${pathname.slice(base.length)}`) : undefined;
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value);
    // A page of another name leads to the one page there is; a missing picture or script stays missing.
    const isPage = request.headers.accept?.includes('text/html') && pathname?.startsWith(base);
    if (!found && isPage) return response.writeHead(302, { Location: base }).end();
    if (!found) return response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not found\n');
    const { file, body } = found;
    const etag = `"${createHash('sha256').update(body).digest('base64url').slice(0, 22)}"`;
    // Files under assets/ carry their content's hash in the name; all others are asked for again each time.
    const lasting = file.startsWith(join(dir, 'assets') + sep);
    response.setHeader('Cache-Control', lasting ? 'public, max-age=31536000, immutable' : 'no-cache');
    response.setHeader('ETag', etag);
    if (request.headers['if-none-match'] === etag) return response.writeHead(304).end();
    response.writeHead(200, { 'Content-Type': types[extname(file)] ?? 'application/octet-stream' }).end(body);
  });
}

/** Whether something already answers on a port, under either address of localhost. */
async function isTaken(/** @type {number} */ port) {
  const answers = ['127.0.0.1', '::1'].map(
    (host) =>
      new Promise((resolve) => {
        const socket = connect({ host, port, timeout: 500 });
        const end = (/** @type {boolean} */ taken) => {
          socket.destroy();
          resolve(taken);
        };
        socket.once('connect', () => end(true));
        socket.once('error', () => end(false));
        socket.once('timeout', () => end(false));
      }),
  );
  return (await Promise.all(answers)).includes(true);
}

/**
 * Listens on this machine alone, on the wanted port or, when that is taken, on a free one. Returns the port.
 * @param {import('node:http').Server} server
 * @param {number} wantedPort 0 for any free one
 * @returns {Promise<number>}
 */
export async function listen(server, wantedPort) {
  const port = wantedPort !== 0 && (await isTaken(wantedPort)) ? 0 : wantedPort;
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return address.port;
}
