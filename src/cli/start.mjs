// `npm start`: installs what is missing, builds the app as it is published and serves it on this machine.
import { resolve } from 'node:path';
import { createStaticServer, listen } from './static-server.mjs';

const usualPort = 4173;

await import(new URL('../../tests/setup.mjs', import.meta.url).href);
const { build } = await import('vite'); // there only after the set-up
await build({ logLevel: 'warn' });
const port = await listen(createStaticServer(resolve('dist')), usualPort);
// A service worker needs localhost or https, so the name is printed and not a network address.
if (port !== usualPort) console.log(`Port ${usualPort} is in use by another program.`);
// Ending npm by a signal leaves what it started without a parent: end then too, or the port stays taken.
const parent = process.ppid;
if (process.env.npm_lifecycle_event) setInterval(() => process.ppid === parent || process.exit(0), 500);
console.log(`Halyard is served at http://localhost:${port}/ (Ctrl+C ends it)`);
