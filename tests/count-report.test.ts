import { expect, test } from 'vitest';
import { count } from './count-report.mjs';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((result) => ({ status: result })),
});

test.each([
  { what: 'passing tests', files: [file('passed', 'passed', 'passed')], good: true, passed: 2, failed: 0 },
  { what: 'a failing test', files: [file('failed', 'passed', 'failed')], good: false, passed: 1, failed: 1 },
  { what: 'a skipped test as failed', files: [file('passed', 'passed', 'pending')], good: true, passed: 1, failed: 1 },
  {
    what: 'a file that does not load',
    files: [file('failed'), file('passed', 'passed')],
    good: false,
    passed: 1,
    failed: 1,
  },
  { what: 'a bad end that no test shows', files: [file('passed', 'passed')], good: false, passed: 1, failed: 1 },
  { what: 'no files at all', files: [], good: false, passed: 0, failed: 1 },
])('the count of a run sees $what', ({ files, good, passed, failed }) => {
  expect(count({ testResults: files }, good)).toEqual({ passed, failed });
});
