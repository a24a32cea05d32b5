/** The command without a process: what it prints for each question, what it refuses, and with which code. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Ended, run } from '../../src/command/run.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';

const within = {
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
const files: Readonly<Record<string, unknown>> = {
  'yard/a.json': within,
  'other/a.json': heavier(),
  'b.json': tiltDeck(),
  'broken.json': changed(changed(within, 'trailer.gvwr', '9990'), 'cargo.0.weight', '3 stone'),
};
/** The command where only these files exist; `input` is what is piped in. */
const command = (args: readonly string[], input?: string): Promise<Ended> =>
  run(args, (file) => {
    const found = file === undefined ? undefined : files[file];
    const text = found === undefined ? input : JSON.stringify(found);
    return text === undefined
      ? Promise.reject(file === 'odd' ? 'gone' : new Error('no such file'))
      : Promise.resolve(text);
  });

describe('an assessment', () => {
  it('ends with 0 only where all is within', async () => {
    expect(await command(['yard/a.json'])).toMatchObject({ code: 0, err: '' });
    expect(await command([], JSON.stringify(tiltDeck()))).toMatchObject({ code: 1, err: '' });
    const over = changed(within, 'cargo.0.weight', '9,000 lb');
    expect(await command([], JSON.stringify(over))).toMatchObject({ code: 1, err: '' });
  });
  it('is JSON on one line where that is asked for, and ends in a line break either way', async () => {
    const { out } = await command(['b.json', '--json']);
    expect(out.trimEnd()).not.toContain('\n');
    expect((JSON.parse(out) as { readonly spec: unknown }).spec).toEqual(tiltDeck());
    for (const { out: text } of [await command(['b.json']), await command(['--version']), await command(['--help'])])
      expect(text).toMatch(/[^\n]\n$/);
  });
});

describe('refusals', () => {
  it('name the file and every fault of the spec in it, and print no answer', async () => {
    const { out, err, code } = await command(['broken.json']);
    expect({ out, code }).toEqual({ out: '', code: 2 });
    expect(err.trimEnd().split('\n')).toHaveLength(2);
    for (const line of err.trimEnd().split('\n'))
      expect(line).toMatch(/^broken\.json: (trailer\.gvwr|cargo\.0\.weight): /);
  });
  it.each([
    [['missing.json'], undefined, 'missing.json: no such file'],
    [['odd'], undefined, 'odd: gone'],
    [[], undefined, 'standard input: no such file'],
    [[], '{', 'standard input: '],
    [['compare', 'b.json', 'missing.json'], undefined, 'missing.json: no such file'],
    [['compare', 'b.json', 'broken.json'], undefined, ''],
    [['compare', 'b.json'], undefined, 'compare needs two files or more; found 1'],
    [['b.json', 'yard/a.json'], undefined, 'one file is read; found "yard/a.json" beside it'],
    [['verify', 'b.json', 'yard/a.json'], undefined, 'one file is read; found "yard/a.json" beside it'],
    [['verify', 'b.json'], undefined, 'b.json: format: '],
    [['verify', 'missing.json'], undefined, 'missing.json: no such file'],
    [['--units', 'stone', 'b.json'], undefined, '--units is "stone"; it must be us or metric'],
    [['--rules', 'none', 'b.json'], undefined, '--rules is "none"; it must be near or all'],
    [['--colour'], undefined, "Unknown option '--colour'"],
  ] as const)('%j', async (args, input, says) => {
    const { out, err, code } = await command(args, input);
    expect({ out, code }).toEqual({ out: '', code: 2 });
    expect(err.startsWith(says), err).toBe(true);
    expect(err).toMatch(/[^\n]\n$/);
  });
});

describe('a comparison', () => {
  it('names builds by their files, and by their paths where two files share a name', async () => {
    const { out, code } = await command(['compare', 'yard/a.json', 'b.json']);
    expect(code).toBe(1);
    expect(out.split('\n')[0]).toMatch(/^\s+a\s+b$/);
    const alike = await command(['compare', 'yard/a.json', 'other/a.json']);
    expect(alike.out).toContain('yard/a.json');
    expect(alike.out).toContain('other/a.json');
  });
  it('ends with 0 where every build is within', async () => {
    expect(await command(['compare', 'yard/a.json', 'yard/a.json'])).toMatchObject({ code: 0, err: '' });
  });
});

describe('a verification', () => {
  it('follows for an answer of the command, and says where a changed one does not', async () => {
    const { out } = await command(['b.json', '--json']);
    expect(await command(['verify'], out)).toMatchObject({ code: 0, err: '' });
    const lie = out.replace('"verdict":"attention"', '"verdict":"within"');
    const found = await command(['verify'], lie);
    expect(found).toMatchObject({ code: 1, err: '' });
    expect(found.out).toBe('does not follow\nverdict: the verdict on the whole is within; it must be attention\n');
  });
});

describe('questions without a spec', () => {
  it('help goes before the version, the version before the schema, and all before a file', async () => {
    const text = async (...args: readonly string[]): Promise<string> => (await command(args)).out;
    expect(await text('-h', '--version', '--schema', 'missing.json')).toBe(await text('--help'));
    expect(await text('--schema', '--version')).toBe(await text('--version'));
    expect(JSON.parse(await text('--schema'))).toEqual(JSON.parse(readFileSync('docs/spec.schema.json', 'utf8')));
  });
});
