// Reads a Data Package with npm's library, and every cell of every table with its relations.
'use strict';
const { Package } = require(process.argv[2] + '/datapackage');

(async () => {
  const tables = await Package.load(process.argv[3], { strict: true });
  if (!tables.valid) {
    throw tables.errors[0];
  }
  let cells = 0;
  for (const table of tables.resources) {
    const rows = await table.read({ keyed: true, relations: true });
    rows.forEach((row) => (cells += Object.keys(row).length));
  }
  const yarns = await tables.getResource('yarns').read({ keyed: true });
  if (cells < 1000 || !yarns.some((yarn) => yarn.code === '-MUD')) {
    throw new Error(cells + ' cells');
  }
})().catch((error) => {
  console.error(error);
  process.exit(1);
});
