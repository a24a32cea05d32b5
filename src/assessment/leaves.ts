export { leavesOf } from '../spec/index.js';
