/** `npm run page`: builds the page into out/page and says where it is. */
import { writePage } from './page.js';

console.log(await writePage('out/page'));
