import { Traced } from '../../../kernel/traced.ts';
import { ironOverManganese, sludgeFactor } from '../../../physics/certificate.ts';
import type { Ledger } from '../../ledger.ts';
import { lookQuietly } from '../../look-quietly.ts';

/** The shares of the certificate beside those of the alloy record, and the figures that several elements make together. */
export function reviewCertificate(ledger: Ledger): void {
  const { certificate } = ledger.part;
  if (certificate.length === 0) {
    ledger.leaveUnchecked({ id: 'certificate', title: 'Composition of the melt', missing: 'the part file has no certificate' });
    return;
  }
  const { composition, family, id: alloy } = ledger.alloy;
  for (const { element, at } of certificate) {
    ledger.setText('certificate.element', element, { item: element, at });
    const [least, greatest] = composition.limits[element] ?? [null, null];
    const from = { table: `alloy ${alloy}`, source: composition.source, status: composition.status };
    if (least !== null && least > 0) ledger.put(Traced.table(`certificate.least[${element}]`, least, '%', from));
    if (greatest !== null) ledger.put(Traced.table(`certificate.greatest[${element}]`, greatest, '%', from));
    if (least === null && greatest === null) {
      ledger.leaveUnchecked({
        id: `certificate.greatest[${element}]`,
        title: `Share of ${element}`,
        missing: `the record of ${alloy} has no limit for ${element}`,
      });
    }
  }
  const share = (element: string): Traced<'%'> | undefined => ledger.maybe('certificate.share', element);
  const iron = share('Fe');
  const manganese = share('Mn');
  if (family === 'aluminium') {
    if (manganese !== undefined) ledger.put(manganese.as('certificate.manganese'));
    else ledger.assume('certificate.manganese', 0, '%', { note: 'the certificate has no manganese', status: 'derived' });
    ledger.look('certificate/aluminium-melt', 'iron_least', {}, 'certificate.iron-least');
    ledger.look('certificate/aluminium-melt', 'manganese_instead', {}, 'certificate.manganese-instead');
    ledger.look('certificate/aluminium-melt', 'sludge_greatest', {}, 'certificate.sludge-greatest');
    const chromium = share('Cr');
    if (iron !== undefined && manganese !== undefined && chromium !== undefined) ledger.apply(sludgeFactor, { iron, manganese, chromium });
    else ledger.leaveUnchecked({ id: 'certificate.sludge-factor', title: 'Sludge factor', missing: 'needs Fe, Mn and Cr in the certificate' });
  }
  if (family === 'magnesium' && iron !== undefined && manganese !== undefined) {
    ledger.attempt('certificate.iron-over-manganese', 'Iron over manganese', () => {
      ledger.apply(ironOverManganese, { iron, manganese });
      const title = 'Iron over manganese';
      lookQuietly(ledger, 'certificate/iron-over-manganese', 'ratio', { alloy }, 'certificate.iron-over-manganese-greatest', { title });
    });
  }
}
