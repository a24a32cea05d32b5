/**
 * Which library and which tables an answer names.
 *
 * `UPDATE=1 npx vitest run tests/assessment/answer/version` writes the versions anew after a row or the package's version changed.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { crc32, textOf } from '../../../src/assessment/answer/checksum.js';
import { shipped } from '../../../src/assessment/answer/lookups.js';
import { libraryVersion, tablesVersion } from '../../../src/assessment/answer/version.js';

const root = new URL('../../../', import.meta.url);
const { version } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8')) as { version: string };
const fingerprint = crc32(textOf(shipped.map(({ name, source, rows }) => ({ name, source: source.id, rows }))));

it('the versions are those of the package and of the rows of its tables', () => {
  const file = new URL('src/assessment/answer/version.ts', root);
  if (process.env.UPDATE === '1') {
    const text = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      text
        .replace(/(libraryVersion = )'[^']*'/, `$1'${version}'`)
        .replace(/(tablesVersion = )'[^']*'/, `$1'${fingerprint}'`),
    );
  } else expect({ libraryVersion, tablesVersion }).toEqual({ libraryVersion: version, tablesVersion: fingerprint });
});

it('every chapter with tables is among them', async () => {
  const names = ['tires', 'members', 'axles', 'load', 'towing', 'rules'];
  const all = await Promise.all(
    names.map(async (name) => {
      const chapter = (await import(`../../../src/${name}/index.ts`)) as Record<string, readonly { name: string }[]>;
      return chapter[`${name}Tables`] ?? [];
    }),
  );
  expect(
    all
      .flat()
      .map(({ name }) => name)
      .sort(),
  ).toEqual(shipped.map(({ name }) => name).sort());
});
