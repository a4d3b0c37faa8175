// Debian's jupyter-notebook in a browser, as an engineer uses it, from the first run to the interrupt.
const { test, before, after } = require('node:test');
const assert = require('node:assert');
const fs = require('node:fs');
const path = require('node:path');
const { withPage, drawn } = require('./browser.cjs');
const { root, workFolder, jupyterEnvironment, notebookServer, PATIENCE } = require('./jupyter.cjs');

const others = require('./other-parameters.json');
const first = path.join(root, 'notebooks/01-start-here.ipynb');
const notebook = fs.existsSync(first) ? first : path.join(__dirname, '../notebooks/every-display.ipynb');
const name = path.basename(notebook, '.ipynb');
const work = workFolder('browser');
let jupyter;
let server;

before(async () => {
  fs.copyFileSync(notebook, path.join(work, `${name}.ipynb`));
  jupyter = await jupyterEnvironment();
  server = await notebookServer(jupyter.env, work);
}, { timeout: 2 * PATIENCE });

after(async () => {
  await server?.stop();
  jupyter?.remove();
});

/** The notebook on the screen, through menus, keys and what can be seen. */
class Screen {
  constructor(page) {
    this.page = page;
    this.code = page.locator('.code_cell');
  }

  async open() {
    await this.page.goto(`${server.url}/notebooks/${name}.ipynb`);
    await this.page.waitForFunction(() => window.Jupyter?.notebook?.kernel?.info_reply?.status === 'ok');
  }

  async menu(menu, item) {
    await this.page.click(menu);
    await this.page.click(item);
  }

  async runAll() {
    const count = () => this.page.evaluate(() =>
      Math.max(0, ...Jupyter.notebook.get_cells().map((c) => Number(c.input_prompt_number) || 0)));
    const earlier = await count();
    await this.menu('#celllink', '#run_all_cells');
    await this.page.waitForFunction((n) =>
      Jupyter.notebook.get_cells()
        .filter((c) => c.cell_type === 'code' && c.get_text().trim())
        .every((c) => Number.isInteger(c.input_prompt_number) && c.input_prompt_number > n && !c.running), earlier);
  }

  /** Text of all results, without the numbers of cells. */
  results() {
    return this.page.evaluate(() => [...document.querySelectorAll('.output_subarea')].map((e) => e.innerText).join('\n'));
  }

  async replace(cell, text) {
    await cell.locator('.CodeMirror').first().click();
    await this.page.keyboard.press('Control+A');
    await this.page.keyboard.insertText(text);
  }

  /** A new cell at the end, holding {@code text}, with the cursor behind it. */
  async add(text) {
    await this.page.evaluate(() => Jupyter.notebook.select(Jupyter.notebook.ncells() - 1));
    await this.menu('#insertlink', '#insert_cell_below');
    const cell = this.code.last();
    await this.replace(cell, text);
    return cell;
  }

  /** Runs a new cell and waits for what it prints. */
  async run(text, answer) {
    const cell = await this.add(text);
    await this.page.keyboard.press('Control+Enter');
    await cell.locator('.output_area', { hasText: answer }).first().waitFor();
    return cell;
  }
}

test('a session in jupyter-notebook', { timeout: 900_000 }, (t) =>
  withPage({ locale: 'en-US', viewport: { width: 1280, height: 1000 } }, async (page) => {
    page.setDefaultTimeout(PATIENCE);
    await page.route((url) => url.hostname !== '127.0.0.1', (route) => route.abort());
    const screen = new Screen(page);
    await screen.open();

    // Each step goes on from the one before.
    let failed = false;
    const step = (what, use) =>
      t.test(what, async () => {
        assert.ok(!failed, 'an earlier step failed');
        failed = true;
        await use();
        failed = false;
      });

    let before;
    await step('run all: no cell fails, and the plot is there', async () => {
      await screen.runAll();
      assert.deepStrictEqual(await page.locator('.output_error').allInnerTexts(), []);
      const plots = await page.locator('.output_area img, .output_area svg').all();
      assert.ok(plots.length > 0, 'there is a plot');
      for (const plot of plots) {
        await plot.scrollIntoViewIfNeeded();
        const { width, height } = await plot.boundingBox();
        const [{ colours, ink }] = await drawn(page, await plot.screenshot(), [{ x: 0, y: 0, width, height }]);
        assert.ok(width > 200 && height > 150 && colours > 16 && ink > 0.005, `${width} x ${height}, ${colours}, ${ink}`);
      }
      before = await screen.results();
    });

    await step('change a parameter and run all again: the results change', async () => {
      const at = await page.evaluate(() =>
        Jupyter.notebook.get_cells().filter((c) => c.cell_type === 'code')
          .findIndex((c) => c.metadata.tags?.includes('parameters')));
      const cell = screen.code.nth(at);
      let text = await page.evaluate((i) =>
        Jupyter.notebook.get_cells().filter((c) => c.cell_type === 'code')[i].get_text(), at);
      text = changed(text);
      await screen.replace(cell, text);
      await screen.runAll();
      assert.deepStrictEqual(await page.locator('.output_error').allInnerTexts(), []);
      assert.notStrictEqual(await screen.results(), before);
    });

    await step('interrupt an endless cell: its variables are still there', async () => {
      await screen.run('int kept = 41; kept', '41');
      const endless = await screen.run('System.out.println("on and on"); while (true) { kept++; kept--; }', 'on and on');
      assert.match(await endless.locator('.input_prompt').innerText(), /In\s\[\*\]/);
      await screen.menu('#kernellink', '#int_kernel');
      await endless.locator('.output_error', { hasText: 'Interrupted' }).waitFor();
      await screen.run('"kept: " + (kept > 40 && kept < 43)', 'kept: true');
    });

    await step('complete the name of a method with Tab', async () => {
      await screen.run('Study probed = Study.of(loadCase("data/quillmarsh-1")); probed.design()', 'Base');
      const cell = await screen.add('probed.withSec');
      await page.keyboard.press('Tab');
      await page.waitForFunction(() =>
        document.querySelector('.completions') || /withSection\(/.test(Jupyter.notebook.get_selected_cell().get_text()));
      if (await page.locator('.completions').count()) {
        await page.keyboard.press('Enter');
      }
      assert.match(await cell.locator('.CodeMirror-code').innerText(), /probed\.withSection\(/);
    });

    await step('read Javadoc with Shift-Tab', async () => {
      await screen.add('probed.withSection');
      await page.keyboard.press('Shift+Tab');
      const tooltip = page.locator('#tooltip .tooltiptext');
      await tooltip.filter({ hasText: 'withSection' }).waitFor();
      assert.match(await tooltip.innerText(), /The same study with a hole section of its design changed/);
    });
  }));

/** The cell with the values of {@code other-parameters.json} in place of its own. */
function changed(text) {
  return Object.entries(others[name]).reduce((source, [parameter, value]) => {
    const declared = new RegExp(`(\\b${parameter}\\s*=\\s*)([^;]*)(;)`);
    assert.match(source, declared);
    return source.replace(declared, (_, head, old, end) => {
      const word = old.startsWith('"') ? `"${value}"` : /^\w+\(/.test(old) ? `quantity("${value}")` : value;
      return head + word + end;
    });
  }, text);
}
