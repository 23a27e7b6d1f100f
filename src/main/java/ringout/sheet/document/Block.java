package ringout.sheet.document;

/** A piece of a section. */
public sealed interface Block permits Paragraph, Caution, KeyValues, Table, Figure, SignOff {}
