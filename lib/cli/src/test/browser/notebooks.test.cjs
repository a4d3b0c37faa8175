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

/** What the program made of the notebooks; the build's own results, or else new ones. */
const program = process.env.STAUNCH_EXECUTED || folder('program');
const byProgram = (set, file) => path.join(program, set, file);

async function runInProgram() {
  if (process.env.STAUNCH_EXECUTED) {
    return;
  }
  await mustStaunch(['notebook', 'run', ...notebooks, '--out', path.join(program, 'own')]);
  for (const notebook of notebooks) {
    const sets = Object.entries(others[path.basename(notebook, '.ipynb')]).flatMap(([k, v]) => ['--set', `${k}=${v}`]);
    await mustStaunch(['notebook', 'run', notebook, ...sets, '--out', path.join(program, 'other')]);
  }
}

before(async () => {
  assert.deepStrictEqual(Object.keys(others).sort(), [...names].sort(), 'other-parameters.json names every notebook');
  jupyter = await jupyterEnvironment();
  // One Jupyter at a time: two that start kernels at once may choose the same ports.
  await execute(jupyter.env, folder('jupyter'), notebooks);
  await runInProgram();
  // The executed copy holds the parameters as they were set, so Jupyter is given the same.
  fs.mkdirSync(folder('given'));
  for (const name of names) {
    fs.copyFileSync(byProgram('other', `${name}.ipynb`), folder('given', `${OTHER}${name}.ipynb`));
  }
  await execute(jupyter.env, folder('jupyter-other'), listed(folder('given')));
  await Promise.all([
    pages(jupyter.env, folder('light'), 'light', [...listed(folder('jupyter')), ...listed(folder('jupyter-other'))]),
    pages(jupyter.env, folder('dark'), 'dark', listed(folder('jupyter'))),
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
    const made = (type) => byProgram(other ? 'other' : 'own', `${name}.${type}`);
    const byJupyter = () => (other ? folder('jupyter-other', `${OTHER}${name}.ipynb`) : folder('jupyter', `${name}.ipynb`));

    test(`${name} with ${given} tells the same in Jupyter and without it`, () => {
      assert.deepStrictEqual(texts(byJupyter()), texts(made('ipynb')));
    });

    for (const scheme of ['light', 'dark']) {
      test(`${name} with ${given}: the program's page (${scheme})`, () =>
        open(scheme, made('html'), async (page, elsewhere) => {
          await assertReadable(page, '.output, .stream, .error', drawings(made('ipynb')));
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
        open(scheme, folder('light', `${other ? OTHER : ''}${name}.html`), (page) =>
          assertReadable(page, '.jp-OutputArea-output', drawings(byJupyter()))));
    }
  }

  test(`${name}: Jupyter's page in its dark theme`, () =>
    open('dark', folder('dark', `${name}.html`), (page) =>
      assertReadable(page, '.jp-OutputArea-output', drawings(folder('jupyter', `${name}.ipynb`)))));

  test(`${name} shows the tables and charts it asks for, and other parameters change what it tells`, () => {
    const { charts, tables } = drawings(byProgram('own', `${name}.ipynb`));
    const code = read(notebooks[names.indexOf(name)]).cells.map((c) => joined(c.source)).join('\n');
    assert.ok(charts > 0 || !code.includes('Charts.'), 'there is a chart');
    assert.ok(tables > 0 || !code.includes('Table'), 'there is a table');
    assert.ok(charts + tables > 0, 'there is a chart or a table');
    assert.notDeepStrictEqual(texts(byProgram('own', `${name}.ipynb`)), texts(byProgram('other', `${name}.ipynb`)));
  });
}
