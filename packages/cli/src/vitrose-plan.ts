#!/usr/bin/env node
import { createReadStream } from 'node:fs';
import { EXIT } from './exit-codes.js';
import { run } from './main.js';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // `vitrose-plan FILE | head` closes the pipe when it has seen enough.
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`The plan could not be written (${error.code ?? error.message}).\n`);
  process.exit(EXIT.misused);
});

// With nobody left to complain to, the exit code has to do.
process.stderr.on('error', () => process.exit());

process.exitCode = await run(process.argv.slice(2), {
  open: (file) => (file === '-' ? process.stdin : createReadStream(file)),
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
