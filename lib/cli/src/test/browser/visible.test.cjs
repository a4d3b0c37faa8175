// The checks themselves: each finds the fault it is there for, and finds none on a sound page.
const { test } = require('node:test');
const assert = require('node:assert');
const { withPage } = require('./browser.cjs');
const { assertReadable } = require('./visible.cjs');

const picture = (drawing) =>
  `<img alt="chart" src="data:image/svg+xml;base64,${Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="600" height="400">${drawing}</svg>`,
  ).toString('base64')}">`;
const lines = (colour) =>
  [...Array(30).keys()]
    .map((i) => `<path d="M${20 * i} 0 L${600 - 7 * i} 400" stroke="${colour}" stroke-width="2" fill="none"/>`)
    .join('');
const table = (style) => `<table style="${style}"><tr><td>12.5 ppg</td></tr></table>`;
const sound = picture(`<rect width="600" height="400" fill="white"/>${lines('#1060a0')}`) + table('');

const check = (body, scheme = 'light') =>
  withPage({ colorScheme: scheme }, async (page) => {
    await page.setContent(`<meta name="color-scheme" content="light dark"><div class="output">${body}</div>`);
    await assertReadable(page, '.output', { charts: 1, tables: 1 });
  });

test('a sound page passes, light and dark', async () => {
  await check(sound);
  await check(sound, 'dark');
});

for (const [fault, body, expected, scheme] of [
  ['a picture that is blank', picture('<rect width="600" height="400" fill="white"/>') + table(''), /has \d+ colours/],
  ['a picture that cannot be read', '<img alt="chart" src="data:image/png;base64,AAAA" width="600" height="400">' + table(''), /is shown/],
  ['black lines on a clear ground on a dark page', picture(lines('black')) + table(''), /stands out/, 'dark'],
  ['a chart that is missing', table(''), /every chart and table/],
  ['grey text', sound.replace('<table', '<table class="x"').replace('style=""', 'style="color: #888"'), /too faint/],
  ['white ground set for light pages only', sound.replace('style=""', 'style="background: white"'), /too faint/, 'dark'],
  ['a transparent table', sound.replace('style=""', 'style="opacity: 0"'), /rows of a table/],
  ['a table without height', sound.replace('style=""', 'style="display: none"'), /rows of a table/],
  ['a page that is too wide', sound.replace('style=""', 'style="width: 1500px"'), /in a window of/],
]) {
  test(`${fault} is found`, () => assert.rejects(check(body, scheme), expected));
}
