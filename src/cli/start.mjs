// `npm start`: installs what is missing, builds the app as it is published and serves it on this machine. One process, so
// that ending npm ends the server too.
import { resolve } from 'node:path';
import { createStaticServer, listen } from './static-server.mjs';

const usualPort = 4173;
const base = process.env.HALYARD_BASE ?? '/';

await import(new URL('../../tests/setup.mjs', import.meta.url).href);
const { build } = await import('vite'); // there only after the set-up
await build({ logLevel: 'warn' });
const port = await listen(createStaticServer(resolve('dist'), base), usualPort);
// A service worker needs localhost or https, so the name is printed and not a network address.
if (port !== usualPort) console.log(`Port ${usualPort} is in use by another program.`);
console.log(`Halyard is served at http://localhost:${port}${base} (Ctrl+C ends it)`);
