/**
 * The aircraft as read: immutable records whose component names are the names of the fields in the user's files. Every
 * record knows where it stands ({@code at}); every datum says whether it is known, marked "?", marked "n/a" or not asked
 * yet, and where it comes from. Numbers carry their unit in the name.
 */
@NullMarked
package ringout.model;

import org.jspecify.annotations.NullMarked;
