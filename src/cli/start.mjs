// `npm start`: builds the app as it is published and serves it on this machine.
import { resolve } from 'node:path';
import { build } from 'vite';
import { createStaticServer, listen } from './static-server.mjs';

const usualPort = 4173;

await build({ logLevel: 'warn' });
const port = await listen(createStaticServer(resolve('dist'), process.env.HALYARD_BASE ?? '/'), usualPort);
// A service worker needs localhost or https, so the name is printed and not a network address.
if (port !== usualPort) console.log(`Port ${usualPort} is in use by another program.`);
console.log(`Halyard is served at http://localhost:${port}${process.env.HALYARD_BASE ?? '/'} (Ctrl+C ends it)`);
