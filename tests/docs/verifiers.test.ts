/** The page and the script that verify an answer without the library: the same verdict as `verifyAnswer`, on honest answers and on lies. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { isLeft } from 'fp-ts/lib/Either.js';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verifiers } from '../../scripts/verifiers.js';
import { type Answer, answerOf, assessJson, verifyAnswer } from '../../src/assessment/index.js';
import { orThrow } from '../../src/errors.js';
import { browserIsThere, launch } from '../helpers/browser.js';
import { randomSpecs } from '../helpers/random-specs.js';
import { changed, heavier, tiltDeck } from '../helpers/specs.js';
import { tampered } from '../helpers/tampered-answers.js';

const docs = join(import.meta.dirname, '../../docs');
/** Its tongue lifts, by no whole number of pounds. */
const lifting = changed(tiltDeck(), 'cargo.0.front', '160.3 in');
const honest: readonly Answer[] = [tiltDeck(), heavier(), lifting, ...randomSpecs(40)].flatMap((spec) => {
  const assessment = assessJson(spec);
  return isLeft(assessment) ? [] : [answerOf(assessment.right)];
});
const lies = Array.from({ length: 150 }, (_, seed) => tampered(honest[seed % honest.length] as Answer, seed)).flatMap(
  (made) => (made === undefined ? [] : [made]),
);
const example = answerOf(orThrow(assessJson(tiltDeck())));
const lie = { ...example, verdict: 'within' };

it('both hold the units, the products and the bases of the library', () => {
  if (process.env.UPDATE === '1') for (const [file, text] of verifiers()) writeFileSync(file, text);
  for (const [file, text] of verifiers()) expect(readFileSync(file, 'utf8'), `npm run verifiers: ${file}`).toBe(text);
});
it('the lies are lies', () => {
  expect(lies.length).toBeGreaterThan(100);
  for (const { answer, done } of lies) {
    const found = verifyAnswer(answer);
    expect(!isLeft(found) && found.right.follows, done).toBe(false);
  }
});

describe.skipIf(!browserIsThere)('docs/verify.html', () => {
  let browser: Browser;
  let page: Page;
  const asked: string[] = [];
  beforeAll(async () => {
    browser = await launch();
    page = await browser.newPage();
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(pathToFileURL(join(docs, 'verify.html')).href);
  }, 60_000);
  afterAll(() => browser.close());
  const drop = async (text: string): Promise<string | null> => {
    await page.evaluate(`document.getElementById('result').replaceChildren()`);
    await page.setInputFiles('#file', { name: 'answer.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    return page.locator('#result h2').textContent();
  };

  it('verifies a file, and says what it cannot know', async () => {
    expect(await drop(JSON.stringify(example))).toBe('Follows');
    const text = await page.locator('#result').textContent();
    expect(text).toContain(`${example.working?.nodes.length} figures worked out again`);
    expect(text).toContain('Nothing is signed');
  });
  it('names what does not follow', async () => {
    expect(await drop(JSON.stringify(lie))).toBe('Does not follow');
    expect(await page.locator('#result').textContent()).toMatch(/verdict.*within.*attention/s);
    expect(await drop('{"format":')).toBe('Cannot be read');
    expect(await drop('null')).toBe('Does not follow');
  });
  it('takes a file that is dropped', async () => {
    const text = JSON.stringify(lie);
    await page.evaluate(`
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([${JSON.stringify(text)}], 'answer.json'));
      document.getElementById('result').replaceChildren();
      document.getElementById('drop').dispatchEvent(new DragEvent('drop', { dataTransfer, cancelable: true }));`);
    expect(await page.locator('#result h2').textContent()).toBe('Does not follow');
  });
  it('says of every answer what the library says', async () => {
    const verdicts = (answers: readonly Answer[]): Promise<readonly { follows: boolean }[]> =>
      page.evaluate(
        (texts) => {
          const { verify } = globalThis as unknown as { verify: (answer: unknown) => { follows: boolean } };
          return texts.map((text) => verify(JSON.parse(text)));
        },
        answers.map((answer) => JSON.stringify(answer)),
      );
    for (const found of await verdicts(honest)) expect(found).toMatchObject({ follows: true });
    for (const [i, found] of (await verdicts(lies.map(({ answer }) => answer))).entries())
      expect(found.follows, lies[i]?.done).toBe(false);
  });
  it('asks nothing of any network', () => expect(asked.filter((url) => !url.startsWith('file:'))).toEqual([]));
});

const python = spawnSync('python3', ['--version'], { encoding: 'utf8' });
if (python.status !== 0) console.log('python3 is not installed: docs/verify_answer.py is not tested here');
describe.skipIf(python.status !== 0)('docs/verify_answer.py', () => {
  const folder = mkdtempSync(join(tmpdir(), 'verify-answer-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const run = (text: string) =>
    spawnSync('python3', [join(docs, 'verify_answer.py')], { input: text, encoding: 'utf8' });

  it('verifies a file, and says what it cannot know', () => {
    const file = join(folder, 'answer.json');
    writeFileSync(file, JSON.stringify(example));
    const told = execFileSync('python3', [join(docs, 'verify_answer.py'), file], { encoding: 'utf8' });
    expect(told).toMatch(/^follows; verdict of the answer: attention\n\d+ figures worked out again/);
    expect(told).toContain('nothing is signed');
  });
  it('exits 1 at what does not follow, 2 at what it cannot read', () => {
    expect(run(JSON.stringify(lie))).toMatchObject({
      status: 1,
      stdout: 'does not follow\nverdict: the verdict on the whole is within; it must be attention\n',
    });
    for (const text of ['{"format":', 'null', '{}', JSON.stringify({ ...example, version: 2 })])
      expect(run(text).status, text).toBe(2);
  });
  it('says of every answer what the library says', () => {
    const file = join(folder, 'all.json');
    writeFileSync(file, JSON.stringify([honest, lies.map(({ answer }) => answer)]));
    const program = `
import json, sys
sys.path.insert(0, sys.argv[1])
sys.dont_write_bytecode = True
from verify_answer import verify
def follows(answer):
    try: return bool(verify(answer))
    except Exception: return False
honest, lies = json.load(open(sys.argv[2], encoding='utf-8'))
print(json.dumps([[follows(a) for a in honest], [follows(a) for a in lies]]))`;
    const [good, bad] = JSON.parse(
      execFileSync('python3', ['-c', program, docs, file], { encoding: 'utf8' }),
    ) as boolean[][];
    expect(good?.filter((follows) => !follows)).toEqual([]);
    expect(lies.filter((_, i) => bad?.[i]).map(({ done }) => done)).toEqual([]);
  });
});
