import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textBlock, textCell, valuesBlock } from '../../step.ts';
import { showCertificate, showShrink, showTolerances } from './show-figures.ts';

export function show(ledger: Ledger): readonly Block[] {
  return [
    ...showDraft(ledger),
    ...showWalls(ledger),
    ...showHoles(ledger),
    ...showDetails(ledger),
    ...showTolerances(ledger),
    ...showShrink(ledger),
    ...showCertificate(ledger),
  ];
}

function showDraft(ledger: Ledger): Block[] {
  return [
    ...valuesBlock(ledger, ['draft.depth', 'draft.least-inside', 'draft.least-outside', 'draft.absolute-least']),
    ...tableBlock(
      'Draft of walls',
      ['Wall', 'Face', 'Height', 'Drawn', 'Standard', 'Standard, distance', 'Precision'],
      ledger.part.walls.map(({ id }) => [
        id,
        textCell(ledger, 'wall.side', id),
        cell(ledger, 'wall.height', id),
        cell(ledger, 'wall.draft', id),
        cell(ledger, 'draft.wall-angle', id),
        cell(ledger, 'draft.wall-taper', id),
        cell(ledger, 'draft.wall-precision', id),
      ]),
    ),
    ...(ledger.part.walls.length === 0
      ? []
      : [
          textBlock(
            'The two tables are apart: where the draft by depth comes out below the least taper of the family, the least taper rules. Draft at the corners where walls meet is larger than that of the walls; lettering and engraving have rules of their own.',
          ),
        ]),
  ];
}

function showWalls(ledger: Ledger): Block[] {
  return valuesBlock(ledger, [
    'wall.side-area',
    'wall.thinnest',
    'wall.least',
    'wall.least-small',
    'wall.least-large',
    'wall.normal',
    'wall.thickest',
    'wall.usual-greatest',
    'wall.absolute-greatest',
    'wall.ratio',
  ]);
}

function showHoles(ledger: Ledger): Block[] {
  const { holes } = ledger.part;
  const decided = (id: string): Cell => (ledger.decisions.has(`hole.making[${id}]`) ? { decision: `hole.making[${id}]` } : '–');
  const threaded = holes.filter((hole) => hole.thread !== undefined);
  return [
    ...valuesBlock(ledger, ['hole.least-diameter']),
    ...tableBlock(
      'Holes',
      ['Hole', 'Number', 'Diameter', 'Depth', 'Cores', 'Cautious depth', 'Greatest depth', 'Depth class', 'Made'],
      holes.map(({ id }) => [
        id,
        cell(ledger, 'hole.count', id),
        cell(ledger, 'hole.diameter', id),
        cell(ledger, 'hole.depth', id),
        cell(ledger, 'hole.cores', id),
        cell(ledger, 'hole.caution-depth', id),
        cell(ledger, 'hole.greatest-depth', id),
        textCell(ledger, 'hole.reach', id),
        decided(id),
      ]),
    ),
    ...tableBlock(
      'Draft, edge and tolerance of holes',
      [
        'Hole',
        'Draft per side',
        'Draft per side, precision',
        'Draft on the diameter',
        'Diameter at the bottom',
        'Edge, least',
        'Edge, advised',
        'Edge drawn',
        'Tolerance asked',
        'Standard',
        'Precision',
      ],
      holes.map(({ id }) => [
        id,
        cell(ledger, 'draft.hole-angle', id),
        cell(ledger, 'draft.hole-precision', id),
        cell(ledger, 'draft.hole-taper', id),
        cell(ledger, 'hole.bottom-diameter', id),
        cell(ledger, 'hole.edge-least', id),
        cell(ledger, 'hole.edge-advised', id),
        cell(ledger, 'hole.edge-distance', id),
        cell(ledger, 'hole.tolerance', id),
        cell(ledger, 'tolerance.hole-standard', id),
        cell(ledger, 'tolerance.hole-precision', id),
      ]),
    ),
    ...tableBlock(
      'Cores of machined holes',
      ['Hole', 'Finished', 'Stock at the mouth', 'Core at the mouth', 'Core at the bottom', 'Cut at the bottom, per side'],
      holes
        .filter(({ id }) => ledger.values.has(`hole.core-mouth[${id}]`))
        .map(({ id }) => [
          id,
          cell(ledger, 'hole.diameter', id),
          cell(ledger, 'machining.stock', id),
          cell(ledger, 'hole.core-mouth', id),
          cell(ledger, 'hole.bottom-diameter', id),
          cell(ledger, 'hole.stock-foot', id),
        ]),
    ),
    ...showThreads(
      ledger,
      threaded.map(({ id }) => id),
    ),
  ];
}

