import { expect, test } from 'vitest';
import { apiReport } from './api-report.js';

test('the public surface is the one that was reviewed', async () => {
  await expect(apiReport()).toMatchFileSnapshot('api-report.md');
}, 60_000);
