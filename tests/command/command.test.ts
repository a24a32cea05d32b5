/** The command as a process: what it prints, where, and how it ends. The library is built into a scratch folder, without its types. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildCommand } from '../../scripts/build-command.js';
import { buildCode } from '../../scripts/code.js';
import { type Answer, assess, libraryVersion } from '../../src/assessment/index.js';
import { orThrow } from '../../src/errors.js';
import { report } from '../../src/print/index.js';
import { changed, tiltDeck } from '../helpers/specs.js';

const project = join(import.meta.dirname, '../..');
const example = join(project, 'examples/tilt-deck.json');
const next = join(project, 'examples/tilt-deck-16.json');
const scratch = mkdtempSync(join(tmpdir(), 'trailer-ratings-command-'));
const dist = join(scratch, 'dist');
beforeAll(async () => {
  await buildCode(dist, true);
  await buildCommand(dist, true);
  writeFileSync(join(scratch, 'package.json'), '{ "type": "module" }');
  symlinkSync(join(project, 'node_modules'), join(scratch, 'node_modules'), 'junction');
}, 300_000);
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const run = (args: readonly string[], input?: string) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(dist, 'command.js'), ...args], {
    encoding: 'utf8',
    input: input ?? '',
    maxBuffer: 1e8,
  });
  return { status, stdout, stderr };
};
const textOf = (spec: unknown): string => JSON.stringify(spec);
const within = {
  name: 'a first trailer',
  trailer: {
    hitch: 'ball',
    gvwr: '9,990 lb',
    sharing: 'equalised',
    curb: { weight: '2,450 lb', tongue: '320 lb' },
    axles: [
      { at: '150 in', gawr: '5,000 lb', brakes: { left: '2,500 lb', right: '2,500 lb' } },
      { at: '183 in', gawr: '5,000 lb', brakes: { left: '2,500 lb', right: '2,500 lb' } },
    ],
  },
  cargo: [{ name: 'loader', weight: '3,000 kg', at: '148 in' }],
};

describe('an assessment', () => {
  it('prints the first page and the report, and exits 1 where something asks attention', () => {
    const { status, stdout, stderr } = run([example]);
    expect({ status, stderr }).toEqual({ status: 1, stderr: '' });
    expect(stdout.trimEnd()).toBe(report(orThrow(assess(tiltDeck()))).trimEnd());
    expect(stdout.split('\n').slice(0, 3).join(' ')).toContain('ATTENTION');
  });
  it('reads standard input, and exits 0 where everything is within', () => {
    const { status, stdout, stderr } = run([], textOf(within));
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toContain('WITHIN');
  });
  it('exits 1 where a rating is exceeded, or nothing could be checked', () => {
    expect(run([], textOf(changed(within, 'cargo.0.weight', '9,000 lb')))).toMatchObject({ status: 1, stderr: '' });
    expect(run([], textOf({ trailer: { hitch: 'ball', axles: [{ at: '150 in', gawr: '5,000 lb' }] } })).status).toBe(1);
  });
  it('prints in the units asked for, and every rule when asked', () => {
    const metric = run([example, '--units', 'metric']).stdout;
    expect(metric).toMatch(/\d kg/);
    expect(metric.split('\n')[1]).not.toMatch(/\d lb/);
    const [near, all] = [run([example]).stdout, run([example, '--rules=all']).stdout];
    expect(all.split('\n').length).toBeGreaterThan(near.split('\n').length);
  });
  it('prints the plain answer, which verifies', () => {
    const { stdout, status } = run([example, '--json']);
    expect((JSON.parse(stdout) as Answer).spec).toEqual(tiltDeck());
    expect(status).toBe(1);
    const verified = run(['verify'], stdout);
    expect(verified).toMatchObject({ status: 0, stderr: '' });
    expect(verified.stdout).toMatch(/^follows: \d+ figures worked out again/);
    const file = join(scratch, 'lie.json');
    writeFileSync(file, stdout.replace('"verdict":"attention"', '"verdict":"within"'));
    expect(run(['verify', file])).toMatchObject({
      status: 1,
      stdout: 'does not follow\nverdict: the verdict on the whole is within; it must be attention\n',
    });
  });
});

describe('what cannot be read', () => {
  it('is told on standard error, every fault on its line, with exit code 2', () => {
    const broken = changed(changed(within, 'trailer.gvwr', '9990'), 'cargo.0.weight', '3 stone');
    const { status, stdout, stderr } = run([], textOf(broken));
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    const lines = stderr.trimEnd().split('\n');
    expect(lines.map((line) => line.split(': ').slice(0, 2).join(': '))).toEqual([
      'standard input: trailer.gvwr',
      'standard input: cargo.0.weight',
    ]);
  });
  it.each([
    [['no-such-file.json'], undefined, 'no-such-file.json: ENOENT'],
    [[], '', 'standard input: '],
    [[], '{ "trailer": ', 'standard input: '],
    [['--units', 'stone', example], undefined, '--units is "stone"; it must be us or metric'],
    [['--colour'], undefined, "Unknown option '--colour'"],
    [['a.json', 'b.json'], undefined, 'one file is read; found "b.json" beside it'],
    [['compare', 'a.json'], undefined, 'compare needs two files or more; found 1'],
    [['verify'], '{}', 'standard input: format: '],
  ] as const)('%j', (args, input, says) => {
    const { status, stdout, stderr } = run(args, input);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.startsWith(says), stderr).toBe(true);
    expect(stderr).not.toMatch(/\n {4}at /);
  });
});

describe('the rest', () => {
  it('sets builds side by side', () => {
    const { status, stdout } = run(['compare', example, next]);
    expect(status).toBe(1);
    expect(stdout).toMatch(/tilt-deck\s+tilt-deck-16\n\s+GVWR\s+14,000 lb\s+16,000 lb/);
    expect(run(['compare', example, 'nothing.json'])).toMatchObject({ status: 2, stdout: '' });
  });
  it('prints the schema of a spec', () => {
    const { status, stdout } = run(['--schema']);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(JSON.parse(readFileSync(join(project, 'docs/spec.schema.json'), 'utf8')));
  });
  it('says what there is, and its version', () => {
    const { stdout, status } = run(['--help']);
    expect(status).toBe(0);
    for (const option of ['--json', '--schema', '--units', '--rules', 'compare', 'verify', 'Exit code'])
      expect(stdout).toContain(option);
    expect(run(['--version']).stdout).toBe(`${libraryVersion}\n`);
  });
  it('can be started by its name: a shebang, and leave to run', () => {
    const file = join(dist, 'command.js');
    expect(readFileSync(file, 'utf8').startsWith('#!/usr/bin/env node\n')).toBe(true);
    if (process.platform !== 'win32') expect(statSync(file).mode & 0o111).toBe(0o111);
  });
  it('holds nothing of the library itself', () => {
    expect(statSync(join(dist, 'command.js')).size).toBeLessThan(20_000);
  });
});
