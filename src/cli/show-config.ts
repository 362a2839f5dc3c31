import { listText } from '../index.ts';
import type { Settings, Surroundings } from './settings.ts';

type Row = Readonly<Record<'setting' | 'value' | 'from', string>>;

/** Each setting with its value and where it was set; for inputs with different settings, those of each. */
export async function configText(surroundings: Surroundings, inputs: readonly string[]): Promise<string> {
  const groups = new Map<string, { readonly inputs: string[]; readonly rows: readonly Row[] }>();
  for (const input of inputs.length === 0 ? [undefined] : inputs) {
    const rows = rowsOf(await surroundings.settings(input));
    const key = JSON.stringify(rows);
    const group = groups.get(key) ?? { inputs: [], rows };
    if (input !== undefined) group.inputs.push(input);
    groups.set(key, group);
  }
  const texts = [...groups.values()].map((group) => {
    const heading = groups.size === 1 ? '' : `${group.inputs.join('\n')}\n`;
    return `${heading}${listText({ columns: ['setting', 'value', 'from'], rows: group.rows })}`;
  });
  return texts.join('\n');
}

function rowsOf({ project, plant, rules, failOn, adjusted }: Settings): Row[] {
  return [
    { setting: 'project', value: project ?? 'none', from: project === undefined ? 'none found' : 'found from the input upwards' },
    { setting: 'plant', value: plant.value?.at ?? 'typical (invented)', from: plant.from },
    ...(rules.value.length === 0
      ? [{ setting: 'rules', value: 'none of a house', from: rules.from }]
      : rules.value.map(({ at }) => ({ setting: 'rules', value: at, from: rules.from }))),
    { setting: 'fail_on', value: failOn.value, from: failOn.from },
    ...(adjusted.value.length === 0
      ? [{ setting: 'adjusted', value: 'none', from: adjusted.from }]
      : adjusted.value.map(({ rule, severity, at }) => ({
          setting: 'adjusted',
          value: `${rule} ${severity}`,
          from: `${at.source.name}:${at.position().line}`,
        }))),
  ];
}
