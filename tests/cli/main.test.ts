import { expect, test } from 'vitest';
import { main } from '../../src/cli/main';

test('an unknown command is bad input: exit 2, nothing on standard output, and the allowed ones named', async () => {
  let out = '';
  let err = '';
  const code = await main(['no-such-command'], {
    readStdin: async () => '',
    readFile: async () => '',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(/^command: "no-such-command" is not known; allowed: .*\n$/);
});
