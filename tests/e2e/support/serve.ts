import type { Server } from 'node:http';
import { inject } from 'vitest';
import { createStaticServer, listen } from '../../../src/cli/static-server.mjs';

export interface Served {
  /** With a slash at its end. */
  readonly url: string;
  /** Ends the server and every open connection: after this nothing answers at `url`. */
  stop(): Promise<void>;
  /** Serves again at the same address, perhaps another build. */
  start(dir?: string): Promise<void>;
}

/** Serves a build (the shared one unless told) on a free port. */
export async function serveBuilt(builtDir: string = inject('builtDir'), base = '/'): Promise<Served> {
  let dir = builtDir;
  let server: Server = createStaticServer(dir, base);
  const port = await listen(server, 0);
  return {
    url: `http://localhost:${port}${base}`,
    stop: () =>
      new Promise((resolve, reject) => {
        server.close((error) => (error ? reject(error) : resolve()));
        server.closeAllConnections();
      }),
    start: async (newDir = dir) => {
      dir = newDir;
      server = createStaticServer(dir, base);
      const now = await listen(server, port);
      if (now !== port) throw new Error(`port ${port} was taken meanwhile`);
    },
  };
}
