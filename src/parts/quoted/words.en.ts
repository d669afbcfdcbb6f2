/** How words that aren't the app's own are quoted. */

export const words = {
  quoted: (text: string) => `“${text}”`,
} as const;
