// Reads many sets in as many threads as the machine has cores: node batch.js 20000
import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { hundredths, projectFromSet, SCM, splitsFromLaps } from 'backhalf';

if (isMainThread) {
  const sets = Number(process.argv[2] ?? 20_000);
  const threads = Math.max(1, Math.min(availableParallelism(), 8));
  const parts = Array.from({ length: threads }, (_, i) => ({
    from: Math.floor((sets * i) / threads),
    to: Math.floor((sets * (i + 1)) / threads),
  }));
  const times = await Promise.all(parts.map(read));
  const all = times.flat();
  console.log(
    `${all.length} sets read, from ${Math.min(...edges(all))} to ${Math.max(...edges(all))} hundredths`,
  );
} else {
  const { from, to } = workerData;
  parentPort.postMessage(
    Array.from(
      { length: to - from },
      (_, i) => projectFromSet(made(from + i), { distance: 1500 }).time,
    ),
  );
}

/** A thread for one part. Sets are plain data, so they could be sent as well as made there. */
function read(workerData) {
  return new Promise((done, failed) => {
    const worker = new Worker(new URL(import.meta.url), { workerData });
    worker.once('message', done).once('error', failed);
  });
}

/** A made-up set: twenty 100s, the second half a little slower from set to set. */
function made(n) {
  const rep = splitsFromLaps(50, [3150, 3250 + (n % 200)].map(hundredths));
  return { pool: SCM, repDistance: 100, reps: Array(20).fill(rep), sendOff: hundredths(9000) };
}

/** The least and the greatest of many numbers, found without handing them all over at once. */
function edges(values) {
  return [values.reduce((a, b) => Math.min(a, b)), values.reduce((a, b) => Math.max(a, b))];
}
