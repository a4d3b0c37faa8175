// The review page as a reader meets it: STAUNCH_PAGE is the page, STAUNCH_RESULTS the same results as JSON.
const { test } = require('node:test');
const assert = require('node:assert');
const fs = require('node:fs');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const { withPage, colours } = require('./browser.cjs');

const file = path.resolve(process.env.STAUNCH_PAGE);
const results = JSON.parse(fs.readFileSync(process.env.STAUNCH_RESULTS, 'utf8'));
const sections = results.designs[0].sections;
const words = { HOLDS: 'holds', FAILS: 'fails', NOT_ASSESSED: 'not assessed', NOT_SHUT_IN: 'not shut in' };

async function open(options, use) {
  await withPage(options, async (page) => {
    const asked = [];
    const complaints = [];
    page.on('request', (r) => asked.push(r.url()));
    page.on('console', (m) => ['error', 'warning'].includes(m.type()) && complaints.push(m.text()));
    page.on('pageerror', (e) => complaints.push(String(e)));
    await page.goto(pathToFileURL(file).href);
    await use(page);
    const elsewhere = asked.filter((u) => !u.startsWith('data:') && u !== pathToFileURL(file).href);
    assert.deepStrictEqual(elsewhere, [], 'the page asks for nothing beside itself');
    assert.deepStrictEqual(complaints, [], 'the browser has nothing to complain about');
  });
}

for (const colorScheme of ['light', 'dark']) {
  test(`the first screen shows each section with its verdict in words (${colorScheme})`, () =>
    open({ colorScheme }, async (page) => {
      for (const section of sections) {
        const row = page.locator('table tr', { hasText: section.plan.name }).first();
        const box = await row.boundingBox();
        assert.ok(box, `${section.plan.name} has a row`);
        assert.ok(box.y >= 0 && box.y + box.height <= 800, `${section.plan.name} is on the first screen: ${box.y}`);
        const text = (await row.innerText()).toLowerCase();
        assert.ok(text.includes(words[section.verdict.outcome]), `${text} says ${section.verdict.outcome}`);
      }
    }));

  test(`every chart has something drawn on it (${colorScheme})`, () =>
    open({ colorScheme }, async (page) => {
      const charts = await page.locator('svg, img').all();
      let large = 0;
      for (const chart of charts) {
        const box = await chart.boundingBox();
        if (box && box.width > 200 && box.height > 150) {
          large++;
          const found = await colours(page, chart);
          assert.ok(found > 8, `chart ${large} has ${found} colours only`);
        }
      }
      const shutIn = sections.filter((s) => s.verdict.outcome !== 'NOT_SHUT_IN').length;
      assert.ok(large >= 2 * shutIn, `${large} charts for ${shutIn} sections that are shut in`);
    }));

  test(`nothing sticks out of the page (${colorScheme})`, () =>
    open({ colorScheme }, async (page) => {
      const wide = await page.evaluate(() => {
        const scrolls = (e) => e && e !== document.body
          && (['auto', 'scroll', 'hidden'].includes(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
        return [...document.body.querySelectorAll('*')]
          .filter((e) => e.getBoundingClientRect().right > innerWidth + 1 && !e.closest('svg') && !scrolls(e))
          .map((e) => e.tagName + ' ' + (e.className || e.id));
      });
      assert.deepStrictEqual(wide, []);
      assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
    }));
}

test('every picture has a text that says what it shows', () =>
  open({}, async (page) => {
    const silent = await page.evaluate(() =>
      [...document.querySelectorAll('img')].filter((i) => !i.alt).length
      + [...document.querySelectorAll('svg')]
        .filter((s) => !s.getAttribute('aria-label') && !s.querySelector('title') && !s.closest('[aria-hidden=true]'))
        .length);
    assert.strictEqual(silent, 0);
  }));
