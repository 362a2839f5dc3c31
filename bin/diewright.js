#!/usr/bin/env node
'use strict';
const { main } = require('../dist/cli.cjs');

// All output is written when this resolves, so nothing is lost by ending at once; taking the heap of a plan apart first,
// as a process that runs out of work does, takes longer than writing the plan.
main(process.argv.slice(2)).then((code) => process.exit(code));
