// The last words of the continuous run: the counts of every report given, with each step that
// failed outside the tests as one more failure.
//   node tests/tools/closing-line.mjs STEPS_FAILED REPORT.json …

import { existsSync, readFileSync } from 'node:fs';

const [stepsFailed, ...reports] = process.argv.slice(2);
const counts = { passed: 0, failed: Number(stepsFailed), skipped: 0 };

for (const path of reports.filter((report) => existsSync(report))) {
  const report = JSON.parse(readFileSync(path, 'utf8'));
  counts.passed += report.numPassedTests;
  counts.failed += report.numFailedTests;
  counts.skipped += report.numPendingTests + report.numTodoTests;
}

if (counts.skipped > 0) console.log(`${counts.skipped} skipped`);
console.log(`${counts.passed} passed, ${counts.failed} failed`);
process.exit(counts.failed === 0 ? 0 : 1);
