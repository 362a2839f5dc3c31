import type { DieSnapshot, KeptDecision, KeptFinding, KeptValue, Snapshot } from '../../engine/replan/snapshot.ts';
import type { Diagnostic } from '../../kernel/diagnostic.ts';
import { Place, type SourceText } from '../../kernel/place.ts';
import { STATUSES } from '../../kernel/status.ts';
import { isUnit } from '../../kernel/units.ts';

type Fields = Readonly<Record<string, unknown>>;

/** What is wrong with the text of a plan. */
class NoPlan extends Error {}

/** Reads back what `json.ts` writes of one plan, as far as two plans are compared by it. Never throws. */
export function readPlanJson(source: SourceText): Read<Snapshot> {
  return read(source, (data) => snapshotOf(fields(data, 'the document'), 'plan/1', 'part'));
}

/** The same of the plan of a die with several parts. */
export function readDiePlanJson(source: SourceText): Read<DieSnapshot> {
  return read(source, (data) => {
    const plan = fields(data, 'the document');
    const whole = snapshotOf(plan, 'die-plan/1', 'die');
    const parts = list(plan['parts'], 'parts').map((entry) => {
      const part = fields(entry, 'a part of the die');
      return [text(part, 'id'), snapshotOf(fields(part['plan'], 'the plan of a part'), 'plan/1', 'part')] as const;
    });
    return { whole, parts: new Map(parts) };
  });
}

type Read<S> = { readonly snapshot: S } | { readonly fault: Diagnostic };

function read<S>(source: SourceText, snapshot: (data: unknown) => S): Read<S> {
  try {
    return { snapshot: snapshot(JSON.parse(source.text)) };
  } catch (error) {
    const why = error instanceof NoPlan ? error.message : 'it is not JSON';
    const fix = 'write it anew with "diewright plan PART --format json=FILE", or compare without --before committed';
    const at = new Place(source, '', () => [0, source.text.length]);
    return { fault: { code: 'replan/committed-plan', severity: 'error', message: `this is no plan that can be compared: ${why}`, fix, at } };
  }
}

/** @param of what is planned: the field of the plan that names it. */
function snapshotOf(plan: Fields, format: string, of: 'part' | 'die'): Snapshot {
  if (plan['format'] !== format) throw new NoPlan(`its format is ${JSON.stringify(plan['format'] ?? null)}, not "${format}"`);
  const part = fields(plan[of], of);
  const alloy = fields(plan['alloy'], 'alloy');
  const plant = fields(plan['plant'], 'plant');
  const decisions = new Map(Object.entries(fields(plan['decisions'], 'decisions')).map(([id, entry]) => [id, decisionOf(fields(entry, id), id)]));
  const written = Object.entries(fields(plan['values'], 'values')).map(([id, entry]) => [id, fields(entry, id)] as const);
  // What has no title of its own is no value of the plan: it is there because values rest on it.
  const values = new Map(written.filter(([id, entry]) => entry['title'] !== id).map(([id, entry]) => [id, valueRead(entry, id)]));
  const pinned = written.filter(([, entry]) => entry['kind'] === 'pinned').map(([id]) => id);
  const pins = [...pinned, ...[...decisions].filter(([, { kind }]) => kind === 'pinned').map(([id]) => id)];
  return {
    part: { name: text(part, 'name'), file: text(part, 'file'), ...optional(part, 'number'), ...optional(part, 'revision') },
    alloy: { id: text(alloy, 'id'), family: text(alloy, 'family') },
    plant: { name: text(plant, 'name'), invented: plant['invented'] === true },
    decisions,
    texts: new Map(Object.entries(fields(plan['texts'], 'texts')).map(([id, word]) => [id, typeof word === 'string' ? word : ''])),
    values,
    findings: list(plan['findings'], 'findings').map((entry) => findingOf(fields(entry, 'a finding'))),
    cautions: list(plan['cautions'], 'cautions').map((entry) => ({
      id: text(fields(entry, 'a caution'), 'id'),
      title: text(fields(entry, 'a caution'), 'title'),
    })),
    pins: [...new Set(pins)].sort(),
  };
}

function decisionOf(entry: Fields, id: string): KeptDecision {
  const { value } = entry;
  if (typeof value !== 'string' && typeof value !== 'number') throw new NoPlan(`decision ${id} has no value`);
  return { title: text(entry, 'title'), value: String(value), because: text(entry, 'because'), kind: text(entry, 'kind') };
}

function valueRead(entry: Fields, id: string): KeptValue {
  const { value, unit, status, source } = entry;
  const mark = STATUSES.find((known) => known === status);
  if (typeof value !== 'number' || !Number.isFinite(value)) throw new NoPlan(`value ${id} is no number`);
  if (typeof unit !== 'string' || !isUnit(unit)) throw new NoPlan(`value ${id} has no unit that is known`);
  if (mark === undefined) throw new NoPlan(`value ${id} has no status that is known`);
  return { title: text(entry, 'title'), value, unit, status: mark, source: list(source, `the source of ${id}`).map(String) as KeptValue['source'] };
}

function findingOf(entry: Fields): KeptFinding {
  const severity = (['error', 'warning', 'note'] as const).find((known) => known === entry['severity']);
  if (severity === undefined) throw new NoPlan('a finding has no severity that is known');
  return { code: text(entry, 'code'), severity, message: text(entry, 'message'), ...optional(entry, 'item') };
}

function fields(data: unknown, what: string): Fields {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) throw new NoPlan(`${what} is no object`);
  return data as Fields;
}

function list(data: unknown, what: string): readonly unknown[] {
  if (!Array.isArray(data)) throw new NoPlan(`${what} are no list`);
  return data;
}

function text(entry: Fields, key: string): string {
  const value = entry[key];
  if (typeof value !== 'string') throw new NoPlan(`a field "${key}" is missing`);
  return value;
}

function optional<K extends string>(entry: Fields, key: K): Partial<Record<K, string>> {
  const value = entry[key];
  return typeof value === 'string' ? ({ [key]: value } as Record<K, string>) : {};
}
