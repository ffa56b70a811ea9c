import { expect, waitUntil } from '@open-wc/testing';
import { claim } from '../../../src/keeping/index.ts';

let number = 0;
const freshId = () => `lock test ${number++} ${Date.now()}`;

/** Long enough for a lock to have been given if it were going to be. */
const aWhile = () => new Promise((resolve) => setTimeout(resolve, 50));

it('the first to claim a workbook writes, the others read and take over in turn', async () => {
  const id = freshId();
  const taken: string[] = [];
  const one = await claim(id, () => taken.push('one'));
  const two = await claim(id, () => taken.push('two'));
  const three = await claim(id, () => taken.push('three'));
  expect([one.mode, two.mode, three.mode]).to.deep.equal(['writing', 'reading', 'reading']);
  await aWhile();
  expect(taken).to.deep.equal([]);
  await one.release();
  await waitUntil(() => taken.length === 1);
  await aWhile();
  expect(taken).to.deep.equal(['two']);
  await two.release();
  await waitUntil(() => taken.length === 2);
  expect(taken).to.deep.equal(['two', 'three']);
  await three.release();
  expect((await claim(id, () => undefined)).mode).to.equal('writing');
});

it('other workbooks are not held up', async () => {
  expect((await claim(freshId(), () => undefined)).mode).to.equal('writing');
  expect((await claim(freshId(), () => undefined)).mode).to.equal('writing');
});

it('one that reads can leave the queue', async () => {
  const id = freshId();
  const taken: string[] = [];
  const one = await claim(id, () => taken.push('one'));
  const two = await claim(id, () => taken.push('two'));
  await claim(id, () => taken.push('three'));
  await two.release();
  await aWhile();
  await one.release();
  await waitUntil(() => taken.length > 0);
  await aWhile();
  expect(taken).to.deep.equal(['three']);
});

it('when the tab that writes is gone without a word, the next takes over', async () => {
  const id = freshId();
  const frame = document.body.appendChild(document.createElement('iframe'));
  const other = await claim(id, () => undefined, frame.contentWindow!.navigator.locks);
  expect(other.mode).to.equal('writing');
  let mine = false;
  const here = await claim(id, () => { mine = true; });
  expect(here.mode).to.equal('reading');
  await aWhile();
  expect(mine).to.equal(false);
  frame.remove();
  await waitUntil(() => mine);
});
