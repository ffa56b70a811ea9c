/** Random work at the keyboard: what a person in a hurry does to a sheet. Endless, until the browser is gone. */

const UNITS = ['cm', 'mm', 'in', '%', ''];

/** 32-bit xorshift (Marsaglia, “Xorshift RNGs”, Journal of Statistical Software 8, 2003): the same numbers for the same seed. */
export function randomFrom(seed) {
  let state = (seed | 0) || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

export async function typeOn(page, random, round) {
  const { keyboard } = page;
  for (let step = 0; ; step++) {
    const choice = random(20);
    if (choice < 10) {
      const unit = UNITS[random(UNITS.length)];
      await keyboard.type(random(4) === 0 ? `=${random(90) + 1} ${unit || 'cm'} + 1 1/4 in` : `${round}.${step} ${unit}`.trim());
      await keyboard.press(random(3) === 0 ? 'Tab' : 'Enter');
    } else if (choice < 12) await keyboard.press('Control+z');
    else if (choice < 13) await keyboard.press('Control+Shift+z');
    else if (choice < 14) await keyboard.press('Delete');
    else if (choice < 15) await keyboard.press('Alt+Insert');
    else if (choice < 16) await keyboard.press('Alt+Delete');
    else if (choice < 17) {
      // A large block at once: the first cell of it copied down.
      for (let rows = 0; rows < 40; rows++) await keyboard.press('Shift+ArrowDown');
      await keyboard.press('Alt+Shift+d');
    } else if (choice < 18) await keyboard.press('Control+c');
    else if (choice < 19) await keyboard.press('Control+v');
    else await keyboard.press(['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Control+Home'][random(5)]);
  }
}
