import { parentPort, workerData } from 'node:worker_threads';
import { processIo } from '../io.ts';
import { replanFile, rulebooks, type Task } from './job.ts';

/** The far end of the pool: replans the files that it is sent, one after the other, until it is ended. */
export async function work(): Promise<void> {
  const port = parentPort;
  if (port === null) return;
  const io = processIo();
  const rules = await rulebooks(workerData as Task, io);
  port.on('message', async (file: string) => {
    try {
      port.postMessage({ outcome: await replanFile(file, workerData as Task, rules, io) });
    } catch (error) {
      port.postMessage({ fault: error instanceof Error ? (error.stack ?? error.message) : String(error) });
    }
  });
}
