/** What a run came to: how many rows have each verdict, how many have no answer, and why. */
import type { AssessmentVerdict } from '../../assessment/index.js';
import type { Chunk } from './buffers.js';
import { verdictNames } from './verdict-codes.js';

/** Rows without an answer that share their reason. */
export interface Unanswered {
  /** The tag of the error and the place it names. */
  readonly reason: string;
  /** How many rows have no answer for this reason. */
  readonly rows: number;
  /** The first of them: `errorAt` of the study gives its error in full. */
  readonly first: number;
}

/** A run in numbers. */
export interface Summary {
  /** Rows that were run: fewer than asked where the run was stopped. */
  readonly rows: number;
  /** How many of them have an answer. */
  readonly answered: number;
  /** How many have each verdict. */
  readonly verdicts: Readonly<Record<AssessmentVerdict, number>>;
  /** The most frequent reason first. */
  readonly unanswered: readonly Unanswered[];
}

/** Counts the rows of a run, chunk by chunk. */
export class Tally {
  private rows = 0;
  private answered = 0;
  private readonly verdicts = new Float64Array(verdictNames.length);
  private readonly refused = new Map<number, { rows: number; first: number }>();
  private names: readonly string[] = [];

  add({ rows, start, reasons, reasonNames, verdict }: Chunk): void {
    this.names = reasonNames;
    this.rows += rows;
    for (let i = 0; i < rows; i += 1) {
      const reason = reasons[i] as number;
      if (reason === 0) {
        this.answered += 1;
        this.verdicts[verdict[i] as number] = (this.verdicts[verdict[i] as number] as number) + 1;
      } else {
        const found = this.refused.get(reason);
        if (found === undefined) this.refused.set(reason, { rows: 1, first: start + i });
        else found.rows += 1;
      }
    }
  }

  /** The numbers so far. */
  get summary(): Summary {
    const [over = 0, attention = 0, within = 0, unchecked = 0] = this.verdicts;
    return {
      rows: this.rows,
      answered: this.answered,
      verdicts: { over, attention, within, unchecked },
      unanswered: [...this.refused]
        .map(([index, found]) => ({ reason: this.names[index] as string, ...found }))
        .sort((a, b) => b.rows - a.rows || a.first - b.first),
    };
  }
}

const counted = (rows: number): string => rows.toLocaleString('en-US');

/** A run in one line and one more a reason. @example summaryText({ rows: 2, answered: 2, verdicts: { over: 1, attention: 0, within: 1, unchecked: 0 }, unanswered: [] }) // 2 rows: 1 over, 1 within */
export function summaryText({ rows, answered, verdicts, unanswered }: Summary): string {
  const told = verdictNames.flatMap((name) => (verdicts[name] === 0 ? [] : [`${counted(verdicts[name])} ${name}`]));
  const none = rows - answered;
  const all = [...told, ...(none === 0 ? [] : [`${counted(none)} without an answer`])];
  const reasons = unanswered.map(
    ({ reason, rows: count, first }) => `\n  ${reason}: ${counted(count)}, the first is row ${counted(first)}`,
  );
  return `${[`${counted(rows)} rows`, all.join(', ')].filter((part) => part !== '').join(': ')}${reasons.join('')}`;
}
