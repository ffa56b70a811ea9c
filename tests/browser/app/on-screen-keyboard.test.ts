import { expect } from '@open-wc/testing';
import { LitElement } from 'lit';
import { OnScreenKeyboard, type SeenPart } from '../../../src/app/on-screen-keyboard.ts';

/** The part of the window that is seen, as a hand may set it. */
class Seen extends EventTarget implements SeenPart {
  height = 844;
  offsetTop = 0;
  scale = 1;
  become(change: Partial<SeenPart>, how = 'resize'): void {
    Object.assign(this, change);
    this.dispatchEvent(new Event(how));
  }
}

class Host extends LitElement {
  readonly seen = new Seen();
  readonly keyboard = new OnScreenKeyboard(this, this.seen, () => 844);
}
customElements.define('keyboard-host', Host);

describe('the keyboard on the screen', () => {
  let host: Host;
  beforeEach(() => {
    host = new Host();
    document.body.append(host);
  });
  afterEach(() => host.remove());

  const told = () => [host.hasAttribute('data-keyboard'), host.style.height, host.style.top];

  it('makes the page as tall as what it leaves, wherever that is moved to', () => {
    expect(told()).to.deep.equal([false, '', '']);
    host.seen.become({ height: 508 });
    expect(told()).to.deep.equal([true, '508px', '0px']);
    host.seen.become({ offsetTop: 120 }, 'scroll');
    expect(told()).to.deep.equal([true, '508px', '120px']);
    host.seen.become({ height: 844, offsetTop: 0 });
    expect(told()).to.deep.equal([false, '', '']);
  });

  it('is told from an address bar, and from two fingers that enlarge the page', () => {
    host.seen.become({ height: 788 });
    expect(told()).to.deep.equal([false, '', '']);
    host.seen.become({ height: 420, scale: 2 });
    expect(told()).to.deep.equal([false, '', '']);
  });

  it('is no concern of a page that is gone', () => {
    host.remove();
    host.seen.become({ height: 400 });
    expect(host.hasAttribute('data-keyboard')).to.be.false;
  });
});
