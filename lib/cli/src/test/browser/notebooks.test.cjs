// Every notebook, executed by Jupyter and by the program itself, with its own parameters and with others, as a reader
// sees it: light and dark.
const { test, before, after } = require('node:test');
const assert = require('node:assert');
const fs = require('node:fs');
const path = require('node:path');
const { pathToFileURL } = require('node:url');
const { withPage } = require('./browser.cjs');
const { assertReadable } = require('./visible.cjs');
const { root, workFolder, mustStaunch, jupyterEnvironment, execute, pages, read, joined } = require('./jupyter.cjs');

const others = require('./other-parameters.json');
const listed = (folder) =>
  fs.existsSync(folder) ? fs.readdirSync(folder).filter((f) => f.endsWith('.ipynb')).map((f) => path.join(folder, f)) : [];
const notebooks = [...listed(path.join(root, 'notebooks')), path.join(__dirname, '../notebooks/every-display.ipynb')];
const names = notebooks.map((n) => path.basename(n, '.ipynb'));

const work = workFolder('every');
const folder = (...parts) => path.join(work, ...parts);
const OTHER = 'other-';
let jupyter;

async function embedded() {
  await mustStaunch(['notebook', 'run', ...notebooks, '--out', folder('embedded')]);
  for (const notebook of notebooks) {
    const sets = Object.entries(others[path.basename(notebook, '.ipynb')]).flatMap(([k, v]) => ['--set', `${k}=${v}`]);
    const out = folder('embedded-other');
    await mustStaunch(['notebook', 'run', notebook, ...sets, '--out', out]);
  }
  // The executed copy holds the parameters as they were set, so Jupyter is given the same.
  fs.mkdirSync(folder('given'));
  names.forEach((n) => fs.copyFileSync(folder('embedded-other', `${n}.ipynb`), folder('given', `${OTHER}${n}.ipynb`)));
}

before(async () => {
  assert.deepStrictEqual(Object.keys(others).sort(), [...names].sort(), 'other-parameters.json names every notebook');
  jupyter = await jupyterEnvironment();
  await Promise.all([embedded(), execute(jupyter.env, folder('jupyter'), notebooks)]);
  await execute(jupyter.env, folder('jupyter'), listed(folder('given')));
  const executed = listed(folder('jupyter'));
  await Promise.all([
    pages(jupyter.env, folder('jupyter-light'), 'light', executed),
    pages(jupyter.env, folder('jupyter-dark'), 'dark', names.map((n) => folder('jupyter', `${n}.ipynb`))),
  ]);
}, { timeout: 1_200_000 });

after(() => jupyter?.remove());

const outputs = (file) =>
  read(file).cells.filter((c) => c.cell_type === 'code').map((c) => c.outputs);
const html = (file) =>
  outputs(file).flat().map((o) => joined(o.data?.['text/html'])).join('');
const count = (text, pattern) => (text.match(pattern) ?? []).length;
const drawings = (file) => ({
  charts: count(html(file), /<img\b|<svg\b/g),
  tables: count(html(file), /<table\b/g),
});
// Whether work shows its progress, and after how many seconds it is done, is up to the machine.
const PROGRESS = /^.*: \d+ of \d+, \d+ %, .* s$/;
const texts = (file) =>
  outputs(file).map((cell) =>
    cell.map((o) => joined(o.data?.['text/plain'] ?? o.text)).filter((text) => !PROGRESS.test(text)).join('\n'));

async function open(colorScheme, file, use) {
  await withPage({ colorScheme, locale: 'en-US' }, async (page) => {
    page.setDefaultTimeout(180_000);
    const asked = [];
    page.on('request', (r) => asked.push(r.url()));
    await page.route(/^https?:/, (route) => route.abort());
    await page.goto(pathToFileURL(file).href, { waitUntil: 'load' });
    await use(page, () => asked.filter((u) => !u.startsWith('data:') && u !== pathToFileURL(file).href));
  });
}

for (const name of names) {
  for (const other of [false, true]) {
    const given = other ? 'other parameters' : 'its own parameters';
    const byProgram = (type) => folder(other ? 'embedded-other' : 'embedded', `${name}.${type}`);
    const byJupyter = () => folder('jupyter', `${other ? OTHER : ''}${name}.ipynb`);

    test(`${name} with ${given} tells the same in Jupyter and without it`, () => {
      assert.deepStrictEqual(texts(byJupyter()), texts(byProgram('ipynb')));
    });

    for (const scheme of ['light', 'dark']) {
      test(`${name} with ${given}: the program's page (${scheme})`, () =>
        open(scheme, byProgram('html'), async (page, elsewhere) => {
          await assertReadable(page, '.output, .stream, .error', drawings(byProgram('ipynb')));
          assert.deepStrictEqual(elsewhere(), [], 'the page stands by itself');
          const formulas = await page.evaluate(() => {
            const prose = document.querySelector('main').cloneNode(true);
            prose.querySelectorAll('pre, code, annotation').forEach((e) => e.remove());
            return {
              raw: prose.textContent.match(/\$|\\[a-zA-Z]+/g) ?? [],
              flat: [...document.querySelectorAll('math')].filter((m) => !(m.getBoundingClientRect().height > 8)).length,
              rendered: document.querySelectorAll('math').length,
            };
          });
          assert.deepStrictEqual(formulas.raw, [], 'no formula is left as it was typed');
          assert.strictEqual(formulas.flat, 0, 'formulas take up room');
          const typed = read(notebooks[names.indexOf(name)]).cells
            .some((c) => c.cell_type === 'markdown' && joined(c.source).includes('$'));
          assert.ok(!typed || formulas.rendered > 0, 'formulas are rendered');
        }));

      test(`${name} with ${given}: Jupyter's page (${scheme})`, () =>
        open(scheme, folder('jupyter-light', `${other ? OTHER : ''}${name}.html`), (page) =>
          assertReadable(page, '.jp-OutputArea-output', drawings(byJupyter()))));
    }
  }

  test(`${name}: Jupyter's page in its dark theme`, () =>
    open('dark', folder('jupyter-dark', `${name}.html`), (page) =>
      assertReadable(page, '.jp-OutputArea-output', drawings(folder('jupyter', `${name}.ipynb`)))));

  test(`${name} shows a table and a chart, and other parameters change what it tells`, () => {
    const { charts, tables } = drawings(folder('embedded', `${name}.ipynb`));
    assert.ok(charts > 0 && tables > 0, `${charts} charts, ${tables} tables`);
    assert.notDeepStrictEqual(texts(folder('embedded', `${name}.ipynb`)), texts(folder('embedded-other', `${name}.ipynb`)));
  });

  test(`${name} is kept without outputs`, () => {
    const cells = read(notebooks[names.indexOf(name)]).cells.filter((c) => c.cell_type === 'code');
    assert.ok(cells.every((c) => c.outputs.length === 0 && c.execution_count === null));
    assert.strictEqual(cells.filter((c) => c.metadata?.tags?.includes('parameters')).length, 1);
  });
}
