import { expect } from '@open-wc/testing';
describe('x', () => { it('y', () => { expect(1).to.equal(1); }); });
