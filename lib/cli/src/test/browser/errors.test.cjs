// Cells that fail, as the reader of either page meets them.
const { test, before, after } = require('node:test');
const assert = require('node:assert');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const { withPage } = require('./browser.cjs');
const { workFolder, staunch, jupyterEnvironment, execute, pages } = require('./jupyter.cjs');

const work = workFolder('errors');
const folder = (...parts) => path.join(work, ...parts);
const notebooks = ['bad-input', 'bad-java'].map((n) => path.join(__dirname, `../notebooks/${n}.ipynb`));
const ended = {};
let jupyter;

before(async () => {
  jupyter = await jupyterEnvironment();
  for (const notebook of notebooks) {
    ended[path.basename(notebook, '.ipynb')] = await staunch(['notebook', 'run', notebook, '--out', folder('embedded')]);
  }
  await execute(jupyter.env, folder('jupyter'), notebooks, '--allow-errors');
  await pages(jupyter.env, folder('jupyter'), 'light', notebooks.map((n) => folder('jupyter', path.basename(n))));
}, { timeout: 600_000 });

after(() => jupyter?.remove());

const shown = (way, name) =>
  withPage({ locale: 'en-US' }, async (page) => {
    await page.route(/^https?:/, (route) => route.abort());
    await page.goto(pathToFileURL(folder(way, `${name}.html`)).href);
    const selector = way === 'embedded' ? 'pre.error' : '[data-mime-type="application/vnd.jupyter.stderr"] pre';
    const errors = await page.locator(selector).all();
    assert.strictEqual(errors.length, 1, 'one cell shows its error');
    assert.ok(await errors[0].isVisible());
    const text = await errors[0].innerText();
    assert.doesNotMatch(text, /REPL|JShell|jdk\.|do_it\$|EvalException|InvocationTarget|staunch\.kernel/, text);
    return { text, lines: text.split('\n').filter((l) => l.trim()), page: await page.locator('body').innerText() };
  });

for (const way of ['embedded', 'jupyter']) {
  test(`bad input: the library's own sentence first, then the line of the cell (${way})`, async () => {
    const { lines } = await shown(way, 'bad-input');
    assert.match(lines[0], /mud density/, 'the field');
    assert.match(lines[0], /\b80(\.0+)? ppg\b/, 'the value and its unit');
    assert.match(lines[0], /\d.* (to|and|or) .*\d ppg/, 'the range');
    assert.match(lines[1], /cell.*\[2\].*line 3.*Mud\.waterBased\("spud mud", density\)/, 'the line of the cell');
  });

  test(`bad Java: the line with a caret below the place (${way})`, async () => {
    const { text, lines } = await shown(way, 'bad-java');
    assert.match(lines[0], /incompatible types/);
    assert.match(lines[1], /cell.*\[1\].*line 2/);
    const raw = text.split('\n');
    const at = raw.findIndex((l) => l.includes('String name = before;'));
    assert.strictEqual(raw[at + 1].indexOf('^'), raw[at].indexOf('before'), `${raw[at]}\n${raw[at + 1]}`);
  });
}

test('the program stops at the cell that failed, says so on the page and in its exit code', async () => {
  for (const [name, { code, stdout, stderr }] of Object.entries(ended)) {
    assert.strictEqual(code, 5, name);
    assert.ok(!/REPL|jdk\.jshell/.test(stdout + stderr));
  }
  assert.match(ended['bad-input'].stdout + ended['bad-input'].stderr, /mud density/);
  const { page } = await shown('embedded', 'bad-input');
  assert.match(page.split('\n')[0], /Stopped/);
});
