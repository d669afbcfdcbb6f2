/** The documents that come with the app; tools/catalogue.ts generates this module at build time. */
declare module 'virtual:lapstrip-catalogue' {
  type Field = import('../core').Field;
  type Aircraft = import('../core').Aircraft;
  type Procedure = import('../core').Procedure;
  type Hash = import('../core').Hash;

  interface Listed<Kind extends string, Document> {
    readonly kind: Kind;
    /** The short code that pilots and other documents know it by. */
    readonly code: string;
    readonly name: string;
    /** Hash of its content; the log and pinned sorties hold on to this. */
    readonly hash: Hash;
    /** The document as its schema returned it, checked at build time. */
    readonly load: () => Promise<Document>;
  }

  export type ListedField = Listed<'field', Field> &
    Pick<Field, 'language' | 'translations'> &
    import('../core').Whereabouts & {
      /** What it is, in a sentence. */
      readonly about: string;
    };
  export type ListedAircraft = Listed<'aircraft', Aircraft>;
  export type ListedProcedure = Listed<'procedure', Procedure> & {
    /** The code of the aircraft it is for. */
    readonly aircraft: string;
    /** A BCP 47 tag. */
    readonly language: string;
  };

  /** Fields, then aircraft, then procedures, each sorted by code. */
  export const catalogue: readonly (ListedField | ListedAircraft | ListedProcedure)[];
}
