// Puts SARIF logs before the JSON Schema of SARIF 2.1.0: node sarif.mjs LOG...
import { readFileSync } from 'node:fs';
import Ajv from 'ajv/dist/2020.js';
import formats from 'ajv-formats';

const ajv = new Ajv({ strict: false, allErrors: true });
formats(ajv);
const schema = new URL('node_modules/@microsoft/sarif-multitool-linux/sarif-2.1.0.json', import.meta.url);
const judge = ajv.compile(JSON.parse(readFileSync(schema, 'utf8')));
let bad = 0;
for (const log of process.argv.slice(2)) {
  if (judge(JSON.parse(readFileSync(log, 'utf8')))) continue;
  bad++;
  console.error(log, judge.errors.slice(0, 10));
}
process.exit(bad ? 1 : 0);
