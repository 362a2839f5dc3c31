// Which fault is on, for code.mjs: bundled into the program it puts faults into.
export let active = -1;
let [passes, most] = [0, 0];

/** What makes each module forget what it keeps. */
export const forgets = [];

/** Turns on a fault, which may be passed `limit` times; -1 is none. */
export function set(id, limit) {
  [active, passes, most] = [id, 0, limit];
  for (const forget of forgets) forget();
}

/** Called where the fault that is on is passed. A loop that it makes endless ends here. */
export function pass() {
  passes += 1;
  if (passes > most) throw new Error('passed too often');
  return true;
}

/** How often each switch was passed. */
export const counts = new Uint32Array(2 ** 17);
export function count(...ids) {
  for (let i = 0; i < ids.length; i += 1) counts[ids[i]] += 1;
}
