/**
 * Panels and dialogs come when they are first asked for. `summon` fetches the
 * module of one and then does with it what was asked; with one that is here
 * already at once.
 */
import { LATER, type LaterTag } from '../panels/later.ts';

type Panel<Tag extends LaterTag> = HTMLElementTagNameMap[Tag] & { readonly updateComplete: Promise<unknown>; readonly hasUpdated: boolean };

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
}

/**
 * @param act is not called when the panel cannot be fetched, nor when it is no longer in the page
 * @param say is given the sentence when it cannot be fetched
 */
export function summon<Tag extends LaterTag>({ renderRoot }: Host, tag: Tag, act: (panel: Panel<Tag>) => void, say: (sentence: string) => void): void {
  const find = (): Panel<Tag> | null => renderRoot.querySelector<Panel<Tag>>(tag);
  const here = customElements.get(tag) && find();
  if (here && here.hasUpdated) act(here);
  else {
    void LATER[tag]().then(async () => {
      const panel = find();
      await panel?.updateComplete;
      if (panel) act(panel);
    }, () => say(NOT_FETCHED));
  }
}

export const NOT_FETCHED = 'This part of the page is not on this device yet and could not be fetched. Nothing was changed. Connect to the network and ask again; if it still does not come, load the page again.';

/** Fetches all of them, and what dialogs need besides, so that each is at hand when it is asked for. What fails is fetched when it is. */
export async function fetchLater(): Promise<void> {
  for (const fetchOne of [...Object.values(LATER), () => import('./chart-edit.ts'), () => import('./shipped.ts')]) await fetchOne().catch(() => undefined);
}
