/** A sentence whose gaps, `{0}` and `{1}`, are filled with figures. */
export const filled = (sentence: string, figures: readonly string[]): string =>
  sentence.replace(/\{(\d)\}/g, (_, gap: string) => {
    const figure = figures[Number(gap)];
    return figure === undefined || !Number.isFinite(Number(figure)) ? '—' : figure;
  });
