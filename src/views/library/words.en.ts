/** The words of the Library. */

export const words = {
  more: 'Add to it',
  drawField: 'Draw a field',
  fields: 'Fields',
  aircraft: 'Aircraft',
  procedures: 'Procedures',
  does: { edit: 'Edit', share: 'Share', print: 'Print' },
  doesTo: {
    edit: (name: string) => `Edit ${name}`,
    share: (name: string) => `Share ${name}`,
    print: (name: string) => `Print ${name}`,
  },
  forAircraft: (aircraft: string, language: string | null) =>
    language === null ? `for ${aircraft}` : `for ${aircraft}, in ${language}`,
  own: 'your own',
  today: 'flown today',
} as const;
