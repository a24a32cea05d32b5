/** Which library wrote an answer, and with which tables. Both are compared with what they name by a test. */

/** The version in package.json. */
export const libraryVersion = '0.1.0';

/** The fingerprint of every row of every published table: `UPDATE=1 npx vitest run tests/assessment/answer/version` writes it anew. */
export const tablesVersion = '5513c881';
