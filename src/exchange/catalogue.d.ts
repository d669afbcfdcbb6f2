/** The documents that come with the app; tools/catalogue.ts makes these modules when it is built. */
declare module 'virtual:lapstrip-catalogue' {
  type Field = import('../core').Field;
  type Aircraft = import('../core').Aircraft;
  type Procedure = import('../core').Procedure;
  type Hash = import('../core').Hash;

  interface Listed<Kind extends string, Document> {
    readonly kind: Kind;
    /** The short name that a pilot and other documents know it by. */
    readonly code: string;
    readonly name: string;
    /** Names its content; what the log and a pinned sortie hold on to. */
    readonly hash: Hash;
    /** The document as its schema gave it out, already checked when the app was built. */
    readonly load: () => Promise<Document>;
  }

  /** What a field is, in a sentence. */
  interface Sentence {
    readonly about: string;
    /** The sentence's language, a BCP 47 tag, where it is not that of the page. */
    readonly lang?: string;
  }

  export type ListedField = Listed<'field', Field> &
    Sentence & {
      /** The same without what the first answer can do without: its taxi plan, which is empty here. */
      readonly loadPlain: () => Promise<Field>;
    };
  export type ListedAircraft = Listed<'aircraft', Aircraft> & {
    /** The same without what the first answer can do without: its physics and its loading. */
    readonly loadPlain: () => Promise<Aircraft>;
  };
  export type ListedProcedure = Listed<'procedure', Procedure> & {
    /** The code of the aircraft that it is for. */
    readonly aircraft: string;
    /** A BCP 47 tag. */
    readonly language: string;
  };

  /** Fields, then aircraft, each in the order of their codes. */
  export const catalogue: readonly (ListedField | ListedAircraft)[];
}

/** What the list says of each field on a page in German, by the field's code. */
declare module 'virtual:lapstrip-sentences/de' {
  const sentences: Readonly<Record<string, import('virtual:lapstrip-catalogue').Sentence>>;
  export default sentences;
}

/** The procedures, which the first answer can do without. */
declare module 'virtual:lapstrip-procedures' {
  /** In the order of their codes. */
  export const procedures: readonly import('virtual:lapstrip-catalogue').ListedProcedure[];
}
