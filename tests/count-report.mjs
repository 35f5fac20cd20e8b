/** @typedef {{ testResults: { status: string, assertionResults: { status: string }[] }[] }} Report as Vitest writes it */

/**
 * Counts a Vitest report. A skipped test has shown nothing and counts as failed; so does a file that could not be loaded,
 * and a run that ended badly for another reason.
 * @param {Report} report
 * @param {boolean} good whether the run ended well
 */
export function count(report, good) {
  const files = report.testResults;
  const tests = files.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const unloaded = files.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length;
  const failed = tests.length - passed + unloaded;
  return { passed, failed: failed === 0 && !good ? 1 : failed };
}
