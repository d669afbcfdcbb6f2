/** How what is not the app's own is quoted. */

export const words = {
  quoted: (text: string) => `“${text}”`,
} as const;
