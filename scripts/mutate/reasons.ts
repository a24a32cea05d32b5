/** What is known of survivors, by file, line as written and change. */
import { readFileSync } from 'node:fs';

type Reasons = Readonly<Record<string, string>>;
const read = (name: string): Reasons => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8')) as Reasons;

/** Changes that no test can see. They count neither as killed nor as alive. */
export const noDifferenceBecause = read('reasons.json');
/** Changes that a test could see, or that nobody has proved to be unseen: why they may matter. They count as alive. */
export const aliveBecause = read('alive.json');
