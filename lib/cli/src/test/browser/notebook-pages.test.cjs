// Pages of executed notebooks as a reader meets them. STAUNCH_PAGES is the folder below which they lie.
const { test } = require('node:test');
const assert = require('node:assert');
const fs = require('node:fs');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const { withPage, colours } = require('./browser.cjs');

const root = path.resolve(process.env.STAUNCH_PAGES);
const pages = fs.readdirSync(root, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap((entry) => fs.readdirSync(path.join(root, entry.name))
    .filter((name) => name.endsWith('.html'))
    .map((name) => path.join(root, entry.name, name)));

test('there are pages to look at', () => assert.ok(pages.length >= 10, `${pages.length} pages`));

for (const colorScheme of ['light', 'dark']) {
  for (const file of pages) {
    test(`${path.relative(root, file)} shows its tables and charts (${colorScheme})`, () =>
      withPage({ colorScheme }, async (page) => {
        await page.goto(pathToFileURL(file).href, { waitUntil: 'domcontentloaded' });
        const charts = await page.locator('img').all();
        assert.ok(charts.length >= 1, 'a chart');
        for (const chart of charts) {
          const box = await chart.boundingBox();
          assert.ok(box.width > 200 && box.height > 150, `a chart of ${box.width} × ${box.height} px`);
          const found = await colours(page, chart);
          assert.ok(found > 8, `a chart with ${found} colours`);
        }
        const tables = await page.locator('table').all();
        assert.ok(tables.length >= 1, 'a table');
        for (const table of tables.slice(0, 3)) {
          assert.ok(await table.isVisible());
          assert.ok((await colours(page, table)) > 2, 'text on the table stands out');
        }
      }));
  }
}
