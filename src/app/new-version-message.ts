/** What the page says to a version of the app that waits. */
export const USE_IT_NOW = 'use it now';
