import { Traced } from '../../kernel/traced.ts';
import { convert, type Unit } from '../../kernel/units.ts';
import { metalMass, metalVolume } from '../../physics/metal.ts';
import type { Ledger } from '../ledger.ts';
import { type ValueId, wordOf } from '../vocabulary/index.ts';

/**
 * Files what the part description and the alloy record say, before any step works. Volume and mass follow from each
 * other by the density; given both, the volume counts and the mass is held against it by a limit.
 */
export function fileGiven(ledger: Ledger): void {
  fileAlloy(ledger);
  filePart(ledger);
  fileItems(ledger);
  // Of a die with several parts: what the parts and their layout come to.
  for (const value of ledger.given.set?.filed ?? []) ledger.put(value);
}

function fileAlloy(ledger: Ledger): void {
  const { alloy } = ledger;
  ledger.setText('alloy.id', alloy.id, { at: ledger.part.alloy.at });
  ledger.setText('alloy.family', alloy.family, { at: ledger.part.alloy.at });
  ledger.setText('alloy.chamber', alloy.chamber.allows.join(' '), { at: ledger.part.alloy.at });
  for (const [name, property] of Object.entries(alloy.properties)) {
    const id = `alloy.${name.replaceAll('_', '-')}`;
    const word = wordOf(id);
    if (word === undefined || 'text' in word) continue;
    const file = (key: string, value: number, remark: string | undefined): void => {
      const note = property.house === undefined ? remark : [...(remark === undefined ? [] : [remark]), `house rules: ${property.house}`].join('; ');
      ledger.put(
        Traced.table(key, convert(value, property.unit, word.unit), word.unit as Unit, {
          table: `alloy ${alloy.id}`,
          source: property.source,
          status: property.status,
          note,
        }),
      );
    };
    const { least, greatest } = property;
    if (least !== undefined && greatest !== undefined) {
      file(id, property.value ?? (least + greatest) / 2, property.value === undefined ? `middle of ${least} to ${greatest} ${property.unit}` : property.note);
      if (wordOf(`${id}-least`) !== undefined) {
        file(`${id}-least`, least, property.note);
        file(`${id}-greatest`, greatest, property.note);
      }
    } else {
      const value = property.value ?? least ?? greatest;
      if (value !== undefined) file(id, value, property.note);
    }
  }
  fileGreatestShares(ledger);
}

/** Elements that product law limits, and the value that holds the most the composition allows of each. */
const LIMITED_ELEMENTS = [
  ['Pb', 'alloy.lead-greatest'],
  ['Cd', 'alloy.cadmium-greatest'],
] as const satisfies readonly (readonly [string, ValueId])[];

/** Only where the composition states a greatest share: silence about an element is no statement that there is none. */
function fileGreatestShares(ledger: Ledger): void {
  const { id, composition } = ledger.alloy;
  for (const [element, key] of LIMITED_ELEMENTS) {
    const greatest = composition.limits[element]?.[1];
    if (greatest === undefined || greatest === null) continue;
    const { source, status } = composition;
    ledger.put(Traced.table(key, greatest, '%', { table: `alloy ${id}`, source, status, note: `greatest ${element} of the composition, by mass` }));
  }
}

function filePart(ledger: Ledger): void {
  const { geometry, production, quality } = ledger.part;
  const put = (...values: (Traced | undefined)[]): void => {
    for (const value of values) if (value !== undefined) ledger.put(value);
  };
  put(geometry.volume, geometry.mass);
  ledger.attempt('part.mass', 'Volume and mass of the part', () => fileMass(ledger));
  put(geometry.envelope.x, geometry.envelope.y, geometry.envelope.z);
  put(geometry.projectedArea.x, geometry.projectedArea.y, geometry.projectedArea.z);
  put(geometry.surfaceArea, geometry.wall.least, geometry.wall.nominal, geometry.wall.greatest, geometry.partingLine);
  put(production.perYear, production.life, production.hoursPerYear);
  ledger.setText('quality.use', quality.use, { at: quality.at });
  ledger.setText('quality.finish', quality.finish, { at: quality.at });
  ledger.setText('quality.heat-treatment', quality.heatTreatment, { at: quality.at });
  ledger.setText('quality.welded', quality.welded ? 'yes' : 'no', { at: quality.at });
  ledger.setText('quality.cold-shut', quality.coldShut, { at: quality.at });
  ledger.setText('quality.markets', quality.markets.join(' '), { at: quality.at });
}

/** Volume from mass or mass from volume; the mass by volume is filed beside the one on the drawing, to be held against it. */
function fileMass(ledger: Ledger): void {
  const { volume, mass } = ledger.part.geometry;
  const density = ledger.value('alloy.density');
  if (volume === undefined) ledger.apply(metalVolume, { mass: ledger.value('part.mass'), density }, { id: 'part.volume' });
  const byVolume = ledger.apply(metalMass, { volume: ledger.value('part.volume'), density }, { id: 'part.mass-from-volume' });
  if (mass === undefined) ledger.put(byVolume.as('part.mass'));
}

/** The lists of the part: each number under its item, each word as a text fact of the item. */
function fileItems(ledger: Ledger): void {
  const { part } = ledger;
  const put = (...values: (Traced | undefined)[]): void => {
    for (const value of values) if (value !== undefined) ledger.put(value);
  };
  for (const wall of part.walls) {
    put(wall.height, wall.draft);
    ledger.setText('wall.side', wall.side, { item: wall.id, at: wall.at });
  }
  for (const hole of part.holes) {
    put(hole.diameter, hole.depth, hole.count, hole.tolerance, hole.edgeDistance);
    ledger.setText('hole.kind', hole.kind, { item: hole.id, at: hole.at });
    if (hole.thread !== undefined) ledger.setText('hole.thread', hole.thread, { item: hole.id, at: hole.at });
  }
  for (const undercut of part.undercuts) put(undercut.depth, undercut.faceArea, undercut.boss);
  for (const insert of part.inserts) {
    put(insert.diameter, insert.length, insert.cover);
    ledger.setText('insert.material', insert.material, { item: insert.id, at: insert.at });
  }
  for (const rib of part.ribs) put(rib.rootWidth, rib.height, rib.draft, rib.tipRadius, rib.rootFillet);
  for (const fillet of part.fillets) put(fillet.radius, fillet.walls[0], fillet.walls[1]);
  for (const dimension of part.dimensions) {
    put(dimension.nominal, dimension.tolerance);
    ledger.setText('dimension.across', dimension.across, { item: dimension.id, at: dimension.at });
  }
  for (const entry of part.certificate) put(entry.share.as(`certificate.share[${entry.element}]`));
  for (const face of part.machining) put(face.stock);
}

/** Ids of `given` values that a report lists as the part's own data. */
export const GIVEN_IDS: readonly ValueId[] = [
  'part.volume',
  'part.mass',
  'part.envelope-x',
  'part.envelope-y',
  'part.envelope-z',
  'part.wall-least',
  'part.wall-nominal',
  'part.wall-greatest',
  'production.per-year',
  'production.hours-per-year',
];
