import { findingText } from '../findings-text.ts';
import { type Palette, PLAIN } from '../palette.ts';
import { type CheckReport, placeOf } from './report.ts';

/** Findings for people, each with its line of the file, an empty line between two. Empty when there are none. */
export function* checkText({ findings }: CheckReport, palette: Palette = PLAIN): Iterable<string> {
  for (const [i, finding] of findings.entries()) {
    yield i === 0 ? '' : '\n';
    const from = finding.file === finding.of || finding.of === '' ? undefined : `the check of ${finding.of}`;
    yield `${findingText({ ...finding, place: placeOf(finding), frame: finding.shown, from }, palette)}\n`;
  }
}
