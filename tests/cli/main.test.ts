import { expect, test } from 'vitest';
import { main } from '../../src/cli/main';

/** What a command line gives back. */
async function said(...words: string[]) {
  let out = '';
  let err = '';
  const code = await main(words, {
    readStdin: async () => '',
    readFile: async () => '',
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

test('an unknown command is bad input: exit 2, nothing on standard output, and the allowed ones named', async () => {
  const { err, ...rest } = await said('no-such-command');
  expect(rest).toEqual({ code: 2, out: '' });
  expect(err).toMatch(/^command: "no-such-command" is not known; allowed: .*\n$/);
});

test.each([
  { words: ['schema', 'answers'], err: 'answers: is not expected; allowed: nothing behind it\n' },
  { words: ['plan', '--quick'], err: /^--quick: is not expected; allowed: one file of answers / },
  { words: ['plan'], err: /^file: is missing; allowed: one file of answers / },
  { words: ['solve', '-', 'more'], err: /^more: is not expected; allowed: one file of geometry / },
  { words: ['solve'], err: /^file: is missing; allowed: one file of geometry / },
])('$words is bad input that says what is allowed', async ({ words, err }) => {
  expect(await said(...words)).toEqual({
    code: 2,
    out: '',
    err: err instanceof RegExp ? expect.stringMatching(err) : err,
  });
});

test('schema prints every record', async () => {
  const { code, out, err } = await said('schema');
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(Object.keys(JSON.parse(out))).toEqual(['answers', 'plan', 'geometry', 'solution']);
});
