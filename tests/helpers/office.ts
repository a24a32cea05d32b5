/** LibreOffice without a window: what a spreadsheet program makes of a file, sheet by sheet, as rows of texts. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';

const program = '/usr/bin/soffice';
export const officeIsThere = existsSync(program);

// Comma, quotes, UTF-8; figures as they are and not as they are shown; every sheet.
const filter = 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1';

/** Recalculates the file and gives each sheet back under its name. */
export function recalculated(file: string, content: string): ReadonlyMap<string, readonly (readonly string[])[]> {
  const folder = mkdtempSync(join(tmpdir(), 'office-'));
  try {
    writeFileSync(join(folder, file), content);
    const told = execFileSync(
      program,
      [
        '--headless',
        `-env:UserInstallation=file://${folder}/profile`,
        '--convert-to',
        filter,
        '--outdir',
        join(folder, 'out'),
        join(folder, file),
      ],
      { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] },
    );
    return new Map(
      [...told.matchAll(/Writing sheet (.*) -> (.*)/g)].map(([, name = '', path = '']) => [
        name,
        parse(readFileSync(path, 'utf8'), { relax_column_count: true, skip_empty_lines: false }) as string[][],
      ]),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
