// What the browser tests share: one headless Chromium from the system's packages, and what it shows in numbers.
const { after } = require('node:test');
const { chromium } = require('playwright-core');

let browser;

after(async () => {
  if (browser) {
    await (await browser).close();
  }
});

async function withPage(options, use) {
  browser ??= chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--disable-sync',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
    ],
    timeout: 120_000,
  });
  const context = await (await browser).newContext({ viewport: { width: 1280, height: 800 }, ...options });
  try {
    return await use(await context.newPage());
  } finally {
    await context.close();
  }
}

/**
 * What is drawn on parts of a picture of the page, read from its pixels: the number of colours, and the share of
 * pixels that stand out from the commonest colour, which is the ground, by a contrast of 3 or more.
 */
async function drawn(page, png, boxes) {
  return page.evaluate(
    async ({ data, boxes }) => {
      const bytes = Uint8Array.from(atob(data), (c) => c.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d', { willReadFrequently: true });
      context.drawImage(bitmap, 0, 0);
      const linear = (c) => (c <= 10.31475 ? c / 3294.6 : ((c / 255 + 0.055) / 1.055) ** 2.4);
      const luminance = (rgba) =>
        0.2126 * linear(rgba & 255) + 0.7152 * linear((rgba >> 8) & 255) + 0.0722 * linear((rgba >> 16) & 255);
      return boxes.map(({ x, y, width, height }) => {
        const { data: rgba } = context.getImageData(Math.round(x), Math.round(y), Math.floor(width), Math.floor(height));
        const counts = new Map();
        new Uint32Array(rgba.buffer).forEach((colour) => counts.set(colour, (counts.get(colour) ?? 0) + 1));
        const ground = luminance([...counts].reduce((most, one) => (one[1] > most[1] ? one : most))[0]);
        let ink = 0;
        for (const [colour, count] of counts) {
          const other = luminance(colour);
          ink += (Math.max(ground, other) + 0.05) / (Math.min(ground, other) + 0.05) >= 3 ? count : 0;
        }
        return { colours: counts.size, ink: ink / (rgba.length / 4) };
      });
    },
    { data: png.toString('base64'), boxes },
  );
}

/** Number of different colours in a screenshot of an element. */
async function colours(page, element) {
  const { width, height } = await element.boundingBox();
  const [found] = await drawn(page, await element.screenshot(), [{ x: 0, y: 0, width, height }]);
  return found.colours;
}

module.exports = { withPage, drawn, colours };
