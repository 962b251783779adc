// The last line of a run: how many tests passed and failed.
import { readFileSync } from 'node:fs';

try {
  const file = new URL('../reports/tests.json', import.meta.url);
  const { numPassedTests, numFailedTests, testResults } = JSON.parse(readFileSync(file, 'utf8'));
  // A file that could not be loaded has no test to count, and has failed all the same.
  const unloaded = testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  );
  console.log(`${numPassedTests} passed, ${numFailedTests + unloaded.length} failed`);
} catch {
  console.log('0 passed, 1 failed');
}
