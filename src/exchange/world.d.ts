/** The file of the world's fields; tools/world makes it and this module when the app is built. */
declare module 'virtual:lapstrip-world' {
  export const worldFile: {
    /** Where it lies, relative to the app. */
    readonly path: string;
    /** The day its source was made, ISO 8601. */
    readonly date: string;
    /** How many fields it has. */
    readonly fields: number;
    /** How many bytes are fetched. */
    readonly bytes: number;
  };
}
