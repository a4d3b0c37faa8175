// What the browser tests share: a headless Chromium from the system's packages.
const { chromium } = require('playwright-core');

async function withPage(options, use) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-sync', '--no-first-run'],
  });
  try {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
    return await use(await context.newPage());
  } finally {
    await browser.close();
  }
}

// Number of different colours in a screenshot of an element, counted in the page itself.
async function colours(page, element) {
  const png = (await element.screenshot()).toString('base64');
  return page.evaluate(async (data) => {
    const bytes = Uint8Array.from(atob(data), (c) => c.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext('2d');
    context.drawImage(bitmap, 0, 0);
    const pixels = new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
    return new Set(pixels).size;
  }, png);
}

module.exports = { withPage, colours };
