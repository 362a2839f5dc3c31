// Loads dist/program.cjs with the bytecode that the build kept of it.
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const filename = join(__dirname, 'program.cjs');

/** The script, with its bytecode if there is one. The text is ASCII, which is read fastest as latin1. */
function compile() {
  let cachedData;
  try {
    cachedData = readFileSync(`${filename}.cache`);
  } catch {
    // Without the cache the script is compiled as usual.
  }
  const wrapped = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'latin1')}\n})`;
  return new Script(wrapped, { filename, cachedData });
}

function load(script) {
  const loaded = { exports: {} };
  script.runInThisContext()(loaded.exports, require, loaded, filename, __dirname);
  return loaded.exports;
}

module.exports = { compile, load, run: (argv, io) => load(compile()).run(argv, io) };
