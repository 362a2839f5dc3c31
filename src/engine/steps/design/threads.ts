import { Traced } from '../../../kernel/traced.ts';
import { tappingDiameter, threadLength } from '../../../physics/hole.ts';
import { coredDepth, minorDiameter, threadEndDiameter } from '../../../physics/thread.ts';
import type { HoleSpec } from '../../../spec/index.ts';
import type { Ledger } from '../../ledger.ts';

/** Size, pitch and the cored hole that a thread wants, as far as the thread's pitch is known. */
export function reviewThread(ledger: Ledger, hole: HoleSpec): void {
  const item = hole.id;
  const [, size, pitch] = /^M([\d.]+)(?:x([\d.]+))?$/.exec(hole.thread ?? '') ?? [];
  ledger.setText('hole.tapped', size === undefined ? 'no' : 'yes', { item, at: hole.at });
  ledger.setText('thread.forming-size', 'none', { item, at: hole.at });
  if (size === undefined) return;
  ledger.attempt(`thread.cored-depth[${item}]`, `Thread in hole ${item}`, () => {
    const from = { at: hole.at, source: 'PART' } as const;
    const nominal = ledger.put(Traced.input(`thread.size[${item}]`, Number(size), 'mm', from));
    const ratio = ledger.maybe('thread.length-ratio') ?? ledger.look('thread/tapping', 'length_least', {}, 'thread.length-ratio');
    if (ledger.maybe('thread.least-size') === undefined) ledger.look('thread/tapping', 'least_size', {}, 'thread.least-size');
    const length = ledger.apply(threadLength, { ratio, size: nominal }, { item });
    if (pitch !== undefined) ledger.put(Traced.input(`thread.pitch[${item}]`, Number(pitch), 'mm', from));
    else if (ledger.lookIfAny('thread/forming-hole', 'pitch', { screw: `M${size}` }, 'thread.pitch', item) === undefined) {
      ledger.leaveUnchecked({
        id: `thread.pitch[${item}]`,
        title: `Thread in hole ${item}`,
        missing: `the coarse pitch of M${size} is not in the tables; write it, as in "M${size}x1"`,
      });
      return;
    }
    const known = ledger.value('thread.pitch', item);
    ledger.apply(coredDepth, { thread_length: length, pitch: known }, { item });
    ledger.apply(tappingDiameter, { size: nominal, pitch: known }, { item });
    fileNarrow(ledger, hole, length, ledger.apply(minorDiameter, { size: nominal, pitch: known }, { item }));
    const coarse = pitch === undefined ? known : ledger.lookIfAny('thread/forming-hole', 'pitch', { screw: `M${size}` }, 'thread.coarse-pitch', item);
    if (coarse?.value === known.value) fileForming(ledger, hole, `M${size}`);
  });
}

/** The hole for a formed thread; its tables have coarse threads only. */
function fileForming(ledger: Ledger, { id: item, at }: HoleSpec, screw: string): void {
  ledger.look('thread/forming-hole', 'top_least', { screw }, 'thread.forming-least', item);
  ledger.look('thread/forming-hole', 'top_greatest', { screw }, 'thread.forming-greatest', item);
  ledger.look('thread/forming-hole', 'bottom_least', { screw }, 'thread.forming-foot-least', item);
  ledger.look('thread/forming-hole', 'bottom_greatest', { screw }, 'thread.forming-foot-greatest', item);
  ledger.look('thread/forming-hole', 'drilled', { screw }, 'thread.forming-drilled', item);
  ledger.setText('thread.forming-size', 'known', { item, at });
}

/** Whether the draft leaves less, where the thread ends, than even the full thread stands in: then the hole is drilled before the tap. */
function fileNarrow(ledger: Ledger, hole: HoleSpec, length: Traced<'mm'>, minor: Traced<'mm'>): void {
  const item = hole.id;
  const taper = ledger.maybe('draft.hole-taper', item);
  if (taper === undefined) return;
  const depth = ledger.value('hole.core-depth', item);
  const end = ledger.apply(threadEndDiameter, { diameter: ledger.value('hole.diameter', item), taper, thread_length: length, depth }, { item });
  if (end.value < minor.value) ledger.setText('hole.tapped', 'narrow', { item, at: hole.at });
}
