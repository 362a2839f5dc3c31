import { parentPort, workerData } from 'node:worker_threads';
import { processIo } from '../io.ts';
import { JOBS, type JobName } from './jobs.ts';

/** What a thread is begun with. */
export interface Orders {
  readonly job: JobName;
  readonly setting: unknown;
}

/** What a thread says of an item: what came of it, or the fault of ours that it met. */
export type Answer = { readonly result: unknown } | { readonly fault: string };

/** The far end of the pool: works on the items that it is sent, one after the other, until it is ended. */
export async function work(): Promise<void> {
  const port = parentPort;
  if (port === null) return;
  const { job, setting } = workerData as Orders;
  const make = await JOBS[job]();
  const begun = make(setting, processIo());
  port.on('message', async (item: unknown) => {
    try {
      port.postMessage({ result: await (await begun)(item) } satisfies Answer);
    } catch (error) {
      port.postMessage({ fault: error instanceof Error ? (error.stack ?? error.message) : String(error) } satisfies Answer);
    }
  });
}
