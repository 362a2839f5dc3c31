import type { Ledger } from '../../ledger.ts';
import type { Block, Cell } from '../../plan.ts';
import { cell, tableBlock, textCell, valuesBlock } from '../../step.ts';

export function showTolerances(ledger: Ledger): Block[] {
  const { dimensions } = ledger.part;
  const decided = (id: string): Cell => (ledger.decisions.has(`tolerance.verdict[${id}]`) ? { decision: `tolerance.verdict[${id}]` } : '–');
  return [
    ...tableBlock(
      'Tolerances',
      [
        'Dimension',
        'Nominal',
        'Asked, plus and minus',
        'Crosses',
        'Standard, plus',
        'Standard, minus',
        'Precision, plus',
        'Precision, minus',
        'Verdict',
        'ISO 8062-3',
        'Width of that grade',
      ],
      dimensions.map(({ id }) => [
        id,
        cell(ledger, 'dimension.nominal', id),
        cell(ledger, 'dimension.tolerance', id),
        textCell(ledger, 'dimension.across', id),
        cell(ledger, 'tolerance.plus-standard', id),
        cell(ledger, 'tolerance.minus-standard', id),
        cell(ledger, 'tolerance.plus-precision', id),
        cell(ledger, 'tolerance.minus-precision', id),
        decided(id),
        textCell(ledger, 'tolerance.iso-grade', id),
        cell(ledger, 'tolerance.iso-width', id),
      ]),
    ),
    ...valuesBlock(ledger, ['tolerance.longest-side', 'tolerance.flatness-standard', 'tolerance.flatness-precision']),
  ];
}

export function showShrink(ledger: Ledger): Block[] {
  return [
    ...valuesBlock(ledger, ['shrink.allowance', 'shrink.from-contraction']),
    ...tableBlock(
      'Cavity sizes',
      ['Dimension', 'Nominal', 'Added for shrink', 'Cavity'],
      ledger.part.dimensions.map(({ id }) => [
        id,
        cell(ledger, 'dimension.nominal', id),
        cell(ledger, 'shrink.added', id),
        cell(ledger, 'shrink.cavity-dimension', id),
      ]),
    ),
  ];
}

export function showCertificate(ledger: Ledger): Block[] {
  return [
    ...tableBlock(
      'Certificate of the melt',
      ['Element', 'Share', 'Least allowed', 'Greatest allowed'],
      ledger.part.certificate.map(({ element }) => [
        element,
        cell(ledger, 'certificate.share', element),
        cell(ledger, 'certificate.least', element),
        cell(ledger, 'certificate.greatest', element),
      ]),
    ),
    ...valuesBlock(ledger, [
      'certificate.sludge-factor',
      'certificate.sludge-greatest',
      'certificate.iron-over-manganese',
      'certificate.iron-over-manganese-greatest',
    ]),
  ];
}
