import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createMessageConnection, type MessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node.js';
import { schemaText, starterText } from '../../src/index.ts';

interface Diagnostic {
  readonly message: string;
  readonly range: { readonly start: { readonly line: number } };
}
interface Published {
  readonly uri: string;
  readonly diagnostics: readonly Diagnostic[];
}

const SERVER = join(createRequire(import.meta.url).resolve('yaml-language-server/package.json'), '..', 'bin', 'yaml-language-server');

let folder: string;
let connection: MessageConnection;
let end: () => void;
const waiting = new Map<string, (published: Published) => void>();

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'diewright-editor-'));
  for (const name of ['part', 'die', 'plant', 'project', 'limit'] as const) writeFileSync(join(folder, `${name}.schema.json`), await schemaText(name));
  const server = spawn(process.execPath, [SERVER, '--stdio'], { stdio: ['pipe', 'pipe', 'ignore'] });
  end = () => server.kill();
  connection = createMessageConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));
  connection.onNotification('textDocument/publishDiagnostics', (published: Published) => waiting.get(published.uri)?.(published));
  // The server asks for its settings; it needs none.
  connection.onRequest('workspace/configuration', ({ items }: { items: readonly unknown[] }) => items.map(() => ({})));
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: pathToFileURL(folder).href,
    capabilities: { textDocument: { completion: {}, publishDiagnostics: {} }, workspace: { configuration: true } },
  });
  await connection.sendNotification('initialized', {});
  await connection.sendNotification('workspace/didChangeConfiguration', {
    settings: { yaml: { validate: true, completion: true, schemaStore: { enable: false } } },
  });
}, 30_000);
afterAll(() => {
  connection.dispose();
  end();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens a text as an editor does and gives what the server finds in it. */
async function opened(name: string, text: string): Promise<{ readonly uri: string; readonly diagnostics: readonly Diagnostic[] }> {
  const uri = pathToFileURL(join(folder, name)).href;
  writeFileSync(join(folder, name), text);
  const published = new Promise<Published>((resolve) => waiting.set(uri, resolve));
  await connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'yaml', version: 1, text } });
  return { uri, diagnostics: (await published).diagnostics };
}

describe('the YAML language server, by the modeline of our starters', () => {
  test.each(['part', 'die', 'plant', 'project'] as const)(
    'finds nothing in a new %s',
    async (name) => {
      const text = await starterText(name);
      expect(text).toMatch(/^# yaml-language-server: \$schema=/);
      expect((await opened(`new-${name}.yaml`, text)).diagnostics.map(({ message }) => message)).toEqual([]);
    },
    20_000,
  );

  test('finds an unknown key, a missing one and a wrong word in a broken part, each on its line', async () => {
    const text = [
      '# yaml-language-server: $schema=part.schema.json',
      'diewright: part/1',
      'part: { name: Broken }',
      'alloy: A380',
      'geometry:',
      '  volume: 100 cm3',
      '  envelop: [120 mm, 80 mm, 40 mm]',
      '  projected_area: { z: 80 cm2 }',
      '  wall: { nominal: 3 mm }',
      'quality: { use: decorative }',
      '',
    ].join('\n');
    const { diagnostics } = await opened('broken.part.yaml', text);
    const on = (line: number): string =>
      diagnostics
        .filter(({ range }) => range.start.line === line)
        .map(({ message }) => message)
        .join('; ');
    expect(on(6)).toContain('envelop');
    expect(diagnostics.map(({ message }) => message).join('; ')).toContain('"envelope"');
    expect(on(9)).toContain('pressure-tight');
  }, 20_000);

  test('completes keys and words', async () => {
    const text = [
      '# yaml-language-server: $schema=part.schema.json',
      'diewright: part/1',
      'part: { name: Half }',
      'quality:',
      '  use: ',
      'geometry:',
      '  ',
      '',
    ].join('\n');
    const { uri } = await opened('half.part.yaml', text);
    const complete = async (line: number, character: number): Promise<string[]> => {
      const found = (await connection.sendRequest('textDocument/completion', { textDocument: { uri }, position: { line, character } })) as
        | { items: readonly { label: string }[] }
        | readonly { label: string }[];
      return ('items' in found ? found.items : found).map(({ label }) => label);
    };
    expect(await complete(4, 7)).toEqual(expect.arrayContaining(['general', 'pressure-tight', 'structural']));
    expect(await complete(6, 2)).toEqual(expect.arrayContaining(['volume', 'envelope', 'wall']));
  }, 20_000);
});
