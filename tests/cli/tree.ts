/** One value of a printed derivation. */
export interface TreeNode {
  readonly id: string;
  /** As printed, with its unit. */
  readonly printed: string;
  readonly value: number;
  /** Spelt out further up. */
  readonly again: boolean;
  readonly children: TreeNode[];
  formula?: {
    readonly id: string;
    readonly equation: string;
    readonly where: readonly { readonly symbol: string; readonly expression: string }[];
    readonly lines: { readonly expression: string; readonly result: number };
  };
  table?: string;
  at?: { readonly file: string; readonly line: number; readonly column: number };
  remark: string;
}

const HEAD = /^([│ ]*)([├└]─ )?([a-z][a-z0-9-]*\.[a-z0-9-]+(?:\[.+?\])?) = (.+?)( \(see above\)| {2}\S.*)?$/;

/** Reads what `explain ID FILE` prints, node by node; throws at a line that is of no known kind. */
export function parseTree(text: string): TreeNode[] {
  const nodes: TreeNode[] = [];
  const open: { depth: number; node: TreeNode; own: string[] }[] = [];
  const all: { node: TreeNode; own: string[] }[] = [];
  for (const line of text.trimEnd().split('\n')) {
    const head = HEAD.exec(line);
    if (head !== null && (head[2] !== undefined || head[1] === '')) {
      const depth = head[2] === undefined ? 0 : (head[1] as string).length / 3 + 1;
      const printed = head[4] as string;
      const node: TreeNode = { id: head[3] as string, printed, value: Number.parseFloat(printed), again: head[5] === ' (see above)', children: [], remark: '' };
      while (open.length > 0 && (open.at(-1)?.depth ?? 0) >= depth) open.pop();
      open.at(-1)?.node.children.push(node);
      const entry = { depth, node, own: [] };
      open.push(entry);
      all.push(entry);
      nodes.push(node);
    } else open.at(-1)?.own.push(line.replace(/^[│ ]*/, ''));
  }
  for (const { node, own } of all) readOwn(node, own);
  return nodes;
}

function readOwn(node: TreeNode, own: readonly string[]): void {
  const rest = [...own];
  const formula = /^formula (\S+?(?:\[.+\])?): (.+)$/.exec(rest[0] ?? '');
  if (formula !== null && /^\S+ (by time steps of|solves 0 =) /.test(formula[2] as string)) {
    // No line that could be worked out again by an evaluator of expressions.
    rest.splice(0, 1 + rest.slice(1).findIndex((line) => /by time steps$|^0 = /.test(line)) + 1);
  } else if (formula !== null) {
    rest.shift();
    const symbol = (formula[2] as string).split(' = ')[0] as string;
    const where: { symbol: string; expression: string }[] = [];
    for (let line = rest.shift(); line !== undefined; line = rest.shift()) {
      const parts = line.split(' = ');
      if (parts[0] === symbol && parts.length === 3) {
        node.formula = {
          id: formula[1] as string,
          equation: formula[2] as string,
          where,
          lines: { expression: parts[1] as string, result: Number.parseFloat(parts[2] as string) },
        };
        break;
      }
      if (parts.length !== 2) throw new Error(`${node.id}: ${line} is no line of a substitution`);
      where.push({ symbol: parts[0] as string, expression: parts[1] as string });
    }
    if (node.formula === undefined) throw new Error(`${node.id}: no line gives ${symbol}`);
  }
  for (const line of rest) {
    const at = /^at (.+):(\d+):(\d+)$/.exec(line);
    if (at !== null) node.at = { file: at[1] as string, line: Number(at[2]), column: Number(at[3]) };
    else if (line.startsWith('table ')) node.table = line.slice('table '.length);
    else if (!line.startsWith('source: ')) node.remark = node.remark === '' ? line : `${node.remark}; ${line}`;
  }
}
