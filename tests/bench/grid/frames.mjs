/**
 * Scrolls fast, by the browser's own gesture, and looks at every frame that the
 * browser showed: in each, every row in view must have its number. Frames are
 * read as pictures, by what is dark in the column of numbers.
 */
const SPEED = 6000;
const LENGTH = 24_000;

export async function blankFrames(page, print) {
  const client = await page.context().newCDPSession(page);
  const frames = [];
  client.on('Page.screencastFrame', ({ data, sessionId }) => {
    frames.push(data);
    void client.send('Page.screencastFrameAck', { sessionId }).catch(() => undefined);
  });
  await page.evaluate(() => window.bench.grid.scroller.scrollTo(0, 0));
  await client.send('Page.startScreencast', { format: 'png', everyNthFrame: 1 });
  for (const yDistance of [-LENGTH, LENGTH / 2]) {
    await client.send('Input.synthesizeScrollGesture', { x: 600, y: 400, yDistance, speed: SPEED, gestureSourceType: 'mouse' });
  }
  await client.send('Page.stopScreencast');
  const reader = await page.context().newPage();
  const found = { frames: 0, blank: 0, positions: new Set() };
  for (const data of frames) {
    const { bare, mark } = await reader.evaluate(look, data);
    found.frames++;
    found.positions.add(mark);
    if (bare > 0) found.blank++;
  }
  await reader.close();
  print(`fast scroll (${SPEED} px/s), frames with a bare row`, '0', `${found.blank} of ${found.frames} frames, ${found.positions.size} of them different`);
}

/** In the reader's page: how many row-high stretches of the numbers' column hold nothing dark, and a mark to tell frames apart. */
async function look(data) {
  const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  context.drawImage(picture, 0, 0);
  // Screencast pictures may be smaller than the page.
  const scale = picture.width / 1240;
  const [left, width, top, bottom] = [4, 54, 32, 740].map((n) => Math.round(n * scale));
  const { data: pixels } = context.getImageData(left, 0, width, picture.height);
  const dark = (y) => {
    let count = 0;
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 4;
      if (pixels[at] + pixels[at + 1] + pixels[at + 2] < 450) count++;
    }
    return count;
  };
  let bare = 0;
  let empty = 0;
  let mark = '';
  for (let y = top; y < bottom; y++) {
    const count = dark(y);
    mark += count ? '1' : '0';
    empty = count ? 0 : empty + 1;
    // Two rows' height without a single figure.
    if (empty === Math.round(46 * scale)) bare++;
  }
  return { bare, mark };
}
