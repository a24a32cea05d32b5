/** The process that runs the tests; it is restarted when it does not answer in time. */
import { type ChildProcess, fork } from 'node:child_process';
import { join } from 'node:path';
import type { Question, Said } from './said.js';

export interface Asker {
  /** `limit`: how long, in ms, it may take to answer. */
  readonly ask: (question: Question, limit: number) => Promise<Said | 'too long'>;
  readonly end: () => void;
}

export function asker(bundle: string, mutants: number): Asker {
  let child: ChildProcess | undefined;

  const started = (): Promise<ChildProcess> =>
    new Promise((resolve) => {
      const made = fork(join(import.meta.dirname, 'child.ts'), [bundle, String(mutants)], {
        execArgv: ['--import', 'tsx', '--max-old-space-size=3000'],
        env: { ...process.env, LAW_RUNS: '4' },
        stdio: ['ignore', 'inherit', 'ignore', 'ipc'],
      });
      made.once('message', () => resolve(made));
    });

  async function ask(question: Question, limit: number): Promise<Said | 'too long'> {
    child ??= await started();
    const asked = child;
    return new Promise((resolve) => {
      const end = (said: Said | 'too long'): void => {
        clearTimeout(timer);
        asked.removeAllListeners();
        if (said === 'too long') {
          asked.kill('SIGKILL');
          child = undefined;
        }
        resolve(said);
      };
      let timer = setTimeout(() => end('too long'), limit);
      asked.on('message', (said) => {
        if (said !== 'goes on') return end(said as Said);
        clearTimeout(timer);
        timer = setTimeout(() => end('too long'), limit);
      });
      asked.once('exit', () => end('too long'));
      asked.send(question);
    });
  }
  return { ask, end: () => child?.kill() };
}
