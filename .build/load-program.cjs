// Loads dist/program.cjs with the bytecode that the build kept of it.
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const filename = join(__dirname, 'program.cjs');

/** The script, a function of the names of a module, with its bytecode if there is one. The text is ASCII, which is read fastest as latin1. */
function compile() {
  let cachedData;
  try {
    cachedData = readFileSync(`${filename}.cache`);
  } catch {
    // Without the cache the script is compiled as usual.
  }
  return new Script(readFileSync(filename, 'latin1'), { filename, cachedData });
}

function load(script) {
  const loaded = { exports: {} };
  script.runInThisContext()(loaded.exports, require, loaded, filename, __dirname);
  return loaded.exports;
}

let program;

/** Loads the program on the first call, for a caller that runs several commands. */
function run(argv, io) {
  program ??= load(compile());
  return program.run(argv, io);
}

module.exports = { compile, load, run };
