import { readdirSync } from 'node:fs';
import type { Case } from './case.ts';

/** All cases, file by file. */
export async function allCases(): Promise<readonly Case[]> {
  const names = readdirSync(new URL('./cases/', import.meta.url))
    .filter((name) => name.endsWith('.ts'))
    .sort();
  const modules = await Promise.all(names.map(async (name) => (await import(`./cases/${name.slice(0, -3)}.ts`)) as { readonly cases: readonly Case[] }));
  return modules.flatMap(({ cases }) => cases);
}

/**
 * Where the figure that a case expects comes from, not where its formula comes from. `printed`: it stands in the work named,
 * or follows from two figures that stand there by turning one of them round. `library`: an independent library gives it.
 * `apart`: worked out by another program or another method of solving. `limit`: a limiting case that anybody can see.
 * `hand`: worked by hand, also where the form or the inputs are published. `memory`: a remembered form or figure.
 */
export type Origin = 'printed' | 'library' | 'apart' | 'limit' | 'hand' | 'memory';
export const OUTSIDE: readonly Origin[] = ['printed', 'library'];

/**
 * The texts of cases whose figure is printed. What is not named here counts as worked by hand, so that nothing is
 * called published by default.
 */
export const PRINTED: readonly RegExp[] = [
  /^machine maker’s note on tie-bar strain/,
  /^table of machine cost by cavities \(BASILIUS-CAVITATION\)/,
  /^metal balance of a plant for signs \(MNTAP-ZINC\)/,
  /^costing guide \(APOGEE-HPDC-COST\): factor 1\.06/,
  /\(MOULD-PRICE-DOUBLING\)/,
  /\(GODFREY-WING-COST\).* 240 days$/,
  /\(GODFREY-WING-COST\).*impregnation alone$/,
  /\(GODFREY-WING-COST\).*with the 2 castings/,
  /\(FOUNDRY-PLANET-LUBE\).*more parts$/,
  /^vendor page on A380 shrinkage/,
  /^toolmaker’s page on slides: undercut 15/,
  /^NADCA product standard S-4A-7/,
  /^die caster's product-standard sheet for aluminium draft, in half degrees \(AL-DRAFT-SHEET, vendor\)$/,
  /^die caster's product-standard sheet for aluminium draft, run-out/,
  /^Plastics Technology, September 2018/,
  /^data sheet of AZ91D/,
  /^product standard \(NADCA-A-3-2\)/,
  /^tables of three die casters/,
  /\(KB-GATING\): 500 cm3/,
  /\(KB-SHOT-PROFILE\): plunger/,
  /\(KB-VACUUM\)/,
  /^standard gas tables/,
  /^catalogues of thread-forming screws/,
  /^metric tap drill chart/,
  /^ISO 8062-3 table 2/,
];
const LIBRARY = /open heat-transfer library/;
const APART = /computed apart|another language|same equations|on a grid|closed form|exact solution|independent (program|route)|looked for at every/;
const MEMORY = /memory|remembered/;
const LIMIT = /^limiting case|: no vent|^gas tables/;

/** The origin of the figure of a case. */
export function originOf({ from }: Pick<Case, 'from'>): Origin {
  if (MEMORY.test(from)) return 'memory';
  if (LIBRARY.test(from)) return 'library';
  if (APART.test(from)) return 'apart';
  if (LIMIT.test(from)) return 'limit';
  return PRINTED.some((pattern) => pattern.test(from)) ? 'printed' : 'hand';
}
