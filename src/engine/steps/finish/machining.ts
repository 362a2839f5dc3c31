import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell } from '../../step.ts';

/** What is cut: faces with stock, holes that are not left as cast, threads, and dimensions that no casting holds. */
export function showMachining(ledger: Ledger): Block[] {
  const rows = [...faces(ledger), ...holes(ledger), ...dimensions(ledger)];
  return [
    ...tableBlock('Machining', ['Feature', 'Work', 'Size', 'Stock or tolerance', 'Thread made', 'Drilled for it'], rows),
    textBlock(
      rows.length === 0
        ? 'Nothing is listed that must be machined.'
        : 'Cut no deeper than the stock: the skin of a die casting is dense and what lies beneath is not. Every cut is deburred where it meets a cast face; wash and dry before a leak test.',
    ),
  ];
}

function faces(ledger: Ledger): Cell[][] {
  const holed = new Set(ledger.part.holes.map(({ id }) => id));
  return ledger.part.machining
    .filter(({ id }) => !holed.has(id))
    .map(({ id }): Cell[] => [id, 'machined to size', '–', cell(ledger, 'machining.stock', id), '–', '–']);
}

function holes(ledger: Ledger): Cell[][] {
  return ledger.part.holes
    .filter(({ id, thread }) => thread !== undefined || (ledger.texts.get(`hole.making[${id}]`) ?? 'cored as cast') !== 'cored as cast')
    .map(({ id }): Cell[] => [
      `Hole ${id}`,
      ledger.decisions.has(`hole.making[${id}]`) ? { decision: `hole.making[${id}]` } : '–',
      ledger.texts.has(`hole.thread[${id}]`) ? textCell(ledger, 'hole.thread', id) : cell(ledger, 'hole.diameter', id),
      cell(ledger, 'hole.tolerance', id),
      textCell(ledger, 'finish.threading', id),
      drilled(ledger, id),
    ]);
}

/** The drill before the thread; a hole that is only cored has the mouth and foot of the design review. */
function drilled(ledger: Ledger, id: string): Cell {
  if (ledger.texts.get(`hole.making[${id}]`)?.includes('drilled') !== true) return '–';
  return cell(ledger, ledger.texts.get(`finish.threading[${id}]`) === 'formed' ? 'thread.forming-drilled' : 'thread.tapping-diameter', id);
}

function dimensions(ledger: Ledger): Cell[][] {
  return ledger.part.dimensions
    .filter(({ id }) => ledger.texts.get(`tolerance.verdict[${id}]`) === 'machine it')
    .map(({ id }): Cell[] => [
      `Dimension ${id}`,
      'machined, for no casting holds it',
      cell(ledger, 'dimension.nominal', id),
      cell(ledger, 'dimension.tolerance', id),
      '–',
      '–',
    ]);
}
