package ringout.compare.find;

import ringout.text.Span;

/**
 * One field that differs, or a record that only one has.
 *
 * @param group field of the outermost record it is in, with the key of that record: {@code ports[CAN2]}
 * @param field the field, or empty for a whole record
 * @param what in words, without the object: {@code CAN2 terminator}
 * @param before what the base says
 * @param after what the other aircraft says
 * @param at row of the base
 * @param there row of the other aircraft
 */
record FieldChange(String group, String field, String what, String before, String after, Span at, Span there) {}
