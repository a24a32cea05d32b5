/** Writes dist/: the code, its types, and the command. */
import { buildCommand } from './build-command.js';
import { buildCode } from './code.js';
import { writeDeclarations } from './declarations.js';

await buildCode('dist');
writeDeclarations('dist');
await buildCommand();
