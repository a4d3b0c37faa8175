// What a reader must be able to see on the page of an executed notebook.
const assert = require('node:assert');
const { drawn } = require('./browser.cjs');

// Axes and their labels alone give dozens of shades from smoothed edges; a blank or one-coloured picture gives few.
const FEWEST_COLOURS = 16;
// A frame around an otherwise empty picture of 700 x 400 is about 0.8 % of it in a light grey, which is no ink at all.
const LEAST_INK = 0.005;
// WCAG 2.1, success criterion 1.4.3, for text of ordinary size.
const LEAST_CONTRAST = 4.5;

/** Charts and tables of the page, seen in its present colour scheme; {@code outputs} selects the outputs of cells. */
async function seen(page, outputs) {
  await page.evaluate(async () => {
    document.querySelectorAll('details').forEach((d) => (d.open = true));
    await Promise.all([...document.images].map((i) => i.decode().catch(() => {})));
    await document.fonts.ready;
  });
  const found = await page.evaluate(inspect, outputs);
  const png = await page.screenshot({ fullPage: true, timeout: 180_000 });
  const pixels = await drawn(page, png, found.charts.map((c) => c.box).filter((b) => b.width >= 1 && b.height >= 1));
  found.charts.filter((c) => c.box.width >= 1 && c.box.height >= 1).forEach((c, i) => Object.assign(c, pixels[i]));
  return found;
}

/** Runs in the page. */
function inspect(outputs) {
  const box = (e) => {
    const { x, y, width, height } = e.getBoundingClientRect();
    return { x: x + scrollX, y: y + scrollY, width, height };
  };
  const shown = (e) => e.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const rgba = (text) => {
    const [red, green, blue, alpha = 1] = text.match(/[\d.]+/g).map(Number);
    return { rgb: [red, green, blue], alpha };
  };
  const over = (top, below) => below.map((c, i) => top.alpha * top.rgb[i] + (1 - top.alpha) * c);
  const canvas = (() => {
    const probe = document.documentElement.appendChild(document.createElement('span'));
    probe.style.backgroundColor = 'Canvas';
    const { rgb } = rgba(getComputedStyle(probe).backgroundColor);
    probe.remove();
    return rgb;
  })();
  const ground = (e) =>
    e ? over(rgba(getComputedStyle(e).backgroundColor), ground(e.parentElement)) : canvas;
  const opacity = (e) => (e ? Number(getComputedStyle(e).opacity) * opacity(e.parentElement) : 1);
  const luminance = (rgb) =>
    rgb
      .map((c) => (c <= 10.31475 ? c / 3294.6 : ((c / 255 + 0.055) / 1.055) ** 2.4))
      .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
  const contrast = (e) => {
    const below = ground(e);
    const ink = rgba(getComputedStyle(e).color);
    const [a, b] = [below, over({ rgb: ink.rgb, alpha: ink.alpha * opacity(e) }, below)].map(luminance);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  };
  const own = (e) => [...e.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.nodeValue.trim());
  const areas = [...document.querySelectorAll(outputs)];
  const within = (selector) => [...new Set(areas.flatMap((a) => [...a.querySelectorAll(selector)]))];
  const texts = new Set([...areas, ...within('*')].filter((e) => own(e) && !e.closest('svg, math, script, style')));
  return {
    charts: within('img, svg')
      .filter((e) => !e.parentElement.closest('svg'))
      .map((e) => ({
        alt: e.alt || e.getAttribute('aria-label') || '',
        loaded: e.tagName !== 'IMG' || e.naturalWidth > 0,
        shown: shown(e),
        box: box(e),
      })),
    tables: within('table').map((t) => ({
      shown: shown(t),
      flat: [...t.rows].filter((r) => !(r.getBoundingClientRect().height > 0)).length,
      rows: t.rows.length,
      start: t.innerText.slice(0, 60),
    })),
    faint: [...texts]
      .filter((e) => shown(e))
      .map((e) => ({ text: e.innerText.trim().slice(0, 60), contrast: contrast(e), where: e.outerHTML.slice(0, 90) })),
    width: document.documentElement.scrollWidth,
    room: document.documentElement.clientWidth,
  };
}

/** Fails on whatever a reader could not see or read. */
async function assertReadable(page, outputs, expected) {
  const found = await seen(page, outputs);
  const large = found.charts.filter((c) => c.box.width > 200 && c.box.height > 150);
  for (const chart of found.charts) {
    assert.ok(chart.loaded && chart.shown, `the picture "${chart.alt}" is shown`);
  }
  for (const chart of large) {
    const what = `the chart "${chart.alt}" of ${Math.round(chart.box.width)} x ${Math.round(chart.box.height)}`;
    assert.ok(chart.colours >= FEWEST_COLOURS, `${what} has ${chart.colours} colours`);
    assert.ok(chart.ink >= LEAST_INK, `${what} stands out from its ground on ${(100 * chart.ink).toFixed(2)} %`);
  }
  for (const table of found.tables) {
    assert.ok(table.shown && table.rows > 0 && table.flat === 0, `the rows of a table are shown: ${table.start}`);
  }
  assert.deepStrictEqual(
    { charts: large.length, tables: found.tables.length },
    expected,
    'every chart and table among the results of the cells is on the page',
  );
  const faint = found.faint.filter((t) => t.contrast < LEAST_CONTRAST);
  assert.deepStrictEqual(faint.slice(0, 10), [], `${faint.length} texts are too faint`);
  assert.ok(found.width <= found.room, `the page is ${found.width} wide in a window of ${found.room}`);
}

module.exports = { assertReadable };
