import { basename, dirname, extname, join } from 'node:path';
import { type Plan, renderPlans, type SourceText } from '../../index.ts';
import type { Committed } from '../committed.ts';
import { figuresFor, NO_FIGURES } from '../figures.ts';
import { hash, hashOf } from './journal.ts';
import type { FileChange } from './transaction.ts';

/** A description with its new fields. */
export function changedText(path: string, bytes: Buffer, text: string): FileChange {
  // A mark at the beginning of the text is no part of it, and stays.
  const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? '\ufeff' : '';
  return { path, text: `${mark}${text}`, before: hash(bytes) };
}

/** The plans beside a file made anew, figures with them; those of them that change. */
export async function changedPlans(committed: Committed, plan: Plan): Promise<FileChange[]> {
  return [
    ...(committed.json === undefined ? [] : [changed(committed.json, await renderPlans('json', [plan]))]),
    ...(committed.markdown === undefined ? [] : await markdownFiles(committed.markdown, plan)),
  ];
}

function changed({ name }: SourceText, text: string): FileChange {
  return { path: name, text, before: hashOf(name) };
}

/** The plan in Markdown as it was asked for before: with its workings, and with its figures, where it had them. */
async function markdownFiles(markdown: SourceText, plan: Plan): Promise<FileChange[]> {
  const { name: path, text: old } = markdown;
  const before = linkedFigures(old, path);
  const set = await figuresFor({ format: 'markdown', path }, [plan], false, before.length === 0 ? NO_FIGURES : undefined);
  const workings = old.includes('## Data and workings') && !old.includes('`--workings`');
  const text = await renderPlans('markdown', [plan], false, { workings, figures: set.links });
  const drawn = new Set(set.files.map((figure) => figure.path));
  return [
    changed(markdown, text),
    ...set.files.map((figure) => ({ path: figure.path, text: figure.text, before: hashOf(figure.path) })),
    ...before.filter((figure) => !drawn.has(figure)).map((figure) => ({ path: figure, text: null, before: hashOf(figure) })),
  ];
}

/** The figures of a plan that lie beside it, by its links. */
function linkedFigures(text: string, path: string): string[] {
  const stem = basename(path, extname(path));
  const names = [...text.matchAll(/\]\(<?([^()<>\s]+\.svg)>?\)/g)].map(([, name]) => name as string);
  return [...new Set(names)].filter((name) => name === basename(name) && name.startsWith(`${stem}-`)).map((name) => join(dirname(path), name));
}
