// A thread of the program: loads it as the command line does, with its bytecode, and works what it is sent.
'use strict';
const { compile, load } = require('./load-program.cjs');

load(compile()).work();
