// Holds documents against schemas with Ajv in strict mode.
// node validate.cjs NODE_MODULES SCHEMAS DOCUMENTS
// A document NAME--....json is held against the schema NAME; one that ends in .broken.json must
// fail. Prints what is wrong, and at the end how many documents it has held.
'use strict';
const fs = require('fs');
const path = require('path');

const [modules, schemas, documents] = process.argv.slice(2);
const Ajv = require(path.join(path.resolve(modules), 'ajv', 'dist', '2020')).default;

const ajv = new Ajv({ strict: true, strictTypes: true, strictTuples: true, strictRequired: true });
for (const name of fs.readdirSync(schemas)) {
  ajv.addSchema(JSON.parse(fs.readFileSync(path.join(schemas, name), 'utf8')));
}
let wrong = 0;
let held = 0;
for (const name of fs.readdirSync(schemas)) {
  ajv.getSchema('urn:lozengy:' + name.replace('.json', '') + ':1');
}
for (const name of fs.readdirSync(documents)) {
  const holds = ajv.getSchema('urn:lozengy:' + name.split('--')[0] + ':1');
  const right = holds(JSON.parse(fs.readFileSync(path.join(documents, name), 'utf8')));
  held++;
  if (right === name.endsWith('.broken.json')) {
    wrong++;
    console.log(name, right ? 'holds' : JSON.stringify(holds.errors[0]));
  }
}
console.log('held', held);
process.exit(wrong === 0 ? 0 : 1);
