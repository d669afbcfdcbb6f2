/** The words of Share. */

export const words = {
  title: (name: string) => `Share ${name}`,
  close: 'Close',
  loading: 'Packing it',
  failed: 'It is not available just now.',
  hint: 'Whoever opens the file, the link or the code sees what it would add before anything is kept.',
  file: 'File',
  save: 'Save as a file',
  shareFile: 'Share the file',
  link: 'Link',
  linkHint: (length: string) =>
    `The whole of it stands in the link itself, ${length} characters: no server holds it.`,
  linkTooLong: (length: string, most: string) =>
    `It would be ${length} characters long. Many apps cut links of more than ${most}, so take the file or the codes.`,
  copy: 'Copy the link',
  copied: 'The link is copied.',
  notCopied: 'The browser does not let it be copied. It can be marked and copied here:',
  shareLink: 'Share the link',
  code: 'QR code',
  codeHint: 'Read it with the camera of the other device, the brighter and larger the better.',
  codesHint: (codes: number) =>
    `It takes ${codes} codes. Read them one after the other with the camera of the other device, in any order.`,
  codePart: (part: number, of: number) => `${part} of ${of}`,
  showCode: 'Show the code',
  bright: 'It is black on white, and bright.',
  brightCodes: (codes: number) =>
    `${codes} codes, one after the other. They are black on white, and bright.`,
  codeOf: (name: string, part: number, of: number) =>
    `QR code ${part} of ${of} of a link that holds ${name}`,
  tooLarge: 'It is too large for QR codes. The file holds it.',
} as const;
