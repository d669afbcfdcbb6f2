/** The documents that come with the app; tools/catalogue.ts makes this module when it is built. */
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

  export type ListedField = Listed<'field', Field> &
    Pick<Field, 'language' | 'translations'> & {
      /** What it is, in a sentence. */
      readonly about: string;
    };
  export type ListedAircraft = Listed<'aircraft', Aircraft>;
  export type ListedProcedure = Listed<'procedure', Procedure> & {
    /** The code of the aircraft that it is for. */
    readonly aircraft: string;
    /** A BCP 47 tag. */
    readonly language: string;
  };

  /** Fields, aircraft, then procedures, each in the order of their codes. */
  export const catalogue: readonly (ListedField | ListedAircraft | ListedProcedure)[];
}