/** The thread, and the hole that each way of making it asks for. */
function showThreads(ledger: Ledger, threaded: readonly string[]): Block[] {
  return [
    ...tableBlock(
      'Threads',
      ['Hole', 'Thread', 'Pitch', 'Full thread', 'Least cored depth', 'Hole as cored, where the thread ends'],
      threaded.map((id) => [
        id,
        textCell(ledger, 'hole.thread', id),
        cell(ledger, 'thread.pitch', id),
        cell(ledger, 'thread.length', id),
        cell(ledger, 'thread.cored-depth', id),
        cell(ledger, 'thread.end-diameter', id),
      ]),
    ),
    ...tableBlock(
      'Holes for threads',
      ['Hole', 'Cut: cored or drilled', 'Formed: drilled', 'Formed, cored: mouth, least', 'Mouth, greatest', 'Foot, least', 'Foot, greatest'],
      threaded.map((id) => [
        id,
        cell(ledger, 'thread.tapping-diameter', id),
        cell(ledger, 'thread.forming-drilled', id),
        cell(ledger, 'thread.forming-least', id),
        cell(ledger, 'thread.forming-greatest', id),
        cell(ledger, 'thread.forming-foot-least', id),
        cell(ledger, 'thread.forming-foot-greatest', id),
      ]),
    ),
    ...(threaded.some((id) => ledger.values.has(`thread.forming-drilled[${id}]`))
      ? [
          textBlock(
            'A formed thread flows outwards, so its hole is wider than that of a cut one: a hole drawn for the one is wrong for the other. Mouth and foot are those of a core two thread sizes long with little draft. Which way is planned stands with the machining.',
          ),
        ]
      : []),
  ];
}

function showDetails(ledger: Ledger): Block[] {
  const { ribs, fillets, inserts, machining } = ledger.part;
  return [
    ...tableBlock(
      'Ribs',
      ['Rib', 'Root width', 'Height', 'Draft drawn', 'Least draft', 'Tip radius drawn', 'Greatest tip radius'],
      ribs.map(({ id }) => [
        id,
        cell(ledger, 'rib.root-width', id),
        cell(ledger, 'rib.height', id),
        cell(ledger, 'rib.draft', id),
        cell(ledger, 'rib.least-draft', id),
        cell(ledger, 'rib.tip-radius', id),
        cell(ledger, 'rib.tip-radius-greatest', id),
      ]),
    ),
    ...tableBlock(
      'Fillets',
      ['Fillet', 'Radius', 'Least radius'],
      fillets.map(({ id }) => [id, cell(ledger, 'fillet.radius', id), cell(ledger, 'fillet.least-radius', id)]),
    ),
    ...tableBlock(
      'Inserts',
      ['Insert', 'Cover drawn', 'Least cover', 'Cover advised over steel'],
      inserts.map(({ id }) => [id, cell(ledger, 'insert.cover', id), cell(ledger, 'insert.least-cover'), cell(ledger, 'insert.advised-cover')]),
    ),
    ...(inserts.length === 0
      ? []
      : [
          textBlock(
            'Inserts are dry and preheated to ',
            { value: 'insert.preheat-least' },
            ' to ',
            { value: 'insert.preheat-greatest' },
            ' before they are placed.',
          ),
        ]),
    ...tableBlock(
      'Machined faces',
      ['Face', 'Stock drawn', 'Least stock', 'Usual, greatest', 'Opens porosity above'],
      machining.map(({ id }) => [
        id,
        cell(ledger, 'machining.stock', id),
        cell(ledger, 'machining.least'),
        cell(ledger, 'machining.usual-greatest'),
        cell(ledger, 'machining.opens-porosity'),
      ]),
    ),
  ];
}
