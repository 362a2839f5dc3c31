#!/usr/bin/env node
'use strict';
const { main } = require('../dist/cli.cjs');

main(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
